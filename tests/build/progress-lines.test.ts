import { describe, expect, test } from "vitest";
import { barLine, type StageState, stageLine } from "../../src/build/progress-lines.ts";

const stage = (given: Partial<StageState>): StageState => ({
  name: "pages",
  verb: "written",
  count: undefined,
  total: undefined,
  milliseconds: 400,
  ...given,
});

describe("the line of a finished stage", () => {
  // stage, line
  test.each([
    [{ name: "records", verb: "read", count: 134 }, "records             134 read          0.4 s"],
    [{ count: 20_000, milliseconds: 12_340 }, "pages            20,000 written      12.3 s"],
    [{ name: "styles", verb: "bundled" }, "styles                  bundled       0.4 s"],
    [{ count: 0 }, "pages                 0 written       0.4 s"],
  ])("%j", (given, line) => {
    expect(stageLine(stage(given))).toBe(line);
  });
});

describe("the bar", () => {
  // stage, number of the drawing, width, line
  test.each([
    [{ count: 0, total: 10 }, 0, 80, "pages          ░░░░░░░░░░░░░░░░░░░░░░░░  0 of 10    0.4 s"],
    [{ count: 5, total: 10 }, 1, 80, "pages          ████████████░░░░░░░░░░░░  5 of 10    0.4 s"],
    [{ count: 12, total: 10 }, 2, 80, "pages          ████████████████████████ 12 of 10    0.4 s"],
    [{ count: 3, total: 0 }, 0, 80, "pages          ████░░░░░░░░░░░░░░░░░░░░   3 of 0    0.4 s"],
    [{ count: 7 }, 2, 80, "pages          ░░████░░░░░░░░░░░░░░░░░░        7    0.4 s"],
    [{}, 20, 80, "pages          ░░░░░░░░░░░░░░░░░░░░████             0.4 s"],
    [{}, 21, 80, "pages          ████░░░░░░░░░░░░░░░░░░░░             0.4 s"],
    [{ count: 5, total: 10 }, 0, 20, "pages          ████"],
  ])("%j, drawing %i, width %i", (given, drawing, width, line) => {
    expect(barLine(stage(given), drawing, width)).toBe(line);
  });
});
