import fc from "fast-check";
import Fraction from "fraction.js";
import { describe, expect, test } from "vitest";
import { readFactText } from "../../../src/engine/answers/fact-text.ts";
import { settingsOf } from "../../../src/engine/answers/find-settings.ts";
import { answerQuestion } from "../../../src/engine/answers/questions.ts";
import type { ReadingAnswer } from "../../../src/engine/answers/shapes/setting.ts";
import { convertTo } from "../../../src/engine/settings/convert.ts";
import { endOf, sayNumber } from "../../../src/engine/settings/say-quantity.ts";
import { unitNamed } from "../../../src/engine/settings/unit-named.ts";
import { UNITS } from "../../../src/engine/settings/unit-table.ts";
import { lawfulAnswer } from "../../helpers/answer-laws.ts";
import { demoKnowledge } from "../../helpers/demo-data.ts";
import { fixtureRows } from "../../helpers/fixture-rows.ts";
import { randomCar } from "../../helpers/random-cars.ts";
import { SEED } from "../../helpers/seed.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const demo = await demoKnowledge();
const tiny = tinyKnowledge();
type Row = [string, string, string, string, string, string, string, string, string];
const ROWS = fixtureRows<Row>("readings");

function judged(asked: Record<string, unknown>): ReadingAnswer {
  return answerQuestion(demo, { question: "reading", ...asked }) as ReadingAnswer;
}

function plain(window: string): string {
  return window.replace(/\d+(\.\d+)?/g, (number) => String(Number(number)));
}

test.each(ROWS)("%s: %s ± %s (%s) on %s, fitted %s: %s %s %s", (setting, value, error, conditions, ...row) => {
  const [facts, fitted, verdict, passes, explained] = row;
  const answer = judged({
    setting,
    value,
    ...(error ? { error } : {}),
    ...(conditions ? { conditions } : {}),
    car: {
      facts: Object.fromEntries(facts ? facts.split("; ").map(readFactText) : []),
      fitted: fitted ? fitted.split(" ") : [],
    },
  });
  const otherYears = answer.passesUnder.filter((it) => it.sameCar);
  expect({
    verdict: answer.verdict,
    passes: otherYears.map(({ figure: { low, high } }) => plain(`${low ?? ""}..${high ?? ""}`)).sort(),
    explained: answer.explainedBy.map((it) => `${it.part} for ${it.inPlaceOf}`).sort(),
  }).toEqual({ verdict, passes: listed(passes).map(plain), explained: listed(explained) });
  // What is found must be said loudly, once for each.
  expect(answer.warnings.length).toBeGreaterThanOrEqual(answer.passesUnder.length + answer.explainedBy.length);
});

function listed(text: string): string[] {
  return text.split(" | ").filter(Boolean).sort();
}

