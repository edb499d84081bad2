import { expect, test } from "vitest";
import { openPartIndex, whereHolds } from "../../../src/engine/interchange/part-index.ts";
import type { StandsIn } from "../../../src/engine/records/statement.ts";
import { NONE } from "../../../src/engine/scope/diagram.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const { catalog } = tinyKnowledge();
const index = openPartIndex(catalog);

test("statements by part and place", () => {
  expect([...index.builtAt.keys()].sort()).toEqual(["lift arms", "pump"]);
  expect(index.builtWith.get("HT-102")?.map((it) => it.type)).toEqual(["built", "mixed"]);
  expect(index.standInsOf.get("HT-102")?.map((it) => it.for)).toEqual(["HT-101", undefined]);
  expect(index.ordersOf.get("HT-101")?.map((it) => it.new)).toEqual(["HT-102"]);
});

test("a statement holds within its scope; one without a scope for all of the cars", () => {
  const [narrow] = index.standInsOf.get("HT-102")?.filter((it) => it.for === undefined) ?? [];
  const [wide] = index.standInsOf.get("HT-101") ?? [];
  const heron = catalog.lines.find((line) => line.id === "H")?.cars;
  if (!narrow || !wide || !heron) throw new Error("the tiny folder has changed");
  expect(whereHolds(index, narrow, catalog.buildable)).toBe(heron);
  expect(whereHolds(index, wide, heron)).toBe(heron);
});

test("a statement for one place holds there; where the place is not known, only as a refusal", () => {
  const [wide] = index.standInsOf.get("HT-101") ?? [];
  if (!wide) throw new Error("the tiny folder has changed");
  const { buildable } = catalog;
  const [permission, refusal] = (["yes", "must-not-be-used"] as const).map((verdict) => ({
    ...wide,
    verdict,
    place: "pump",
  }));
  for (const it of [permission, refusal] as StandsIn[]) {
    expect(whereHolds(index, it, buildable, "pump")).toBe(buildable);
    expect(whereHolds(index, it, buildable, "roof")).toBe(NONE);
    expect(whereHolds(index, it, buildable)).toBe(it.verdict === "yes" ? NONE : buildable);
  }
});

test("where the record that ended it was ended itself, a refusal holds again and a permission does not", () => {
  const later = (id: string, issued: string, target: string): string =>
    `---\nid: ${id}\ntitle: A change\nissued: ${issued}\nkinds: [part]\nstarts: then\nscope: all\ncancels: [{ record: ${target} }]\n---\n\nIt changed.\n`;
  const after = (records: Record<string, string>): string[] => {
    const { catalog: other } = tinyKnowledge(records);
    const opened = openPartIndex(other);
    const all = [...opened.standInsOf.values()].flat().filter(({ record }) => record === "HY59-01");
    return all.filter((it) => whereHolds(opened, it, other.buildable, "pump") !== NONE).map(({ verdict }) => verdict);
  };
  const one = { "changes/1959/HY59-02.md": later("HY59-02", "1959-03-01", "HY59-01") };
  expect(after({})).toEqual(["on-conditions", "yes", "must-not-be-used"]);
  expect(after(one)).toEqual([]);
  expect(after({ ...one, "changes/1959/HY59-03.md": later("HY59-03", "1959-04-01", "HY59-02") })).toEqual([
    "must-not-be-used",
  ]);
});
