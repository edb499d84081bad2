import { expect, test } from "vitest";
import { fieldOf, listOf } from "../../../src/engine/records/unshaped.ts";

// a value; its field 'a', and that as a list
test.each([
  [{ a: [1] }, [1], [1]],
  [{ a: "x" }, "x", []],
  [{}, undefined, []],
  [[], undefined, []],
  [null, undefined, []],
  ["text", undefined, []],
  [undefined, undefined, []],
])("%j", (value, field, list) => {
  expect(fieldOf(value, "a")).toEqual(field);
  expect(listOf(value, "a")).toEqual(list);
});
