import { expect, test } from "vitest";
import { Complaints } from "../../../../src/engine/records/complaint.ts";
import { Spellings } from "../../../../src/engine/records/resolve/capitals.ts";

test("an id that differs from one before it in capitals only is complained about, the same id is not", () => {
  const spellings = new Spellings();
  const complaints = new Complaints("b.md");
  spellings.add({ id: "AB-1", what: "part", file: "parts/a.yaml" });
  for (const id of ["AB-1", "AB-2", "ab-1"]) spellings.check({ id, what: "record", file: "b.md" }, ["id"], complaints);
  expect(complaints.list.map(({ path, message }) => [path, message])).toEqual([
    [["id"], "record 'ab-1' and part 'AB-1' in parts/a.yaml differ in capitals only"],
  ]);
});
