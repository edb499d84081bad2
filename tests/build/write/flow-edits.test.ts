import { expect, test } from "vitest";
import { parse, parseDocument, type YAMLMap, type YAMLSeq } from "yaml";
import { type Edit, flowText, insertInFlow, isJson, removeInFlow } from "../../../src/build/write/flow-edits.ts";

const around = (yaml: string): YAMLMap | YAMLSeq => parseDocument(yaml).contents as never;
const applied = (yaml: string, edits: Edit[] | undefined): string | undefined =>
  edits?.reduceRight((text, { from, to, text: by }) => text.slice(0, from) + by + text.slice(to), yaml);

// text, behind which item, text afterwards; nothing where a comma stands on another line
test.each([
  ["[a, b]", -1, "[x, y, a, b]"],
  ["[a, b]", 0, "[a, x, y, b]"],
  ["[a, b,]", 1, "[a, b, x, y,]"],
  ["[]", -1, "[x, y]"],
  ["[ # none\n]", -1, undefined],
  ["[\n  a, # A\n  b # B\n]", 1, "[\n  a, # A\n  b, # B\n  x,\n  y\n]"],
  ["[\r\n\ta,\r\n\tb]", 0, "[\r\n\ta,\n\tx,\n\ty,\r\n\tb]"],
  ["[\n  a # A\n  , b]", 0, undefined],
])("%j, behind %i", (yaml, after, text) => {
  expect(applied(yaml, insertInFlow(yaml, around(yaml), after, ["x", "y"]))).toBe(text);
});

// text, which item, text afterwards; nothing where a comment would go too
test.each([
  ["[a, b, c]", 0, "[b, c]"],
  ["[a, b, c]", 2, "[a, b]"],
  ["{ a: 1 }", 0, "{  }"],
  ["[\n  a,\n  b, # B\n]", 0, "[\n  b, # B\n]"],
  ["[a, # A\n b]", 0, undefined],
  ["[a, # A\n b]", 1, undefined],
])("%j without %i", (yaml, i, text) => {
  expect(applied(yaml, removeInFlow(yaml, around(yaml), i))).toBe(text);
});

test("a value in the manner of what stands around it", () => {
  const value = { a: ["b c", 'd"', "[e"], "f: g": { h: 1 }, i: {}, j: [] };
  for (const yaml of ['{ "k": 1 }', '[\n  { "k": 1 }]', "{ k: 1 }", "[1]"]) {
    const text = flowText(value, isJson(yaml, around(yaml)));
    expect(parse(text)).toEqual(value);
    if (yaml.includes('"')) expect(JSON.parse(text)).toEqual(value);
    else expect(text.startsWith("{ a: [b c, ")).toBe(true);
  }
});
