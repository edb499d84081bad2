import { expect, test } from "vitest";
import { workbookSheets } from "../../../src/build/tables/workbook-sheets.ts";

test("each sheet has its file, whatever their order, and is hidden or not", () => {
  const book = `<workbook><sheets><sheet name="a &gt; b" sheetId="7" r:id="r2"/><sheet name='c' state='veryHidden' r:id='r1'/>
<sheet name="d" state="hidden" r:id="r9"/></sheets></workbook>`;
  const relations = `<Relationships><Relationship Id="r1" Type="t" Target="worksheets/sheet1.xml"/>
<Relationship Target="/xl/worksheets/sheet2.xml" Id="r2"/></Relationships>`;
  expect(workbookSheets(book, relations)).toEqual([
    { file: "worksheets/sheet2.xml", hidden: false },
    { file: "worksheets/sheet1.xml", hidden: true },
    { file: "", hidden: true },
  ]);
});
