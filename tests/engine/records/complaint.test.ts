import { expect, test } from "vitest";
import { Complaints } from "../../../src/engine/records/complaint.ts";

test("complaints about a file are kept in their order, each with its rule and its field", () => {
  const complaints = new Complaints("parts/pump.yaml");
  complaints.error(["parts", 0], "wrong", "mend it");
  complaints.error([], "odd", "look at it", { rule: "scope" });
  complaints.error([], "who?", "mend it", { unknown: { name: "x", as: ["part"] } });
  complaints.error(["a"], "a name is wrong", "mend it", { key: true, within: [1, 2] });
  expect(complaints.list).toEqual([
    {
      severity: "error",
      rule: "disagreement",
      file: "parts/pump.yaml",
      path: ["parts", 0],
      message: "wrong",
      hint: "mend it",
    },
    { severity: "error", rule: "scope", file: "parts/pump.yaml", path: [], message: "odd", hint: "look at it" },
    {
      severity: "error",
      rule: "unknown-name",
      file: "parts/pump.yaml",
      path: [],
      message: "who?",
      hint: "mend it",
      unknown: { name: "x", as: ["part"] },
    },
    {
      severity: "error",
      rule: "disagreement",
      file: "parts/pump.yaml",
      path: ["a"],
      message: "a name is wrong",
      hint: "mend it",
      key: true,
      within: [1, 2],
    },
  ]);
});
