import { expect, test } from "vitest";
import { openPartIndex, whereHolds } from "../../../src/engine/interchange/part-index.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const { catalog } = tinyKnowledge();
const index = openPartIndex(catalog);

test("statements by part and place", () => {
  expect([...index.builtAt.keys()].sort()).toEqual(["lift arms", "pump"]);
  expect(index.builtWith.get("HT-102")?.map((it) => it.type)).toEqual(["built", "mixed"]);
  expect(index.standInsOf.get("HT-102")?.map((it) => it.for)).toEqual(["HT-101", undefined]);
  expect(index.ordersOf.get("HT-101")?.map((it) => it.new)).toEqual(["HT-102"]);
});

test("a statement holds within its scope; one without a scope for all of the cars", () => {
  const [narrow] = index.standInsOf.get("HT-102")?.filter((it) => it.for === undefined) ?? [];
  const [wide] = index.standInsOf.get("HT-101") ?? [];
  const heron = catalog.lines.find((line) => line.id === "H")?.cars;
  if (!narrow || !wide || !heron) throw new Error("the tiny folder has changed");
  expect(whereHolds(index, narrow, catalog.buildable)).toBe(heron);
  expect(whereHolds(index, wide, heron)).toBe(heron);
});
