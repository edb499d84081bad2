import { expect, test } from "vitest";
import { mapSheets } from "../../../src/build/tables/map-sheets.ts";
import { sheetOf } from "./tiny-import.ts";

const NONE = { sheets: [], leaveOut: [] };
const sheet = sheetOf("built", "record,plaec,part,scope", "HY59-01,pump,HT-101,all");

test("what is guessed has to be settled, what is sure has not", () => {
  expect(mapSheets([sheet], NONE).open).toEqual(["'built': guessed: 'plaec' is taken for the column 'place'"]);
  expect(mapSheets([sheetOf("built", "record,place,part,scope", "a,b,c,d")], NONE).open).toEqual([]);
});

test("a column that would get lost has to be settled", () => {
  expect(mapSheets([sheetOf("built", "record,place,part,scope,Clerk", "a,b,c,d,e")], NONE).open).toEqual([
    "'built': the column 'Clerk' goes nowhere; map it, or list it under leave-out",
  ]);
});

test("a mapping settles it", () => {
  const columns = Object.fromEntries(["record", "part", "scope"].map((name) => [name, { column: name }]));
  const mapping = {
    sheet: "built",
    table: "built",
    columns: { ...columns, place: { column: "plaec" } },
    constants: {},
    "leave-out": [],
  };
  const { mapped, open } = mapSheets([sheet], { sheets: [mapping], leaveOut: [] });
  expect(open).toEqual([]);
  expect(mapped).toEqual([{ sheet, mapping, proposal: undefined }]);
});

test("a sheet of something else stays open until a mapping leaves it out", () => {
  const notes = sheetOf("Notes", "%%", "milk");
  expect(mapSheets([notes], NONE)).toEqual({
    mapped: [],
    strange: [notes],
    notes: [],
    open: ["'Notes': no header means a column of any table; a mapping file may leave the sheet out"],
  });
});

test("what a new entry needs and no column fills is said, and stops nothing", () => {
  const { open, notes } = mapSheets([sheetOf("built", "record,place,scope", "a,b,c")], NONE);
  expect(open).toEqual([]);
  expect(notes).toEqual(["'built': no column fills part: fine for what is there already"]);
});

test("a mapping whose sheet has a slip in its name is not passed over", () => {
  const good = sheetOf("built", "record,place,part,scope", "a,b,c,d");
  const mapping = { sheet: "bilt", table: "built", columns: {}, constants: {}, "leave-out": [] };
  expect(mapSheets([good], { sheets: [mapping], leaveOut: [] }).open).toEqual([
    "'built': the mapping does not speak of it, but of 'bilt', which is not there",
  ]);
  // Of a workbook with several mapped sheets, the file of its rejected rows may hold one.
  const other = { ...mapping, sheet: "intervals" };
  expect(mapSheets([good], { sheets: [other], leaveOut: [] }).open).toEqual([]);
});

test("what a translation drops is said", () => {
  const columns = Object.fromEntries(["record", "place", "part", "scope"].map((name) => [name, { column: name }]));
  const mapping = {
    sheet: "built",
    table: "built",
    columns: { ...columns, scope: { column: "scope", translate: { X: "", Y: " ", Z: "all", W: "" } } },
    constants: {},
    "leave-out": [],
  };
  const sheet = sheetOf("built", "record,place,part,scope", "a,b,c,X", "a,b,d,X", "a,b,e,Y", "a,b,f,Z");
  expect(mapSheets([sheet], { sheets: [mapping], leaveOut: [] }).notes).toEqual([
    "'built': 'X' in 'scope' is translated to nothing: 2 cells as good as empty, which deletes nothing",
    "'built': 'Y' in 'scope' is translated to nothing: 1 cell as good as empty, which deletes nothing",
  ]);
});
