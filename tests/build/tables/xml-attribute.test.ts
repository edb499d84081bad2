import { expect, test } from "vitest";
import { isXmlTrue, xmlAttribute } from "../../../src/build/tables/xml-attribute.ts";

test.each([
  // tag, name, what it says
  ['r="B2" s="3"', "s", "3"],
  ["r='B2' s = '3'", "s", "3"],
  ['spans="1:3"', "s", undefined],
  ['x:id="rId1"', "id", "rId1"],
  ['formatCode="0 &quot;%&quot; &amp;lt;"', "formatCode", '0 "%" &lt;'],
  ['a=""', "a", ""],
])("%s: %s is %j", (tag, name, said) => {
  expect(xmlAttribute(tag, name)).toBe(said);
});

test("a yes of XML", () => {
  expect(["1", "true", "0", "false", undefined].map(isXmlTrue)).toEqual([true, true, false, false, false]);
});
