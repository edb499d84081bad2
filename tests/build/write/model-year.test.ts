import { expect, test } from "vitest";
import { modelYear } from "../../../src/build/write/model-year.ts";
import { plainFiles } from "../../helpers/demo-data.ts";

const RECORDS = [
  { issued: "1958-09-01", year: 1959 },
  { issued: "1959-02-01", year: 1959 },
];

// day, model year
test.each([
  ["1960-08-20", 1961],
  ["1960-11-01", 1961],
  ["1960-12-30", 1960],
  ["1961-01-10", 1961],
  ["1961-04-01", 1961],
])("%s is of %i", (day, year) => {
  expect(modelYear(RECORDS, day)).toBe(year);
});

test("without any record it is the calendar's", () => {
  expect(modelYear([], "1960-08-20")).toBe(1960);
});

test("each record of the demonstration lies where the others say", () => {
  const records = plainFiles("changes/").map(({ path, facts }) => {
    return { issued: facts.issued as string, year: Number(path.split("/")[1]) };
  });
  for (const record of records)
    expect(
      modelYear(
        records.filter((other) => other !== record),
        record.issued,
      ),
    ).toBe(record.year);
});
