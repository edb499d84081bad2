import { expect, test } from "vitest";
import { Complaints } from "../../../../src/engine/records/complaint.ts";
import { mustKnow } from "../../../../src/engine/records/resolve/names.ts";

test("a known name is fine, an unknown one is said with the nearest known", () => {
  const complaints = new Complaints("x.yaml");
  const known = new Map([["HT-101", 1]]);
  expect(mustKnow(known, "HT-101", "part", ["a"], complaints, "parts/")).toBe(true);
  expect(complaints.list).toEqual([]);
  expect(mustKnow(known, "HT-10l", "part", ["a"], complaints, "parts/")).toBe(false);
  expect(mustKnow(known, "plough", "feature", ["b", 0], complaints, "'features' of this file")).toBe(false);
  expect(complaints.list).toEqual([
    {
      severity: "error",
      rule: "unknown-name",
      file: "x.yaml",
      path: ["a"],
      message: "no part is called 'HT-10l'",
      hint: "did you mean 'HT-101'?",
      unknown: { name: "HT-10l", as: ["part"], meant: "HT-101" },
    },
    {
      severity: "error",
      rule: "unknown-name",
      file: "x.yaml",
      path: ["b", 0],
      message: "no feature is called 'plough'",
      hint: "add it to 'features' of this file, or mend the name",
    },
  ]);
});

test("a feature is not known where the file that has it may not have been read", () => {
  const complaints = new Complaints("x.yaml");
  mustKnow(new Map(), "ribs", "feature", ["a"], complaints, "parts/pump.yaml", true);
  expect(complaints.list).toMatchObject([{ rule: "unknown-name", unknown: { name: "ribs", as: ["feature"] } }]);
});
