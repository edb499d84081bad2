import { describe, expect, test } from "vitest";
import { gravityOf, weigh } from "../../../src/engine/audit/weigh.ts";
import type { Complaint } from "../../../src/engine/records/complaint.ts";
import type { Acceptance } from "../../../src/engine/records/read-catalog.ts";
import type { ChecksFile } from "../../../src/engine/records/shapes/checks.ts";

const RULES = [
  { id: "round-wheels", gravity: "error" },
  { id: "clean-glass", gravity: "warning" },
  { id: "accepts-nothing", gravity: "warning" },
] as const;

const found = (rule: string, more: Partial<Complaint> = {}): Complaint => ({
  severity: rule === "clean-glass" ? "warning" : "error",
  rule,
  file: "parts/wheel.yaml",
  path: ["parts", 0],
  message: "it is not",
  hint: "mend it",
  ...more,
});
const set = (...rules: [check: string, as: ChecksFile["rules"][number]["as"]][]): ChecksFile => ({
  rules: rules.map(([check, as]) => ({ check, as, why: "so" })),
  plausible: [],
  "never-say": [],
});
const accepted = (more: Partial<Acceptance> = {}): Acceptance => ({
  file: "parts/wheel.yaml",
  path: ["accept", 0],
  check: "round-wheels",
  about: [],
  why: "it is a sledge",
  ...more,
});
const said = (complaints: readonly Complaint[]): string[] => complaints.map((it) => `${it.severity} ${it.rule}`);

describe("checks.yaml weighs a rule otherwise", () => {
  test("as an error, a warning or not at all", () => {
    const both = [found("round-wheels"), found("clean-glass")];
    expect(said(weigh(both, set(), [], RULES).complaints)).toEqual(["error round-wheels", "warning clean-glass"]);
    expect(said(weigh(both, set(["round-wheels", "warning"], ["clean-glass", "error"]), [], RULES).complaints)).toEqual(
      ["warning round-wheels", "error clean-glass"],
    );
    expect(said(weigh(both, set(["round-wheels", "off"]), [], RULES).complaints)).toEqual(["warning clean-glass"]);
  });

  test("the last line about a rule counts", () => {
    expect(gravityOf(set(["a", "off"], ["a", "warning"]), "a", "error")).toBe("warning");
    expect(gravityOf(set(), "a", "error")).toBe("error");
  });

  test("what no rule of these found stays as it is", () => {
    expect(said(weigh([found("shape")], set(["clean-glass", "off"]), [], RULES).complaints)).toEqual(["error shape"]);
  });

  test("a rule that nobody knows is an error, with the nearest known", () => {
    const [complaint] = weigh([], set(["clean-glas", "off"]), [], RULES).complaints;
    expect(complaint).toMatchObject({
      severity: "error",
      rule: "unknown-name",
      file: "checks.yaml",
      path: ["rules", 0, "check"],
      hint: "did you mean 'clean-glass'?",
    });
    expect(weigh([], set(["shape", "off"]), [], RULES).complaints).toHaveLength(1);
  });
});

describe("a file accepts what is found in it", () => {
  test("with its reason, and it is listed", () => {
    const { complaints, accepted: listed } = weigh([found("round-wheels")], set(), [accepted()], RULES);
    expect(complaints).toEqual([]);
    expect(listed).toEqual([{ complaint: found("round-wheels"), why: "it is a sledge" }]);
  });

  // acceptance, whether it covers a finding about W-1 from record R-1
  const CASES: [string, Partial<Acceptance>, boolean][] = [
    ["of the check in the file", {}, true],
    ["about the part", { about: ["W-1"] }, true],
    ["about the part and the record", { about: ["W-1", "R-1"] }, true],
    ["about another part", { about: ["W-2"] }, false],
    ["about the part and another one", { about: ["W-1", "W-2"] }, false],
    ["in another file", { file: "parts/glass.yaml" }, false],
    ["of another check", { check: "clean-glass" }, false],
  ];
  test.each(CASES)("%s", (_, more, covers) => {
    const fault = found("round-wheels", { names: ["W-1"], records: ["R-1"] });
    const { complaints } = weigh([fault], set(), [accepted(more)], RULES);
    expect(said(complaints)).toEqual(covers ? [] : ["error round-wheels", "warning accepts-nothing"]);
  });

  test("what accepts nothing is a finding, which can be weighed otherwise and is not asked of a rule that is off", () => {
    expect(said(weigh([], set(), [accepted()], RULES).complaints)).toEqual(["warning accepts-nothing"]);
    expect(said(weigh([], set(["accepts-nothing", "error"]), [accepted()], RULES).complaints)).toEqual([
      "error accepts-nothing",
    ]);
    expect(weigh([], set(["round-wheels", "off"]), [accepted()], RULES).complaints).toEqual([]);
  });

  test("an error of reading cannot be accepted", () => {
    const { complaints } = weigh([found("shape")], set(), [accepted({ check: "shape" })], RULES);
    expect(said(complaints)).toContain("error shape");
    expect(said(complaints)).toContain("error unknown-name");
  });
});
