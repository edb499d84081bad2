import { describe, expect, test } from "vitest";
import { z } from "zod";
import { checkShape } from "../../../src/engine/records/check-shape.ts";
import { Complaints } from "../../../src/engine/records/complaint.ts";
import { saidOf } from "../../helpers/tiny-folder.ts";
import { SHAPES } from "./check-shape.cases.ts";

describe("a field that does not keep its shape is named, with what belongs there", () => {
  test.each(SHAPES)("%s: %j written as %j", (file, old, replacement, ...said) => {
    expect(saidOf(file, old, replacement)).toEqual(said);
  });
});

// what stands in the place of a whole file
const NO_FIELDS: unknown[] = [null, undefined, "words", 7, true, ["a", "list"], Number.NaN];

test.each(NO_FIELDS.map((value) => [value]))("a file that is %j is no set of fields", (value) => {
  const complaints = new Complaints("x.yaml");
  expect(checkShape(z.strictObject({ a: z.string() }), value, complaints)).toBeUndefined();
  expect(complaints.list.map(({ path, message }) => [path, message])).toEqual([
    [[], value === undefined ? "the file is missing" : "the file must be a set of fields"],
  ]);
});

test("a value that holds comes back with its defaults, and nothing is said", () => {
  const complaints = new Complaints("x.yaml");
  const shape = z.strictObject({ a: z.string().trim(), b: z.int().default(1) });
  expect(checkShape(shape, { a: " x " }, complaints)).toEqual({ a: "x", b: 1 });
  expect(complaints.list).toEqual([]);
});

test("every fault of a file is said at once", () => {
  const complaints = new Complaints("x.yaml");
  checkShape(z.strictObject({ a: z.string(), b: z.int(), c: z.boolean() }), { a: 1, b: "x", d: 0 }, complaints);
  expect(complaints.list.map((complaint) => complaint.message)).toEqual([
    "'a' must be words",
    "'b' must be a number",
    "'c' is missing",
    "no field is called 'd' here",
  ]);
});
