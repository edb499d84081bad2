import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readCar } from "../../../src/engine/answers/car.ts";
import { NOT_ON_RECORD } from "../../../src/engine/answers/compare-years.ts";
import { carsLikeIt, figuresForCar, partsBuilt, silentAmong } from "../../../src/engine/answers/figures-for-car.ts";
import { findSettings, type SettingMatter } from "../../../src/engine/answers/find-settings.ts";
import type { Knowledge } from "../../../src/engine/answers/knowledge.ts";
import { answerQuestion } from "../../../src/engine/answers/questions.ts";
import type { CarInput } from "../../../src/engine/answers/shapes/car.ts";
import type { SettingAnswer } from "../../../src/engine/answers/shapes/setting.ts";
import { NONE } from "../../../src/engine/scope/diagram.ts";
import {
  asked,
  fits,
  knownInPart,
  saidOfCells,
  scopeOf,
  TRACTORS,
  type Tractor,
} from "../../helpers/listed-tractors.ts";
import { knowledgeOf } from "../../helpers/one-record.ts";
import { SEED } from "../../helpers/seed.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const FIGURES = ["120..135", "..90", "100.."] as const;

type Stated = (car: Tractor) => string;

/** The tiny folder with figures of the oil pressure, and pumps, as cells say; "-" is nothing on record. */
function folderOf(stated: Stated, pump: Stated = () => "-"): Knowledge | undefined {
  const figures = FIGURES.flatMap((window) => {
    const scope = scopeOf((car) => stated(car) === window);
    return scope === undefined ? [] : `\n  - { name: oil pressure, window: ${window}, unit: bar, scope: ${scope} }`;
  });
  if (figures.length === 0) return undefined;
  const built = ["HT-101", "HT-102"].flatMap((part) => {
    const scope = scopeOf((car) => pump(car) === part);
    return scope === undefined ? [] : `\n  - { place: pump, part: ${part}, scope: ${scope} }`;
  });
  return knowledgeOf(`settings:${figures.join("")}${built.length > 0 ? `\nbuilt:${built.join("")}` : ""}`);
}

function askFor(knowledge: Knowledge, car: CarInput): SettingAnswer {
  return answerQuestion(knowledge, { question: "setting", setting: "oil pressure", car }) as SettingAnswer;
}

/** The figures that may hold, as the editor wrote them, and "-" where for some car there is none. */
function figuresOf({ settings }: SettingAnswer): string[] {
  return settings
    .flatMap(({ figures, perhapsNone }) => [
      ...figures.map(({ low, high }) => `${low ?? ""}..${high ?? ""}`),
      ...(perhapsNone ? ["-"] : []),
    ])
    .sort();
}

function verdictOf(values: readonly string[]): string {
  if (values.every((value) => value === "-")) return "no such setting";
  return values.length === 1 ? "in force" : "look first";
}

const figure = saidOfCells(fc.constantFrom(...FIGURES, "-"));

test("a figure is in force where car by car it is the figure of all cars that it can be", () => {
  const seen = new Map<string, number>();
  fc.assert(
    fc.property(figure, fc.array(knownInPart, { minLength: 4, maxLength: 4 }), (stated, cars) => {
      const own = folderOf(stated);
      if (!own) return;
      for (const known of cars) {
        const values = [...new Set(TRACTORS.filter(fits(known)).map(stated))].sort();
        const answer = askFor(own, asked(known));
        const verdict = verdictOf(values);
        expect([answer.verdict, figuresOf(answer), answer.ask !== undefined]).toEqual([
          verdict,
          values,
          verdict === "look first",
        ]);
        seen.set(verdict, (seen.get(verdict) ?? 0) + 1);
      }
    }),
    { seed: SEED, numRuns: 35 },
  );
  for (const verdict of ["in force", "no such setting", "look first"]) expect(seen.get(verdict)).toBeGreaterThan(10);
});

