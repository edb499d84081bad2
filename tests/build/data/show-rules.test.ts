import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { checkFolder } from "../../../src/build/data/check-folder.ts";
import { EXAMPLE_FOLDER } from "../../../src/build/data/example-folder.ts";
import { readFolder } from "../../../src/build/data/read-folder.ts";
import { READING_RULES } from "../../../src/build/data/reading-rules.ts";
import { RULE_TEXTS } from "../../../src/build/data/rule-texts.ts";
import { changed, listRules, rulesDocument, showRule } from "../../../src/build/data/show-rules.ts";
import { withAgainst } from "../../../src/build/data/with-against.ts";
import type { ExampleFiles, RuleText } from "../../../src/engine/audit/rule.ts";
import { onDisk } from "../../helpers/tiny-folder.ts";
import { tinyManifest } from "../../helpers/tiny-manifest.ts";

/** Everything that the check finds with an example in place. */
async function foundIn(files: ExampleFiles): Promise<string[]> {
  const pieces = Object.entries(files).map(([path, how]) => [path, changed(EXAMPLE_FOLDER[path] ?? "", how)]);
  const folder = await onDisk({ ...EXAMPLE_FOLDER, ...Object.fromEntries(pieces) });
  const read = await readFolder(folder);
  const published = await onDisk({ "manifest.json": tinyManifest() });
  return withAgainst(checkFolder(read), read, `${published}/manifest.json`).findings.map(({ rule }) => rule);
}

// Those of the audit are run beside it.
describe.each(READING_RULES.map((rule): [string, RuleText] => [rule.id, rule]))("%s", (id, { example }) => {
  test("is found in the example, and not in its mended twin", async () => {
    expect(await foundIn(example.wrong)).toContain(id);
    expect(await foundIn(example.right)).toEqual([]);
  });
});

test("a rule is shown with the lines that are wrong, and right", () => {
  const rule = RULE_TEXTS.find(({ id }) => id === "unknown-name") as RuleText;
  expect(showRule(rule)).toBe(`unknown-name (error, always)
Every record, part, component, place, trait and check that a file names exists.
Otherwise: The statement hangs in the air: no page, no answer and no link leads to it.
To mend it: Take the nearest name that is shown, or add what is missing.

  wrong, in changes/1959/HY59-01.md:
    links: [FR58-10]
  right:
    links: [FR58-01]`);
});

test("the list has a line for each rule, with its gravity", () => {
  const lines = listRules().split("\n");
  expect(lines).toHaveLength(RULE_TEXTS.length);
  expect(lines[0]).toMatch(/^no-such-car +error +Every scope has at least one car that was really built\.$/);
});

test("the document that is committed is the one that the rules make", () => {
  expect(readFileSync("schemas/checks.md", "utf8")).toBe(rulesDocument());
});

test("every example shows something", () => {
  for (const rule of RULE_TEXTS)
    expect([rule.id, showRule(rule)]).toEqual([rule.id, expect.stringContaining("wrong, in ")]);
});
