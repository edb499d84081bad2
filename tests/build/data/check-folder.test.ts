import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { checkFolder } from "../../../src/build/data/check-folder.ts";
import type { ReadFolder } from "../../../src/build/data/read-folder.ts";
import { showFinding } from "../../../src/build/data/show-findings.ts";
import { demoChanged, type Edit } from "../../helpers/demo-changed.ts";
import { fixtureRows } from "../../helpers/fixture-rows.ts";

type Row = readonly [slip: string, file: string, says: string, instead: string, rule: string, record: string];

const slips = Map.groupBy(fixtureRows<Row>("slips"), ([slip]) => slip);
const edit = ([, file, says, instead]: Row): Edit => ({
  file,
  says: says.replaceAll("\\n", "\n"),
  instead: instead.replaceAll("\\n", "\n"),
});

describe("of the records as they are", () => {
  const { findings, accepted } = checkFolder(demoChanged([]));

  test("nothing is found: every slip below is silent on its mended twin", () => {
    expect(findings).toEqual([]);
  });

  test("what is accepted is accepted with a reason, at its place", () => {
    expect(accepted.length).toBeGreaterThan(0);
    for (const { finding, why } of accepted) {
      expect(why).not.toBe("");
      expect(finding.shown).not.toBe("");
    }
  });
});

/** The slowest of the rules is not asked again of each slip, unless it is the one that has to find it. */
function without(read: ReadFolder, rule: string): ReadFolder {
  const slowest = "year-left-out";
  if (rule === slowest) return read;
  const off = { check: slowest, as: "off", why: "it is slow" } as const;
  return { ...read, checks: { ...read.checks, rules: [...read.checks.rules, off] } };
}

describe("a slip is found where it was made", () => {
  test.each([...slips])("%s", (_, rows) => {
    const read = demoChanged(rows.map(edit));
    expect(read.findings).toEqual([]);
    const [, , , , rule, record] = rows[0] as Row;
    const found = checkFolder(without(read, rule)).findings.filter((finding) => finding.rule === rule);
    expect(found.map(({ message }) => message)).not.toEqual([]);
    if (record !== "") expect(found.flatMap((finding) => finding.records ?? [])).toContain(record);
    const files = new Set(found.flatMap(({ file, also = [] }) => [file, ...also.map((it) => it.file)]));
    expect(rows.some(([, file]) => files.has(file))).toBe(true);
  });

  test("the README shows what is said of the first", () => {
    const [finding] = checkFolder(demoChanged(slips.get("A1")?.map(edit) ?? [])).findings;
    expect(readFileSync("README.md", "utf8")).toContain(finding && showFinding(finding, "data"));
  });

  test("there are all eighteen of them", () => {
    const numbers = new Set([...slips.keys()].map((slip) => /^A(\d+)/.exec(slip)?.[1]));
    expect(numbers.size).toBe(18);
  });
});
