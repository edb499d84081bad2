import { expect, test } from "vitest";
import { Complaints } from "../../../src/engine/records/complaint.ts";

test("complaints about a file are kept in their order, each with its gravity and its field", () => {
  const complaints = new Complaints("parts/pump.yaml");
  complaints.error(["parts", 0], "wrong", "mend it");
  complaints.warning([], "odd", "look at it");
  complaints.error(["a"], "a name is wrong", "mend it", { key: true, within: [1, 2] });
  expect(complaints.list).toEqual([
    { severity: "error", file: "parts/pump.yaml", path: ["parts", 0], message: "wrong", hint: "mend it" },
    { severity: "warning", file: "parts/pump.yaml", path: [], message: "odd", hint: "look at it" },
    {
      severity: "error",
      file: "parts/pump.yaml",
      path: ["a"],
      message: "a name is wrong",
      hint: "mend it",
      key: true,
      within: [1, 2],
    },
  ]);
});
