import { describe, expect, test } from "vitest";
import type { Answers } from "../../../src/build/write/field.ts";
import { namedYears, saidAssumed, suggestedYear, withNamedYears } from "../../../src/build/write/named-years.ts";
import { NEW_FIELDS } from "../../../src/build/write/new-fields.ts";
import { catalogOf } from "../../helpers/tiny-folder.ts";

const catalog = catalogOf();

describe("the years that a new record names", () => {
  // scope, from when, years
  test.each([
    ["all", "from now on", []],
    ["line=B", "Start of 1959, and for 1958 cars; not in 1850", [1958, 1959]],
    ["my=1958-1960", "", [1958, 1960]],
    ["line=B; at=K59#0412+ || my>=1960", "", [1959, 1960, 1961]],
    ["no scope at all", "in 1960", [1960]],
  ])("%s, %s", (scope, starts, years) => {
    expect(namedYears(catalog, { scope, starts })).toEqual(years);
  });
});

describe("the model year of a new record", () => {
  // scope, from when, day of issue, year
  test.each([
    ["my=1958", "", "1960-03-01", 1958],
    ["my=1958", "during 1960", "1960-03-01", 1960],
    ["my>=1958", "", "1958-03-01", 1958],
    ["all", "", "1960-03-01", 1960],
    ["my=1958", "", undefined, 1958],
  ])("%s, %s, issued %s: %s", (scope, starts, issued, year) => {
    expect(suggestedYear(catalog, { scope, starts, issued })).toBe(year);
  });
});

describe("today is the day of issue only of cars of about this time", () => {
  const issued = withNamedYears(NEW_FIELDS.record).find(({ name }) => name === "issued");
  const suggested = (today: string, answers: Answers) => issued?.suggest?.({ catalog, today }, answers);
  // today, scope, whether it is suggested
  test.each([
    ["1960-03-01", "my=1959", true],
    ["1960-03-01", "my>=1961", true],
    ["1960-03-01", "my=1957", false],
    ["1962-03-01", "all", true],
    ["2027-03-01", "all", false],
    ["2027-03-01", "my=1961", false],
  ])("%s, %s: %s", (today, scope, is) => {
    expect(suggested(today, { scope })).toBe(is ? today : undefined);
  });
});

test("what nobody said is said", () => {
  const answers = { issued: "1960-03-01", year: "1960" };
  expect(saidAssumed(answers, { flags: {}, today: "1960-03-01" })).toBe(
    "Taken as issued today, 1960-03-01, because no --issued says otherwise.\nTaken as of model year 1960; --year says otherwise.",
  );
  expect(saidAssumed(answers, { flags: { issued: ["1960-03-01"], year: ["1960"] }, today: "1960-03-01" })).toBe("");
});
