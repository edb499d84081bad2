import { expect, test } from "vitest";
import { type Answers, idMeant, NEW_FIELDS, type NewKind, nearestOption } from "../../../src/build/write/new-fields.ts";
import { bulletin } from "../../../src/engine/records/shapes/bulletin.ts";
import { change } from "../../../src/engine/records/shapes/change.ts";
import { catalogOf, spoiled } from "../../helpers/tiny-folder.ts";

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

test("the next id is that of the system, in the model year; one that moved is not given out again", () => {
  expect(suggested("record", "id", { components: ["pump"], year: "1959" })).toBe("HY59-02");
  expect(suggested("record", "id", { components: ["pump"], year: "1960" })).toBe("HY60-01");
  expect(suggested("record", "id", { year: "1958" })).toBe("FR58-02");
  const moved = catalogOf(spoiled({ "moved.yaml": ["from: HY-1,", "from: HY59-02,"] }));
  expect(suggested("record", "id", { components: ["pump"], year: "1959" }, { ...desk, catalog: moved })).toBe(
    "HY59-03",
  );
});

test("the other suggestions", () => {
  expect(suggested("record", "issued", {})).toBe("1960-03-01");
  expect(suggested("record", "year", { issued: "1960-03-01" })).toBe("1960");
  expect(suggested("bulletin", "id", { issued: "1960-03-01" })).toBe("TB-2");
  expect(suggested("part", "name", { component: "pump" })).toBe("hydraulic pump");
});

test("what may be answered is listed", () => {
  const values = (kind: NewKind, name: string, answers: Answers = {}): unknown =>
    fieldOf(kind, name)
      ?.options?.(desk, answers)
      .map(({ value }) => value);
  expect(values("record", "components")).toEqual(["lift", "pump", "gasket"]);
  expect(values("record", "links")).toEqual(["FR58-01", "HY59-01"]);
  expect(values("record", "scope")).toEqual(["line=", "my=", "plant=", "number=", "eq=PT", "eq=WN"]);
  expect(values("part", "marks", { component: "pump" })).toEqual(["ribs=", "bore="]);
  expect(values("part", "marks", { component: "lift" })).toEqual([]);
});

test("a name is as good as an id, and the nearest of both is suggested", () => {
  const options = fieldOf("record", "components")?.options?.(desk, {}) ?? [];
  expect(idMeant("Pump Gasket", options, desk)).toBe("gasket");
  expect(idMeant("nothing", options, desk)).toBeUndefined();
  expect(nearestOption("gaskett", options, desk)).toBe("gasket");
  expect(nearestOption("pump gaskit", options, desk)).toBe("pump gasket");
});
