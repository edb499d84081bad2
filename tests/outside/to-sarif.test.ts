/**
 * Findings as SARIF judged from outside. Sources: SARIF 2.1.0 (OASIS Standard, 27 March 2020), its JSON Schema 2.1.0-rtm.5 as the
 * package @microsoft/jest-sarif carries it; Ajv for JSON Schema draft 4.
 */
import { readFileSync } from "node:fs";
import AjvDraft04 from "ajv-draft-04";
import { expect, test } from "vitest";
import { checkFolder } from "../../src/build/data/check-folder.ts";
import { readFolder } from "../../src/build/data/read-folder.ts";
import { toSarif } from "../../src/build/data/to-sarif.ts";
import { onDisk, type Spoil, spoiled } from "../helpers/tiny-folder.ts";

const SCHEMA = "node_modules/@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json";
const ajv = new AjvDraft04({ strict: false, allErrors: true, validateFormats: false, unicodeRegExp: false });
const holds = ajv.compile(JSON.parse(readFileSync(SCHEMA, "utf8")) as object);

/** What the published schema says against a log. */
function faultsOf(log: object): string[] {
  return holds(log) ? [] : (holds.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message}`);
}

interface Log {
  runs: [{ tool: { driver: { rules: { id: string }[] } }; results: Result[] }];
}
interface Result {
  ruleId: string;
  ruleIndex: number;
  level: string;
  message: { text: string };
  locations: { physicalLocation: { artifactLocation: { uri: string }; region: object } }[];
  relatedLocations?: object[];
  suppressions?: object[];
  partialFingerprints: object;
}

async function logOf(spoil: Spoil, folder = "data"): Promise<Log> {
  return toSarif(checkFolder(await readFolder(await onDisk(spoiled(spoil)))), folder) as Log;
}

const WRONG = ["part: HT-101, scope: line=B; at=K59#0412- }", "part: HT-101, scope: line=B; at=K59#0420- }"] as const;
const ACCEPTED = ["links: [FR58-01]", "accept: [{ check: two-parts-in-one-place, why: both were found }]"] as const;

// what is wrong
const CASES: [string, Spoil][] = [
  ["nothing", {}],
  ["a contradiction", { "changes/1959/HY59-01.md": WRONG }],
  ["an accepted one", { "changes/1959/HY59-01.md": [...WRONG, ...ACCEPTED] }],
  [
    "files that cannot be read",
    { "vehicles/traits.yaml": "traits: [", "maker.yaml": "name: 7", "parts/ä b.yaml": "no: 1" },
  ],
  ["a slip of the pen", { "changes/1959/HY59-01.md": ["after a pump was fitted", "after the hydraulcis were fitted"] }],
  ["no traits at all", { "vehicles/traits.yaml": undefined }],
];

test.each(CASES)("of %s a log holds for the published schema", async (_, spoil) => {
  expect(faultsOf(await logOf(spoil))).toEqual([]);
});

test("the judge is awake: a log with a fault is refused", async () => {
  const log = await logOf({ "changes/1959/HY59-01.md": WRONG });
  expect(faultsOf({ ...log, version: "2.0.0" })).not.toEqual([]);
  const [run] = log.runs;
  expect(faultsOf({ ...log, runs: [{ ...run, results: [{ level: "grave" }] }] })).not.toEqual([]);
});

test("a result names its rule, its place as a URI with the data folder, and what else has to do with it", async () => {
  const { runs } = await logOf({ "changes/1959/HY59-01.md": WRONG }, "my data");
  const [{ tool, results }] = runs;
  const [result] = results;
  expect(results).toHaveLength(1);
  expect(result).toMatchObject({ ruleId: "two-parts-in-one-place", level: "error" });
  expect(tool.driver.rules[result?.ruleIndex ?? -1]?.id).toBe("two-parts-in-one-place");
  expect(result?.locations[0]?.physicalLocation).toEqual({
    artifactLocation: { uri: "my%20data/changes/1959/HY59-01.md" },
    region: {
      startLine: 11,
      startColumn: 41,
      endColumn: 61,
      snippet: { text: "  - { place: pump, part: HT-102, scope: line=B; at=K59#0412+ }" },
    },
  });
  expect(result?.relatedLocations).toHaveLength(1);
  expect(result?.message.text).toContain("For example: Badger of 1959");
});

test("what is accepted is suppressed in the source with its reason", async () => {
  const { runs } = await logOf({ "changes/1959/HY59-01.md": [...WRONG, ...ACCEPTED] });
  expect(runs[0].results.map((result) => result.suppressions)).toEqual([
    [{ kind: "inSource", justification: "both were found" }],
  ]);
});

test("a finding keeps its fingerprint when lines move, and two findings have two", async () => {
  const prints = async (spoil: Spoil): Promise<object[]> =>
    (await logOf(spoil)).runs[0].results.map((result) => result.partialFingerprints);
  const [print] = await prints({ "changes/1959/HY59-01.md": WRONG });
  const moved = await prints({ "changes/1959/HY59-01.md": [...WRONG, "built:\n", "built:\n  # a comment\n\n"] });
  expect(moved).toEqual([print]);
  const two = await prints({ "changes/1959/HY59-01.md": [...WRONG, "nominal: 130,", "nominal: 140,"] });
  expect(new Set(two.map((it) => JSON.stringify(it))).size).toBe(2);
});
