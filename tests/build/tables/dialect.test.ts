import { expect, test } from "vitest";
import { dialectOf } from "../../../src/build/tables/dialect.ts";

test.each([
  // text, delimiter, end of lines
  ["a,b\n1,2\n", ",", "\n"],
  ["a;b\r\n1,5;2\r\n", ";", "\r\n"],
  ["a\tb\n1, 2; 3\t4\n", "\t", "\n"],
  ["a|b\r1|2\r", "|", "\r"],
  ['"x;y;z",b\n"a;b;c",2\n', ",", "\n"],
  ["scope;part\nline=B, my=1959;HT-101\nline=H;HT-102\n", ";", "\n"],
  ["one\ntwo\n", ",", "\n"],
  ["", ",", "\r\n"],
])("%j", (text, delimiter, lineEnd) => {
  expect(dialectOf(text)).toEqual({ delimiter, lineEnd, named: false, start: 0 });
});

test("a first line may name it, and is no row", () => {
  expect(dialectOf("sep=;\r\na,b;c\r\n")).toEqual({ delimiter: ";", lineEnd: "\r\n", named: true, start: 7 });
});

test("what is asked for is taken", () => {
  expect(dialectOf("a,b\n1,2\n", ";").delimiter).toBe(";");
});
