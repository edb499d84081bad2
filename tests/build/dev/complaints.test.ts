import { expect, test } from "vitest";
import type { Finding } from "../../../src/build/data/read-folder.ts";
import { Complaints } from "../../../src/build/dev/complaints.ts";
import { catalogOf } from "../../helpers/tiny-folder.ts";

const finding = (message: string): Finding => ({
  ...{ severity: "error", rule: "shape", file: "a.yaml", path: [], message, hint: "mend it" },
  position: { line: 1, column: 1, length: 1 },
  shown: "",
});
const [slip, gap, other] = ["slip", "gap", "other"].map(finding) as [Finding, Finding, Finding];
const good = { catalog: catalogOf(), findings: [] };
const bad = (...findings: Finding[]) => ({ catalog: undefined, findings });

test("data with errors show these; data without show what the check says, once it has said it", () => {
  const complaints = new Complaints();
  expect(complaints.of(undefined)).toEqual([]);
  expect(complaints.of(good)).toEqual([]);
  complaints.checked([gap]);
  expect(complaints.of(good)).toEqual([gap]);
  expect(complaints.of(bad(slip))).toEqual([slip]);
  complaints.forgetCheck();
  expect(complaints.of(good)).toEqual([]);
});

test("the terminal is told what it does not know yet, also when errors came between two checks", () => {
  const complaints = new Complaints();
  expect(complaints.checked([gap])).toEqual({ now: [gap], known: [] });
  expect(complaints.errors(bad(slip))).toEqual({ now: [slip], known: [] });
  expect(complaints.errors(bad(slip, other))).toEqual({ now: [slip, other], known: [slip] });
  expect(complaints.checked([gap])).toEqual({ now: [gap], known: [gap, slip, other] });
  expect(complaints.errors(bad(slip))).toEqual({ now: [slip], known: [] });
});
