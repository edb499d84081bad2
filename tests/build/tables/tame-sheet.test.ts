import { expect, test } from "vitest";
import { MOST_COLUMNS, MOST_ROWS } from "../../../src/build/tables/limits.ts";
import { FAULT, PERCENT, tameSheet } from "../../../src/build/tables/tame-sheet.ts";

test.each([
  // what, cell, what becomes of it
  ["a value", '<c r="A1"><v>1</v></c>', '<c r="A1"><v>1</v></c>'],
  ["colour only", '<c r="A1" s="3"/>', ""],
  ["colour only, written out", '<c r="A1" s="3"></c>', ""],
  ["a text in place", '<c r="A1" t="inlineStr"><is><t>x</t></is></c>', '<c r="A1" t="inlineStr"><is><t>x</t></is></c>'],
  ["a formula with its result", '<c r="B2"><f>1+1</f><v>2</v></c>', '<c r="B2"><f>1+1</f><v>2</v></c>'],
  [
    "a formula without one",
    '<c r="B2"><f>1+1</f></c>',
    `<c r="B2" t="inlineStr"><is><t>${FAULT}cell B2 is a formula without a stored result</t></is></c>`,
  ],
  [
    "a formula with an empty result, in a namespace",
    '<x:c r="B2" t="str"><x:f>A1</x:f><x:v/></x:c>',
    `<c r="B2" t="inlineStr"><is><t>${FAULT}cell B2 is a formula without a stored result</t></is></c>`,
  ],
  [
    "an error",
    '<c r="C3" t="e"><f>1/0</f><v>#DIV/0!</v></c>',
    `<c r="C3" t="inlineStr"><is><t>${FAULT}cell C3 shows the error #DIV/0!</t></is></c>`,
  ],
  ["an empty row", '<row r="7" spans="1:2"/>', ""],
  ["columns are no cells", '<cols><col min="1"/></cols>', '<cols><col min="1"/></cols>'],
])("%s", (_, xml, tamed) => {
  expect(tameSheet(`<s>${xml}</s>`).xml).toBe(`<s>${tamed}</s>`);
});

test("formulas with a result are listed", () => {
  expect(tameSheet('<c r="B2"><f>1</f><v>1</v></c><c r="B3"><v>1</v></c>').formulas).toEqual(["B2"]);
});

test.each([
  [`A${MOST_ROWS + 1}`, undefined],
  [`A${MOST_ROWS + 2}`, `A${MOST_ROWS + 2}`],
  ["OJ1", undefined], // the 400th column
  ["OK1", "OK1"],
])("a value in %s lies beyond: %s", (address, beyond) => {
  expect(MOST_COLUMNS).toBe(400);
  expect(tameSheet(`<c r="${address}"><v>1</v></c>`).beyond).toBe(beyond);
  expect(tameSheet(`<c r="${address}" s="1"/>`).beyond).toBeUndefined();
});

test.each([
  // cell, what becomes of it
  ['<c r="A1" s="4"><v>0.5</v></c>', `<c r="A1" t="inlineStr"><is><t>${PERCENT}50</t></is></c>`],
  ['<c r="A1" s="4" t="n"><v>0.07</v></c>', `<c r="A1" t="inlineStr"><is><t>${PERCENT}7</t></is></c>`],
  ['<c r="A1" s="4"><f>B1/2</f><v>-2.85E-1</v></c>', `<c r="A1" t="inlineStr"><is><t>${PERCENT}-28.5</t></is></c>`],
  ['<c r="A1" s="4" t="s"><v>0</v></c>', '<c r="A1" s="4" t="s"><v>0</v></c>'],
  ['<c r="A1" s="3"><v>0.5</v></c>', '<c r="A1" s="3"><v>0.5</v></c>'],
])("shown as a percentage: %s", (cell, tamed) => {
  const { xml, percentages } = tameSheet(cell, new Set(["4"]));
  expect(xml).toBe(tamed);
  expect(percentages).toEqual(cell === tamed ? [] : ["A1"]);
});

test("hidden rows and columns with something in them are noted", () => {
  const xml = `<sheetPr filterMode="1"/><cols><col min="2" max="3" hidden="1"/><col min="4" max="4"/></cols>
<row r="1"><c r="A1"><v>1</v></c><c r="C1"><v>1</v></c><c r="D1"><v>1</v></c></row>
<row r="2" hidden="1"><c r="A2" s="1"/></row><row r="3" hidden="true"><c r="A3"><v>1</v></c></row><row r="4"><c r="A4"><v>1</v></c></row>`;
  expect(tameSheet(xml)).toMatchObject({ hiddenRows: ["3"], hiddenColumns: ["C"], filtered: true });
  expect(tameSheet('<row r="1"><c r="A1"><v>1</v></c></row>')).toMatchObject({
    hiddenRows: [],
    hiddenColumns: [],
    filtered: false,
  });
});
