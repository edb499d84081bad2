import { expect, test } from "vitest";
import { percentStyles } from "../../../src/build/tables/percent-styles.ts";

const stylesOf = (code: string): string =>
  `<styleSheet><numFmts><numFmt formatCode="${code}" numFmtId="164"/></numFmts><cellStyleXfs count="1"><xf numFmtId="10"/></cellStyleXfs>
<cellXfs count="5"><xf numFmtId="0"/><xf numFmtId="9" xfId="0"><alignment/></xf><xf numFmtId="10"/><xf numFmtId="164"/><xf xfId="0"/></cellXfs></styleSheet>`;

test.each([
  // format of the file's own, whether it shows percentages
  ["0.0%", true],
  ["#,##0 %;[Red]-0%", true],
  ["0 &quot;%&quot;", false],
  ["0\\%", false],
  ["[$%-409]0", false],
  ["0.00", false],
])("%s: %s", (code, is) => {
  expect([...percentStyles(stylesOf(code))]).toEqual(["1", "2", ...(is ? ["3"] : []), "4"]);
});

test("without styles there are no percentages", () => {
  expect(percentStyles("").size).toBe(0);
});
