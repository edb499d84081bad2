import { expect, test } from "vitest";
import { Complaints } from "../../../../src/engine/records/complaint.ts";
import { resolveScope } from "../../../../src/engine/records/resolve/scope.ts";
import { ALL } from "../../../../src/engine/scope/diagram.ts";
import { Space } from "../../../../src/engine/scope/space.ts";
import { tractorSpace } from "../../../helpers/tractor-space.ts";

test("every slip becomes a complaint that knows its characters, and the scope counts as every car", () => {
  const complaints = new Complaints("x.yaml");
  const scope = resolveScope(tractorSpace(), "line=Q; my>=1900", ["a", 0], complaints);
  expect(scope).toEqual({ text: "line=Q; my>=1900", alternatives: [[]], cars: ALL });
  expect(complaints.list.map(({ path, message, within }) => ({ path, message, within }))).toEqual([
    { path: ["a", 0], message: "model line has no value 'Q'", within: [5, 6] },
    { path: ["a", 0], message: "model year has no value '1900'", within: [12, 16] },
  ]);
});

test("in a space without traits nothing can be said", () => {
  const complaints = new Complaints("x.yaml");
  expect(resolveScope(new Space([]), "line=Q", ["a"], complaints).cars).toBe(ALL);
  expect(complaints.list).toEqual([]);
});

test("a part that should be on the car must be a part, where the parts are known", () => {
  const complaints = new Complaints("x.yaml");
  const parts = new Map([["HT-101", {}]]);
  resolveScope(tractorSpace(), "fitted=HT-101 || fitted!=HT-102,HT-9", ["a"], complaints, parts);
  expect(complaints.list.map((complaint) => complaint.message)).toEqual([
    "no part is called 'HT-102'",
    "no part is called 'HT-9'",
  ]);
  resolveScope(tractorSpace(), "fitted=HT-102", ["a"], complaints);
  expect(complaints.list).toHaveLength(2);
});
