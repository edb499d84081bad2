import { expect, test } from "vitest";
import { nextBulletinId, nextRecordId, takenFault, yearFor } from "../../../src/build/write/known-ids.ts";
import { catalogOf, spoiled, TINY } from "../../helpers/tiny-folder.ts";

const catalog = catalogOf();

test("the next id of a record is that of its system, in its model year", () => {
  expect(nextRecordId(catalog, { components: ["pump"], year: "1959" })).toBe("HY59-02");
  expect(nextRecordId(catalog, { components: ["pump"], year: "1960" })).toBe("HY60-01");
  expect(nextRecordId(catalog, { year: "1958" })).toBe("FR58-02");
});

test("an id that moved is not given out again", () => {
  const moved = catalogOf(spoiled({ "moved.yaml": ["from: HY-1,", "from: HY59-02,"] }));
  expect(nextRecordId(moved, { components: ["pump"], year: "1959" })).toBe("HY59-03");
});

test("where no folder tells the year, the day of issue does", () => {
  const { "changes/1959/HY59-01.md": a, "changes/1958/FR58-01.md": b, ...rest } = TINY;
  const flat = catalogOf({ ...rest, "changes/all/HY59-01.md": a as string, "changes/all/FR58-01.md": b as string });
  expect(yearFor(flat, "1960-12-01")).toBe(1960);
  expect(nextRecordId(flat, { components: ["pump"], year: "1960" })).toBe("HY60-01");
});

test("the next id of a bulletin", () => {
  expect(nextBulletinId(catalog, "1960-03-01")).toBe("TB-2");
  const { "bulletins/TB-1.md": _, ...none } = TINY;
  expect(nextBulletinId(catalogOf(none), "1960-03-01")).toBeUndefined();
});

// id, what is or was called so
test.each([
  ["hy59-01", "HY59-01"],
  ["HY-1", "HY-1"],
  ["ht-101", "HT-101"],
  ["Pump", "pump"],
  ["TB-1", "TB-1"],
  ["HY59-02", undefined],
])("%s is taken: %s", (id, taken) => {
  expect(takenFault(id, catalog)).toBe(taken && `'${taken}' is or was the id of something else`);
});
