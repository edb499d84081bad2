import { expect, test } from "vitest";
import { passing } from "../../../src/browser/map/passing.ts";
import { type TableOrder, tableRows } from "../../../src/browser/map/table-rows.ts";
import { FIRST_VIEW } from "../../../src/browser/map/view.ts";
import { MADE_UP } from "./made-up.ts";

const through = passing(MADE_UP, FIRST_VIEW);
const rows = (order: TableOrder) => tableRows(MADE_UP, { ...through, order });

test("a row for every node that passes, with systems by name and every relation at either end counted", () => {
  expect(rows("kind")).toHaveLength(MADE_UP.nodes.size);
  const part = rows("kind").find(({ node }) => node.id === "1-200");
  expect(part).toMatchObject({ systems: ["Oven"], relations: 3 });
});

test("by kind and then by name at first", () => {
  expect(rows("kind").map(({ node }) => node.id)).toEqual([
    ...["hob", "oven", "A", "B", "1", "2", "N", "R1", "R2", "ring", "door", "1-100", "1-200", "2-100"],
  ]);
});

test("by the number of relations, most first", () => {
  const counts = rows("relations").map(({ relations }) => relations);
  expect(counts).toEqual(counts.toSorted((a, b) => b - a));
});
