import { expect, test } from "vitest";
import { blank, readableText, seenText } from "../../../src/build/cite/readable-text.ts";

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

test.each([
  // as written, as seen
  ["A&#45;1 A&#x2d;1 A&#X2D;1", "A-1 A-1 A-1"],
  [
    "A&ndash;1 &amp;#45; &unknown; &#0; &#10; &#x1F600; &#99999999;",
    "A\u20131 &#45; &unknown; &#0; &#10; &#x1F600; &#99999999;",
  ],
  ["A\\-1 A\\_1 \\[\\[ C:\\new", "A-1 A_1 [[ C:\\new"],
  ["A-<wbr>1 A<WBR />-1 A&shy;-1 A\u200B-1 A&#8203;-1 A&#173;-1", "A-1 A-1 A-1 A-1 A-1 A-1"],
  ["", ""],
])("%s is seen as %s", (written, text) => {
  expect(seenText(written).text).toBe(text);
});

test("what is seen has its place in what is written", () => {
  const written = "(A&#45;<wbr>1)<wbr>";
  const seen = seenText(written);
  expect(written.slice(...seen.written(1, 4))).toBe("A&#45;<wbr>1");
  expect(written.slice(...seen.written(2, 3))).toBe("&#45;");
  expect(written.slice(...seen.written(4, 5))).toBe(")");
});
