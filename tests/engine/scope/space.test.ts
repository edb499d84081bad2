import { expect, test } from "vitest";
import { ALL, NONE } from "../../../src/engine/scope/diagram.ts";
import { Space } from "../../../src/engine/scope/space.ts";
import { tractorSpace, tractorTrait } from "../../helpers/tractor-space.ts";

test("a trait is found by its id, its label and what people call it", () => {
  const space = tractorSpace();
  for (const name of ["my", "MY", " model year ", "year"]) expect(space.find(name)).toBe(1);
  expect(space.find("colour")).toBeUndefined();
  expect(space.find("constructor")).toBeUndefined();
});

test("what one trait is also called never hides the id of another", () => {
  const space = new Space([
    { ...tractorTrait("PT"), aliases: ["WN"] },
    { ...tractorTrait("WN"), label: "PT" },
  ]);
  expect([space.find("PT"), space.find("WN")]).toEqual([0, 1]);
});

test("a role is played by one trait or by none", () => {
  expect(tractorSpace().role("sequence")).toBe(3);
  expect(new Space([]).role("line")).toBeUndefined();
});

test("'fitted today' is one yes/no trait a part, made when first asked for and then kept", () => {
  const space = tractorSpace();
  const first = space.fitted("HT-101");
  expect(space.fitted("ht-101")).toBe(first);
  expect(space.fitted("HT-102")).toBe(first + 1);
  expect(space.trait(first)).toMatchObject({ kind: "flag", today: true, label: "HT-101 fitted" });
  expect(space.declared).toHaveLength(first);
});

test("a trait that is not there is a fault of the caller", () => {
  expect(() => tractorSpace().trait(99)).toThrow("no trait has the number 99");
});

test("the union of no set is no car, and of all lines every car", () => {
  const space = tractorSpace();
  expect(space.any([])).toBe(NONE);
  expect(space.any([0, 1, 2].map((line) => space.where(0, [[line, line]])))).toBe(ALL);
});

test("values beyond the domain are cut off", () => {
  const space = tractorSpace();
  expect(space.where(1, [[1900, 2000]])).toBe(ALL);
  expect(space.where(1, [[1963, 2000]])).toBe(NONE);
  expect(space.where(1, [[1900, 1958]])).toBe(space.where(1, [[1957, 1958]]));
  expect(space.where(1, [])).toBe(NONE);
});