test("one car has one figure at most, and what more is known never puts another in its place", () => {
  let known = 0;
  fc.assert(
    fc.property(
      figure,
      fc.constantFrom(...TRACTORS),
      fc.shuffledSubarray(["line", "my", "plant", "PT", "WN", "half"] as const, { minLength: 6 }),
      (stated, car, order) => {
        const own = folderOf(stated);
        if (!own) return;
        let before: string[] | undefined;
        for (let count = 0; count <= order.length; count++) {
          const facts = Object.fromEntries(order.slice(0, count).map((trait) => [trait, car[trait]]));
          const now = figuresOf(askFor(own, asked(facts)));
          expect(before ?? now).toEqual(expect.arrayContaining(now));
          before = now;
        }
        expect(before).toEqual([stated(car)]);
        known++;
      },
    ),
    { seed: SEED, numRuns: 15 },
  );
  expect(known).toBeGreaterThan(10);
});

/** Cars of one kind differ in year and number only. */
function kindOf({ line, plant, PT, WN }: Tractor): string {
  return [line, plant, PT, WN].join(" ");
}

test("a part that was found brings the figures of the cars that left the plant with it", () => {
  const seen = new Map<string, number>();
  const pump = saidOfCells(fc.constantFrom("HT-101", "HT-102", "HT-102", "-"));
  fc.assert(
    fc.property(figure, pump, fc.array(knownInPart, { minLength: 3, maxLength: 3 }), (stated, fitted, cars) => {
      const own = folderOf(stated, fitted);
      if (!own) return;
      for (const known of cars) {
        const here = TRACTORS.filter(fits(known));
        const kinds = new Set(here.map(kindOf));
        const plain = [...new Set(here.map(stated))];
        const withIt = TRACTORS.filter((car) => fitted(car) === "HT-101");
        const alike = withIt.filter((car) => kinds.has(kindOf(car)));
        const brought = [...new Set((alike.length > 0 ? alike : withIt).map(stated))];
        const isOwn = here.every((car) => fitted(car) === "HT-101") || brought.every((value) => value === "-");
        // Where no car like this one was built with the part, its own figures stay possible.
        const expected = isOwn ? plain : alike.length > 0 ? brought : [...new Set([...brought, ...plain])];
        expect(figuresOf(askFor(own, { ...asked(known), fitted: ["HT-101"] }))).toEqual(expected.sort());
        const how = isOwn ? "own" : alike.length > 0 ? "brought" : "both";
        seen.set(how, (seen.get(how) ?? 0) + 1);
      }
    }),
    { seed: SEED, numRuns: 30 },
  );
  for (const how of ["own", "brought", "both"]) expect([how, (seen.get(how) ?? 0) > 5]).toEqual([how, true]);
});

describe("of the tiny folder", () => {
  const knowledge = tinyKnowledge();
  const { catalog } = knowledge;
  const [matter] = findSettings(catalog, "oil pressure") as [SettingMatter];
  const carOf = (input: CarInput) => readCar(knowledge, input);

  test("the cars of which no figure says anything are told apart", () => {
    const both = carOf({ facts: { my: 1959 } });
    expect(silentAmong(figuresForCar(knowledge, both, matter).values)).toBe(NONE);
    expect(silentAmong([{ said: NOT_ON_RECORD, statements: [], cars: both.cars }])).toBe(both.cars);
  });

  test("the parts of a component that cars left the plant with, in a mixed stretch either", () => {
    const builtOn = (facts: Record<string, string | number>, component = "pump") =>
      partsBuilt(knowledge, component, carOf({ facts }).cars).sort();
    expect(builtOn({ line: "B", my: 1957 })).toEqual(["HT-101"]);
    expect(builtOn({ line: "H", my: 1959 })).toEqual(["HT-101", "HT-102"]);
    expect(builtOn({ line: "H", my: 1960 })).toEqual([]);
    expect(builtOn({ line: "H" }, "lift")).toEqual([]); // nothing is fitted there
    expect(builtOn({ line: "H" }, "no such component")).toEqual([]);
  });

  test("cars like this one are of every year, whatever was found on it", () => {
    const { space, buildable } = catalog;
    const badger = carOf({ facts: { line: "B", my: 1960 }, fitted: ["HT-102"] });
    const badgers = space.sets.and(buildable, carOf({ facts: { line: "B" } }).cars);
    const years = space.sets.valuesOf(carsLikeIt(knowledge, badger), space.role("year") as number);
    expect(years).toEqual(space.sets.valuesOf(badgers, space.role("year") as number));
  });
});
