import { expect, test } from "vitest";
import { tameWorkbook } from "../../../src/build/tables/tame-workbook.ts";

test.each([
  // file, XML, what becomes of it
  ["xl/workbook.xml", '<workbookPr date1904="true"/>', '<workbookPr date1904="1"/>'],
  ["xl/workbook.xml", '<workbookPr date1904="false"/>', '<workbookPr date1904="false"/>'],
  [
    "xl/styles.xml",
    '<numFmt numFmtId="60" formatCode="dd.mm.yyyy"/><xf numFmtId="60"/><xf numFmtId="14"/><xf numFmtId="164"/>',
    '<numFmt numFmtId="1060" formatCode="dd.mm.yyyy"/><xf numFmtId="1060"/><xf numFmtId="14"/><xf numFmtId="164"/>',
  ],
  ["xl/other.xml", '<numFmt numFmtId="60"/>', '<numFmt numFmtId="60"/>'],
])("%s: %s", (name, xml, tamed) => {
  expect(tameWorkbook(name, xml)).toBe(tamed);
});
