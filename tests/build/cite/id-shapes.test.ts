import { expect, test } from "vitest";
import { idShapes, plainDashes } from "../../../src/build/cite/id-shapes.ts";

test("what has exactly the shape of an id is found, with whatever dash", () => {
  const text =
    "HY59-01, XX12-34. HY59\u201101 HY59–02–HY59–03 (ab1.2)/HY59-04/ hy59-01 HY59-011 XHY59-01 HY59-01a HY59-01-2 ab1x2 HY5-01";
  const found = [...text.matchAll(idShapes(["FR58-01", "HY59-01", "xy9.9"]) as RegExp)].map(([id]) => plainDashes(id));
  expect(found).toEqual(["HY59-01", "XX12-34", "HY59-01", "HY59-02", "HY59-03", "ab1.2", "HY59-04"]);
});

test("ids that a word or a figure may look like are not sought", () => {
  expect(idShapes(["pump", "4411", "A-1"])).toBeUndefined();
});
