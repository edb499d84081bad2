import { expect, test } from "vitest";
import { tableNamed } from "../../../src/build/tables/all-tables.ts";
import { agree, EntryIndex, valueAt } from "../../../src/build/tables/entry-index.ts";
import type { Table } from "../../../src/build/tables/table.ts";

const kits = tableNamed("kits") as Table;
const built = tableNamed("built") as Table;

test("an entry is the same with its defaults written out or left out", () => {
  const one = { part: "HT-201", count: 1 };
  const index = new EntryIndex(kits, [{ part: "HT-290" }, one]);
  expect(index.same({ part: "HT-201" })).toBe(one);
  expect(index.same({ part: "HT-201", count: 2 })).toBeUndefined();
});

test("entries of one place and scope speak of the same thing", () => {
  const index = new EntryIndex(built, [
    { place: "pump", part: "HT-101", scope: "line=B" },
    { place: "pump", part: "HT-102", scope: "line=H" },
    { place: "pump", part: "HT-103", scope: " line=B " },
  ]);
  expect(index.alike({ place: "pump", part: "HT-109", scope: "line=B" })).toEqual([0, 2]);
  expect(index.alike({ place: "pump", part: "HT-109" })).toEqual([]);
  expect(index.alike({ part: "HT-101" })).toEqual([]);
});

test("a changed entry is found by what it says now", () => {
  const entry = { place: "pump", part: "HT-101", scope: "line=B" };
  const index = new EntryIndex(built, [entry]);
  const before = { ...entry };
  index.forget(entry);
  entry.part = "HT-102";
  index.learn(entry, 0);
  expect(index.same(before)).toBeUndefined();
  expect(index.same({ ...entry })).toBe(entry);
  expect(index.alike(entry)).toEqual([0]);
});

test.each([
  ["a ", "a", true],
  [["a"], ["a "], true],
  [["a", "b"], ["b", "a"], false],
  [1, "1", false],
  [undefined, undefined, true],
])("%j and %j agree: %s", (a, b, yes) => {
  expect(agree(a, b)).toBe(yes);
});

test("a value is found by its path, through lists too", () => {
  expect(valueAt({ a: [{ b: 1 }] }, ["a", 0, "b"])).toBe(1);
  expect(valueAt({ a: 1 }, ["a", "b"])).toBeUndefined();
});
