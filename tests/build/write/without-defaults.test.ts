import { expect, test } from "vitest";
import { z } from "zod";
import { bare, inOrder, shapeOf, withoutDefaults } from "../../../src/build/write/without-defaults.ts";

const SHAPE = z.strictObject({
  id: z.string(),
  count: z.int().default(1),
  list: z.array(z.strictObject({ part: z.string(), with: z.array(z.string()).default([]) })).default([]),
  marks: z
    .record(z.string(), z.strictObject({ hard: z.boolean().default(false), of: z.string().optional() }))
    .optional(),
  either: z.union([z.string(), z.strictObject({ mark: z.string(), count: z.int().default(1) })]).optional(),
});

// value, as an editor writes it
const VALUES: [value: object, written: object][] = [
  [{ id: "a", count: 1, list: [] }, { id: "a" }],
  [
    {
      list: [
        { with: [], part: "p" },
        { with: ["q"], part: "p" },
      ],
      count: 2,
      id: "a",
    },
    { id: "a", count: 2, list: [{ part: "p" }, { part: "p", with: ["q"] }] },
  ],
  [
    { id: "a", marks: { b: { of: "x", hard: false }, a: { hard: true, of: undefined } } },
    { id: "a", marks: { b: { of: "x" }, a: { hard: true } } },
  ],
  [
    { id: "a", either: { count: 1, mark: "m" } },
    { id: "a", either: { mark: "m" } },
  ],
  [
    { other: [1], id: "a", either: "1" },
    { id: "a", either: "1", other: [1] },
  ],
];

test.each(VALUES)("%j", (value, written) => {
  // Compared as text, for the order of the fields counts.
  expect(JSON.stringify(withoutDefaults(SHAPE, value))).toBe(JSON.stringify(written));
});

test("what is left out is filled in again", () => {
  for (const [value] of VALUES.slice(0, 4))
    expect(SHAPE.parse(withoutDefaults(SHAPE, value))).toEqual(SHAPE.parse(value));
});

test("the shape of a field, and of several the one that fits", () => {
  expect(inOrder(SHAPE, ["z", "marks", "id"])).toEqual(["id", "marks", "z"]);
  expect(shapeOf(SHAPE, "id")).toBe(SHAPE.shape.id);
  expect(shapeOf(SHAPE, "no such")).toBeUndefined();
  expect(bare(SHAPE.shape.either, { mark: "m" })).toBeInstanceOf(z.ZodObject);
  expect(bare(SHAPE.shape.either, "m")).toBeInstanceOf(z.ZodString);
});