describe("keeps the laws", () => {
  const settings = settingsOf(demo.catalog);
  const car = randomCar(demo.catalog, { conflicts: true });
  const matter = fc.constantFrom(...settings);

  /** A value of some setting: a limit of one of its figures, or something near it. */
  const reading = matter.chain((it) => {
    const limits = it.statements.flatMap(({ low, high }) => [low, high]).filter((limit) => limit !== undefined);
    return fc.record({
      matter: fc.constant(it),
      limit: fc.constantFrom(...limits),
      factor: fc.constantFrom("1", "1", "0.9", "1.1", "0.999", "1.001", "0.5", "3"),
    });
  });
  const measuredAs = ({ limit, factor }: { limit: string; factor: string }): Fraction =>
    new Fraction(limit).mul(factor);

  test("of every answer, of cars known in part", () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(reading, car, (one, known) => {
        const value = `${sayNumber(measuredAs(one))} ${one.matter.statements[0]?.unit}`;
        const asked = { question: "reading", setting: one.matter.name, value, car: known };
        const { verdict } = lawfulAnswer(demo, asked);
        seen.add(verdict);
      }),
      { seed: SEED, numRuns: 6, endOnFailure: true },
    );
    expect(seen.size).toBeGreaterThan(1);
  });

  test("the verdict is the same in every unit that reads to the same quantity", () => {
    let compared = 0;
    fc.assert(
      fc.property(reading, fc.nat(), randomCar(demo.catalog, { conflicts: false }), (one, pick, known) => {
        const unit = unitNamed(one.matter.statements[0]?.unit ?? "");
        const others = UNITS.filter((it) => it.dimension === unit.dimension && it.id !== unit.id);
        const other = others[pick % Math.max(1, others.length)];
        const value = measuredAs(one);
        const there = other && convertTo(value, unit, other);
        // What has no last decimal, or one far away, nobody types.
        if (!other || !there || (endOf(there) ?? Number.POSITIVE_INFINITY) > 12) return;
        const asked = { setting: one.matter.name, car: known };
        const [here, elsewhere] = [
          judged({ ...asked, value: `${sayNumber(value)} ${unit.id}` }),
          judged({ ...asked, value: `${sayNumber(there)} ${other.id}` }),
        ];
        expect([other.id, elsewhere.verdict, elsewhere.by]).toEqual([other.id, here.verdict, here.by]);
        expect(elsewhere.passesUnder).toEqual(here.passesUnder);
        compared++;
      }),
      { seed: SEED, numRuns: 20, endOnFailure: true },
    );
    expect(compared).toBeGreaterThan(3);
  });

  test("more facts never turn one verdict into another one", () => {
    let decided = 0;
    fc.assert(
      fc.property(reading, randomCar(demo.catalog, { conflicts: false }), fc.nat(), (one, known, drop) => {
        const value = `${sayNumber(measuredAs(one))} ${one.matter.statements[0]?.unit}`;
        const facts = Object.entries(known.facts ?? {});
        const fewer = Object.fromEntries(facts.filter((_, i) => i !== drop % Math.max(1, facts.length)));
        const [less, more] = [
          judged({ setting: one.matter.name, value, car: { facts: fewer } }),
          judged({ setting: one.matter.name, value, car: known }),
        ];
        if (less.verdict === "look first" || more.verdict === "no such car") return;
        expect(more.verdict).toBe(less.verdict);
        decided++;
      }),
      { seed: SEED, numRuns: 8, endOnFailure: true },
    );
    expect(decided).toBeGreaterThan(1);
  });
});

describe("what an answer holds", () => {
  const ask = (asked: Record<string, unknown>): ReadingAnswer =>
    lawfulAnswer(tiny, { question: "reading", setting: "oil pressure", ...asked }) as unknown as ReadingAnswer;
  const badger = { facts: { line: "B", my: 1960, plant: "K" } };

  // value, error, what is said
  const WORDS: [string, string | undefined, RegExp][] = [
    ["130 bar", undefined, /^130 bar is within the limits, 120 to 135 bar, 5 bar from the upper limit\.$/],
    ["130.0 bar", undefined, /^130\.0 bar is within /],
    ["119 bar", undefined, /^119 bar is too low by 1 bar: 120 to 135 bar\.$/],
    ["2000 psi", undefined, /^2000 psi \(about 137\.9 bar\) is too high by about 2\.895 bar: 120 to 135 bar\.$/],
    [
      "121 bar",
      "2 bar",
      /^121 bar is too near the lower limit of 120 to 135 bar to call, with this instrument's error\.$/,
    ],
    ["13 MPa", "2 %", /^13 MPa \(130 bar\) is within /],
  ];
  test.each(WORDS)("%s ± %s", (value, error, words) => {
    expect(ask({ value, ...(error ? { error } : {}), car: badger }).words).toMatch(words);
  });

  test("where nothing is said of the conditions, what the verdict stands on", () => {
    expect(ask({ value: "130 bar", car: badger })).toMatchObject({ provided: ["hot"], missing: [] });
    expect(ask({ value: "130 bar", car: badger, conditions: "met" })).toMatchObject({ provided: [], missing: [] });
    expect(ask({ value: "130 bar", car: badger, conditions: "cold" })).toMatchObject({
      verdict: "cannot be judged",
      missing: ["hot"],
    });
  });

  test("an error that is no quantity, a setting that nobody knows", () => {
    expect(() => ask({ value: "130 bar", error: "little", car: badger })).toThrow("The error 'little':");
    expect(() => ask({ setting: "oil presure", value: "1", car: badger })).toThrow("Did you mean 'oil pressure'?");
  });

  test("what was typed may mean several things: each reads back as one", () => {
    const volume = settingsOf(demo.catalog).find(
      (it) => unitNamed(it.statements[0]?.unit ?? "").dimension === "volume",
    );
    const { choices, verdict } = judged({ setting: volume?.name, value: "1 gal", car: {} });
    expect([verdict, choices.length > 1]).toEqual(["not understood", true]);
    for (const { typed } of choices)
      expect(judged({ setting: volume?.name, value: typed, car: {} }).verdict).not.toBe("not understood");
  });
});
