import { expect, test } from "vitest";
import { parse, parseDocument, type YAMLMap } from "yaml";
import { z } from "zod";
import { yamlEdits } from "../../../src/build/write/yaml-edits.ts";

const SHAPE = z.strictObject({
  a: z.string().optional(),
  b: z.array(z.strictObject({ id: z.string(), c: z.string().optional() })).optional(),
  d: z.strictObject({ e: z.number() }).optional(),
});
const edited = (yaml: string, next: object, deep = true): string | undefined => {
  const map = parseDocument(yaml).contents as unknown as YAMLMap;
  const edits = yamlEdits(yaml, map, SHAPE, { old: parse(yaml), next: next as Record<string, unknown>, deep });
  return edits?.reduce((text, { from, to, text: by }) => text.slice(0, from) + by + text.slice(to), yaml);
};

// text, what it shall say, text afterwards; nothing where only all of it can be written anew
const CASES: [string, object, string | undefined][] = [
  ["a: x # y\n", { a: "z" }, "a: z # y\n"],
  ["a: x", { a: "x", d: { e: 1 } }, "a: x\nd:\n  e: 1\n"],
  ["d: { e: 1 }\n", { a: "x", d: { e: 2 } }, "a: x\nd: { e: 2 }\n"],
  ["b:\n- id: p\n  c: q\n- id: r\n", { b: [{ id: "r" }] }, "b:\n- id: r\n"],
  ["b:\n  - c: q\n    id: p\n", { b: [{ id: "p" }] }, "b:\n  - id: p\n"],
  ["b: [{ id: p }, { id: r }]\n", { b: [{ id: "p" }, { id: "s" }] }, "b: [{ id: p }, { id: s }]\n"],
  ["b: [{ id: p }]\na: x\n", { b: [{ id: "p" }, { id: "s" }], a: "x" }, "b: [{ id: p }, { id: s }]\na: x\n"],
  ["a: >-\n  x\n  y\nd: { e: 1 }\n", { a: "z", d: { e: 1 } }, "a: z\nd: { e: 1 }\n"],
  ["a:\n", { a: "x" }, "a: x\n"],
  ["{ a: x }\n", { a: "z" }, "{ a: z }\n"],
  ["{ a: x }\n", { d: { e: 1 } }, undefined],
  // In braces and brackets: what is new, what goes, and what is of another kind now; each comment stays.
  ["d: { e: 1 } # y\n", { d: { e: 1, f: "z" } }, "d: { e: 1, f: z } # y\n"],
  ["b: [{ id: p }] # y\n", { b: [{ id: "p", c: "q" }] }, "b: [{ id: p, c: q }] # y\n"],
  ["{ d: { e: 1 } }\n", { a: "x", d: { e: 1 } }, "{ a: x, d: { e: 1 } }\n"],
  ["{ a: x, d: { e: 1 } }\n", { d: { e: 1 } }, "{ d: { e: 1 } }\n"],
  ["{ a: x, d: { e: 1 } }\n", { a: "x" }, "{ a: x }\n"],
  ["{ a: x }\n", {}, "{  }\n"],
  ["{ a: x, d: { e: 1 } }\n", {}, undefined],
  ["{ a: }\n", { a: ["p", "q"] }, "{ a: [p, q] }\n"],
  ["{ a }\n", { a: "p" }, "{ a: p }\n"],
  ["{ a: x }\n", { a: { e: {} } }, "{ a: { e: {} } }\n"],
  ["d: {}\n", { d: { e: 1 } }, "d: { e: 1 }\n"],
  ["b: []\n", { b: ["p", "q"] }, "b: [p, q]\n"],
  ["b: [p, q, r]\n", { b: ["p", "r"] }, "b: [p, r]\n"],
  ["b: [p, q]\n", { b: ["n", "p", "o", "q"] }, "b: [n, p, o, q]\n"],
  ["b: [\n  p, # y\n  q # z\n]\n", { b: ["p", "q", "r", "s"] }, "b: [\n  p, # y\n  q, # z\n  r,\n  s\n]\n"],
  ["b: [\n  p, # y\n  q,\n]\n", { b: ["o", "p", "q", "r"] }, "b: [\n  o,\n  p, # y\n  q,\n  r,\n]\n"],
  ["b: [\n  p,\n  q, # y\n]\n", { b: ["q"] }, "b: [\n  q, # y\n]\n"],
  ["b: [p, q # y\n]\n", { b: ["p", "q", "r"] }, "b: [p, q, r # y\n]\n"],
  [
    '{\n  "b": [\n    { "id": "1" }\n  ]\n}\n',
    { b: [{ id: "1" }, { id: "2" }] },
    '{\n  "b": [\n    { "id": "1" },\n    { "id": "2" }\n  ]\n}\n',
  ],
  // Lists in other manners.
  ["b:\n-   id: p\n", { b: [{ id: "p" }, { id: "r", c: "q" }] }, "b:\n-   id: p\n-   id: r\n    c: q\n"],
  [
    "b:\n  -\n    id: p\n    # of p\n  # end\n",
    { b: [{ id: "p" }, { id: "r" }] },
    "b:\n  -\n    id: p\n    # of p\n  - id: r\n  # end\n",
  ],
  [
    "b:\n  - # y\n    id: p\n  - id: q\n",
    { b: [{ id: "o" }, { id: "p" }, { id: "q" }] },
    "b:\n  - id: o\n  - # y\n    id: p\n  - id: q\n",
  ],
  // What is written anew keeps what stands behind it, and what stands beside it.
  ["a: x\n  y # z\n", { a: "w" }, "a: w # z\n"],
  ["a: # z\n", { a: ["p", { e: 1 }] }, "a: # z\n  - p\n  - e: 1\n"],
  ["b:\n  - p # y\n  # z\n  - q\n", { b: [{ e: 1, f: 2 }, "q"] }, "b:\n  - e: 1 # y\n    f: 2\n  # z\n  - q\n"],
];

test.each(CASES)("%j, %j", (yaml, next, text) => {
  expect(edited(yaml, next)).toBe(text);
  if (text !== undefined) expect(parse(text)).toEqual(next);
});

test("a field at the top can be written anew as a whole", () => {
  expect(edited("b:\n  # one\n  - { id: p }\na: x # y\n", { b: [{ id: "s" }], a: "x" }, false)).toBe(
    "b:\n  - id: s\na: x # y\n",
  );
});
