/** A line's records, sent to a page as JSON and opened there, answer as the whole catalog does for cars of that line. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { answerCar } from "../../../src/engine/answers/answer-car.ts";
import { answerCurrent } from "../../../src/engine/answers/answer-current.ts";
import { answerMayFit } from "../../../src/engine/answers/answer-may-fit.ts";
import { answerNetChange } from "../../../src/engine/answers/answer-net-change.ts";
import { openCarKnowledge } from "../../../src/engine/answers/car-knowledge.ts";
import type { CurrentAnswer } from "../../../src/engine/answers/shapes/current.ts";
import type { MayFitAnswer } from "../../../src/engine/answers/shapes/may-fit.ts";
import { linesIndexOf, openLinesIndex } from "../../../src/engine/records/lines-index.ts";
import { openSlice, sliceOf } from "../../../src/engine/records/slice.ts";
import { writtenValue } from "../../../src/engine/scope/trait.ts";
import { traitOf } from "../../helpers/cars-of-site.ts";
import { demoKnowledge } from "../../helpers/demo-data.ts";
import { randomCar } from "../../helpers/random-cars.ts";
import { SEED } from "../../helpers/seed.ts";

const sent = <T>(value: T): T => JSON.parse(JSON.stringify(value));

test("every answer about a car of the line is the same", async () => {
  const knowledge = await demoKnowledge();
  const { catalog } = knowledge;
  const lines = openLinesIndex(sent(linesIndexOf(catalog)));
  const lineTrait = traitOf(catalog, "line");
  const year = traitOf(catalog, "year");
  for (const [i, line] of catalog.lines.entries()) {
    const own = openCarKnowledge(openSlice(lines, sent(sliceOf(catalog, line))));
    fc.assert(
      fc.property(randomCar(catalog, { conflicts: true }), (random) => {
        const value = writtenValue(catalog.space.trait(catalog.space.role("line") as number), i);
        const car = {
          ...random,
          // Of a part that no record of the line names, nothing hangs on whether it is fitted.
          fitted: random.fitted?.filter((part) => own.catalog.parts.has(part)) ?? [],
          facts: { ...random.facts, [lineTrait]: value, [year]: catalog.years.at(-1) ?? 0 },
        };
        const here = answerCar(own, { car });
        const whole = answerCar(knowledge, { car });
        expect([here.verdict, here.ask]).toEqual([whole.verdict, whole.ask]);
        const known = new Set(here.records.map((record) => record.record));
        expect(here.records).toEqual(whole.records.filter((record) => known.has(record.record)));
        // What is left out concerns no car of the line.
        for (const record of whole.records)
          if (!known.has(record.record)) expect(["no", "no such car"]).toContain(record.verdict);
        const from = catalog.years[0] as number;
        expect(sent(answerNetChange(own, { car, from })).changes).toEqual(
          sent(answerNetChange(knowledge, { car, from })).changes,
        );
      }),
      { seed: SEED + i, numRuns: 3, endOnFailure: true },
    );
  }
}, 60_000);

test("whether a part may go on is the same, part by part", async () => {
  const knowledge = await demoKnowledge();
  const { catalog } = knowledge;
  const lines = openLinesIndex(sent(linesIndexOf(catalog)));
  const [lineTrait, year] = [traitOf(catalog, "line"), traitOf(catalog, "year")];
  let named = 0;
  for (const line of catalog.lines) {
    const own = openCarKnowledge(openSlice(lines, sent(sliceOf(catalog, line))));
    for (const part of catalog.parts.keys())
      for (const my of [catalog.years[2]]) {
        const asked = { part, car: { facts: { [lineTrait]: line.id, [year]: my as number } } };
        const whole = answerMayFit(knowledge, asked);
        // Which facts carry it differs: a slice has no cars of other lines, and no marks.
        const told = ({ facts: _, notNeeded: __, marks: ___, ...answer }: MayFitAnswer) => sent(answer);
        if (own.catalog.parts.has(part)) expect(told(answerMayFit(own, asked))).toEqual(told(whole));
        // What records of the line do not name is not on record for it.
        else expect([part, line.id, whole.verdict]).toEqual([part, line.id, "not on record"]);
        if (!own.catalog.parts.has(part)) continue;
        named++;
        const currents = (it: CurrentAnswer) => it.currents.map(({ part, fits }) => [part, fits]);
        expect(currents(answerCurrent(own, asked))).toEqual(currents(answerCurrent(knowledge, asked)));
      }
  }
  expect(named).toBeGreaterThan(300);
}, 60_000);

test("a slice holds no stories", async () => {
  const { catalog } = await demoKnowledge();
  for (const line of catalog.lines)
    expect(sliceOf(catalog, line).records.every(({ story, words }) => story === "" && words.length === 0)).toBe(true);
});
