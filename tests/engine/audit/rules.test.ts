/** Every rule is shown at work: it finds its own fault in the one example and is silent on the mended twin. */
import { describe, expect, test } from "vitest";
import { audit } from "../../../src/engine/audit/audit.ts";
import type { Rule } from "../../../src/engine/audit/rule.ts";
import { RULES } from "../../../src/engine/audit/rules.ts";
import type { Path } from "../../../src/engine/records/complaint.ts";
import { type Folder, inShort, readTexts, type Spoil, sourceOf, spoiled } from "../../helpers/tiny-folder.ts";
import { CASES } from "./rules.cases.ts";

function foundBy(rule: Rule, files: Spoil) {
  const { catalog, checks, complaints } = readTexts(spoiled(files));
  if (!catalog) throw new Error(complaints.map(inShort).join("\n"));
  return audit(catalog, checks, [rule]);
}

function valueAt(folder: Folder, file: string, path: Path): unknown {
  const at = (value: unknown, step: string | number): unknown => (value as Record<string, unknown> | undefined)?.[step];
  return path.reduce(at, sourceOf(file, folder[file] ?? "").value as unknown);
}

describe.each(RULES.map((rule) => [rule.id, rule] as const))("%s", (_, rule) => {
  test("finds its fault, says how to mend it, and names a place in the files", () => {
    const found = foundBy(rule, rule.example.wrong);
    expect(found).not.toEqual([]);
    for (const complaint of found) {
      expect(complaint).toMatchObject({ rule: rule.id, severity: rule.gravity });
      expect(complaint.path.length).toBeGreaterThan(0);
      expect(complaint.hint).not.toBe("");
      expect([...(complaint.records ?? []), ...(complaint.names ?? [])]).not.toEqual([]);
    }
  });

  test("is silent on the mended twin", () => {
    expect(foundBy(rule, rule.example.right).map(inShort)).toEqual([]);
  });
});

describe("where a rule begins and ends", () => {
  test.each(CASES)("%s: %s", (id, _, files, said) => {
    const rule = RULES.find((it) => it.id === id);
    if (!rule) throw new Error(`no rule is called ${id}`);
    const complaints = foundBy(rule, files);
    // What a finding is about stands in the file.
    for (const { file, path } of complaints)
      expect([path, valueAt(spoiled(files), file, path)]).not.toContain(undefined);
    const found = complaints.map(({ message }) => message);
    expect(found).toEqual(said.map((begins, i) => (found[i]?.startsWith(begins) ? found[i] : begins)));
  });
});

test("on a faultless folder every rule is silent", () => {
  const { catalog, checks } = readTexts(spoiled({}));
  if (!catalog) throw new Error("the tiny folder has faults");
  expect(audit(catalog, checks).map(inShort)).toEqual([]);
});

test("ids are unique and made of plain words", () => {
  const ids = RULES.map((rule) => rule.id);
  expect(new Set(ids).size).toBe(ids.length);
  for (const id of ids) expect(id).toMatch(/^[a-z]+(-[a-z]+)+$/);
});
