import { expect, test } from "vitest";
import type { Answers } from "../../../src/build/write/field.ts";
import { NEW_FIELDS, type NewKind } from "../../../src/build/write/new-fields.ts";
import { bulletin } from "../../../src/engine/records/shapes/bulletin.ts";
import { change } from "../../../src/engine/records/shapes/change.ts";
import { catalogOf } from "../../helpers/tiny-folder.ts";

const desk = { catalog: catalogOf(), today: "1960-03-01" };
const fieldOf = (kind: NewKind, name: string) => NEW_FIELDS[kind].find((one) => one.name === name);
const suggested = (kind: NewKind, name: string, answers: Answers, at = desk) =>
  fieldOf(kind, name)?.suggest?.(at, answers);

test("every field that a file needs is asked for", () => {
  const needs = (kind: NewKind): string[] => NEW_FIELDS[kind].filter(({ needed }) => needed).map(({ name }) => name);
  const required = (shape: {
    shape: Record<string, { safeParse(value: undefined): { success: boolean } }>;
  }): string[] =>
    Object.entries(shape.shape).flatMap(([name, inner]) => (inner.safeParse(undefined).success ? [] : [name]));
  expect(needs("record")).toEqual(expect.arrayContaining(required(change)));
  expect(needs("bulletin")).toEqual(expect.arrayContaining(required(bulletin)));
  expect(needs("part")).toEqual(["component", "number", "name"]);
});

test("the other suggestions", () => {
  expect(suggested("record", "issued", {})).toBe("1960-03-01");
  expect(suggested("record", "id", { components: ["pump"], year: "1960" })).toBe("HY60-01");
  expect(suggested("record", "year", { issued: "1960-03-01" })).toBe("1960");
  expect(suggested("bulletin", "id", { issued: "1960-03-01" })).toBe("TB-2");
  expect(suggested("part", "name", { component: "pump" })).toBe("hydraulic pump");
});
