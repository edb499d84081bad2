import { describe, expect, test } from "vitest";
import { dayNumber, numberOf, span, stretch, writtenValue } from "../../../src/engine/scope/trait.ts";
import { TRACTOR_TRAITS, tractorTrait } from "../../helpers/tractor-space.ts";
import { STRETCHES, TYPED } from "./trait.cases.ts";

test.each(TYPED)("%s typed '%s' is %s", (id, typed, value) => {
  const trait = tractorTrait(id);
  const number = numberOf(trait, typed);
  expect(number === undefined ? undefined : writtenValue(trait, number)).toBe(value);
});

test.each(STRETCHES)("%s %s reaches from %s to %s", (id, value, first, last) => {
  const trait = tractorTrait(id);
  const reach = stretch(trait, numberOf(trait, value) as number);
  expect(reach.map((number) => writtenValue(trait, number))).toEqual([first, last]);
});

describe("what is written is read back as the same value", () => {
  test.each(TRACTOR_TRAITS.map((trait) => [trait.id, trait] as const))("%s", (_, trait) => {
    const [from, to] = span(trait);
    for (const number of [from, from + 1, Math.floor((from + to) / 2), to - 1, to])
      expect(numberOf(trait, writtenValue(trait, number))).toBe(number);
  });
});

test("a value's id counts before another value's nickname", () => {
  const values = [
    { id: "one", label: "First", aliases: ["two"] },
    { id: "two", label: "Second", aliases: [] },
  ];
  expect(numberOf({ ...tractorTrait("PT"), kind: "list", values }, "two")).toBe(1);
});

test("days are counted from 1970, and a day that no calendar has is none", () => {
  expect(dayNumber("1970-01-01")).toBe(0);
  expect(dayNumber("1969-12-31")).toBe(-1);
  expect(dayNumber("1900-02-29")).toBeUndefined();
  expect(dayNumber("2000-02-29")).toBe(11016);
});
