import { expect, test } from "vitest";
import { partsIn } from "../../../src/engine/audit/parts-in.ts";
import { catalogOf } from "../../helpers/tiny-folder.ts";

const catalog = catalogOf();

test("part numbers are found where they stand, whatever sign follows them, and as whole words", () => {
  const text = "Fit HT-101, then (HT-201). Not XHT-102, HT-1011 or HT-9; HT-102! HT-102";
  const found = partsIn(catalog, text);
  expect(found.map(({ number }) => number)).toEqual(["HT-101", "HT-201", "HT-102", "HT-102"]);
  for (const { number, from } of found) expect(text.slice(from, from + number.length)).toBe(number);
});

test("a text without any", () => {
  expect(partsIn(catalog, "")).toEqual([]);
});
