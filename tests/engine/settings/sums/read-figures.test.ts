import { expect, test } from "vitest";
import { readFigures } from "../../../../src/engine/settings/sums/read-figures.ts";

test.each([
  ["teeth=20; threads=16", { teeth: "20", threads: "16" }],
  [" teeth = 20 ;; ", { teeth: "20" }],
  ["ratio=a=b", { ratio: "a=b" }],
  ["teeth=", { teeth: "" }],
  ["", {}],
])("'%s'", (text, figures) => {
  expect(readFigures(text)).toEqual({ as: "figures", figures });
});

test.each([
  ["teeth=20;teeth=24", "'teeth' is given twice: '20' and '24'. Leave one out."],
  ["teeth=20; teeth=20", "'teeth' is given twice: '20' and '20'. Leave one out."],
  ["teeth", "'teeth' is no figure; write them as \"teeth=20; threads=16\"."],
  ["=20", "'=20' is no figure; write them as \"teeth=20; threads=16\"."],
])("'%s' is refused", (text, why) => {
  expect(readFigures(text)).toEqual({ as: "refused", why });
});
