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
  ["b: [{ id: p }]\na: x\n", { b: [{ id: "p" }, { id: "s" }], a: "x" }, "b:\n  - id: p\n  - id: s\na: x\n"],
  ["a: >-\n  x\n  y\nd: { e: 1 }\n", { a: "z", d: { e: 1 } }, "a: z\nd: { e: 1 }\n"],
  ["a:\n", { a: "x" }, "a: x\n"],
  ["{ a: x }\n", { a: "z" }, "{ a: z }\n"],
  ["{ a: x }\n", { d: { e: 1 } }, undefined],
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
