import { expect, test } from "vitest";
import { blank, readableText } from "../../../src/build/cite/readable-text.ts";

const PAGE = `<p>HY59-01</p><!-- HY59-02
--><SCRIPT type="x">
HY59-03</script ><style>HY59-04</style><a href="/HY59-05">x</a><script>HY59-06`;

test("of a page, what its readers see; each sign keeps its place", () => {
  const text = readableText("a/page.HTML", PAGE);
  expect(text.match(/HY59-\d+/g)).toEqual(["HY59-01", "HY59-05"]);
  expect(text.length).toBe(PAGE.length);
  expect(text.split("\n").map((line) => line.length)).toEqual(PAGE.split("\n").map((line) => line.length));
  expect(text.indexOf("HY59-05")).toBe(PAGE.indexOf("HY59-05"));
});

test("of any other document all of it", () => {
  expect(readableText("letter.md", PAGE)).toBe(PAGE);
  expect(readableText("html", PAGE)).toBe(PAGE);
});

test("blanks keep the lines", () => {
  expect(blank("a\r\n b😀\n")).toBe(" \r\n    \n");
});
