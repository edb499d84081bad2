import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { answerNetChange } from "../../../src/engine/answers/answer-net-change.ts";
import { QuestionError } from "../../../src/engine/answers/question-error.ts";
import { answerQuestion } from "../../../src/engine/answers/questions.ts";
import { lawfulAnswer } from "../../helpers/answer-laws.ts";
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

const knowledge = tinyKnowledge();
type Answer = ReturnType<typeof answerNetChange>;
const ask = (asked: Record<string, unknown>): Answer =>
  lawfulAnswer(knowledge, { question: "net-change", ...asked }) as unknown as Answer;
const inShort = ({ changes }: Answer): string[] =>
  changes.map(({ name, from, to, verdict }) =>
    [name, from.map((it) => it.value).join(" or "), to.map((it) => it.value).join(" or "), verdict].join(" | "),
  );

describe("what changed against the year that somebody knows", () => {
  test("for a car whose number is known", () => {
    const answer = ask({ from: 1958, plate: "B9K0500" });
    expect([answer.verdict, answer.from, answer.to]).toEqual(["changed", 1958, 1959]);
    expect(inShort(answer)).toEqual([
      "pump | HT-101 | HT-102 | changed",
      "Frame drilled for a winch | holds | does not hold | changed",
    ]);
    expect(answer.changes[0]).toMatchObject({ trap: true, records: ["HY59-01"], steps: [{ year: 1959 }] });
    expect(answer.leftAlone).toEqual([{ record: "HY59-01", what: "The reservoir was looked at and stayed." }]);
    expect(answer.because.map((it) => it.statement)).toContain("built 2");
  });

  test("for a car that is known in part: what to look at, and what each outcome would be", () => {
    const answer = ask({ from: 1958, facts: { line: "B", my: 1959, plant: "K" } });
    expect(answer.verdict).toBe("look first");
    const [pump] = answer.changes;
    expect([pump?.name, pump?.verdict, pump?.ask?.trait]).toEqual(["pump", "look first", "number"]);
    expect(pump?.ask?.outcomes.map(({ words, means }) => [words, means])).toEqual([
      ["0000 to 0411", "HT-101"],
      ["0412 to 9999", "HT-102"],
    ]);
    expect(answer.ask).toEqual(pump?.ask);
  });

  test("backwards", () => {
    expect(inShort(ask({ from: 1960, facts: { line: "B", my: 1958, plant: "K" } }))).toContain(
      "pump | HT-102 | HT-101 | changed",
    );
  });

  test("nothing between a year and itself", () => {
    expect(ask({ from: 1958, facts: { line: "B", my: 1958 } })).toMatchObject({
      verdict: "no change on record",
      changes: [],
    });
  });

  test("no such car in that year: which facts stand in the way", () => {
    const answer = ask({ from: 1957, facts: { line: "H", my: 1960 } });
    expect(answer.verdict).toBe("no such car in that year");
    expect(answer.conflict?.map(({ text }) => text)).toEqual(["line=H", "my=1957"]);
  });

  test("no such car at all", () => {
    expect(ask({ from: 1958, to: 1959, facts: { line: "H", my: 1957 } }).verdict).toBe("no such car");
  });
});

// what is asked, what is said
test.each([
  [{ from: 1958, facts: { line: "B" } }, /^The model year of the car is not known\./],
  [{ from: 1900, facts: { my: 1958 } }, /^Model year 1900 is not on record\. Years run from 1957 to 1961\.$/],
  [{ from: 1958, to: 1958.5 }, /"to": a year\. It was given 1958\.5\.$/],
])("%j is refused", (asked, message) => {
  expect(() => answerQuestion(knowledge, { question: "net-change", ...asked })).toThrow(QuestionError);
  expect(() => answerQuestion(knowledge, { question: "net-change", ...asked })).toThrow(message);
});

/** The slow twin: a figure is looked up car by car, also before and after a number within a year, forwards and backwards. */
test("is what car by car has changed against the cars of the other year that are most like it", () => {
  const SILENT = "not on record";
  const VALUES = ["1 to 2 mm", "3 to 4 mm", SILENT];
  const seen = { none: 0, some: 0, all: 0, stepped: 0, backwards: 0 };
  const likeness = (a: Tractor, b: Tractor): number =>
    a.line !== b.line ? 0 : a.plant !== b.plant ? 1 : a.PT !== b.PT || a.WN !== b.WN ? 2 : 3;
  const years = fc.tuple(fc.constantFrom(1957, 1958, 1959, 1960, 1961), knownInPart);
  fc.assert(
    fc.property(
      saidOfCells(fc.constantFrom(...VALUES)),
      fc.array(years, { minLength: 5, maxLength: 5 }),
      (stated, cars) => {
        const settings = VALUES.slice(0, 2).flatMap((value) => {
          const scope = scopeOf((car) => stated(car) === value);
          const window = value.replace(" mm", "").replace(" to ", "..");
          return scope === undefined ? [] : [`  - { name: gap, window: ${window}, unit: mm, scope: ${scope} }`];
        });
        if (settings.length === 0) return;
        const own = knowledgeOf(`settings:\n${settings.join("\n")}`);
        for (const [from, { my: to = 1960, ...known }] of cars) {
          const of = (my: number, { half, ...rest }: Partial<Tractor>): Tractor[] =>
            TRACTORS.filter(fits({ my, ...rest, ...(half && my === to ? { half } : {}) }));
          const [before, after] = [of(from, known), of(to, known)];
          if (before.length === 0 || after.length === 0) continue;
          const said = (list: readonly Tractor[]): string[] => [...new Set(list.map(stated))].sort();
          const pairs = after.flatMap((car) => {
            const closest = Math.max(...before.map((other) => likeness(car, other)));
            return before
              .filter((other) => likeness(car, other) === closest)
              .map((other) => stated(other) === stated(car));
          });
          const expected = pairs.every((same) => same) ? "none" : pairs.some((same) => same) ? "some" : "all";
          const answer = answerQuestion(own, {
            question: "net-change",
            from,
            car: asked({ my: to, ...known }),
          }) as Answer;
          const change = answer.changes.find(({ name }) => name === "gap");
          seen[expected]++;
          expect(change === undefined).toBe(expected === "none");
          if (!change) continue;
          const shown = (values: readonly { value: string }[]): string[] => values.map(({ value }) => value).sort();
          expect([shown(change.from), shown(change.to)]).toEqual([said(before), said(after)]);
          // What is known of the car itself and of those it compares with leaves nothing open.
          if (said(before).length === 1 && said(after).length === 1) expect(change.verdict).toBe("changed");
          if (said(after).length > 1) expect(change.verdict).toBe("look first");
          if (change.verdict === "changed") expect(expected).toBe("all");
          const way = Array.from({ length: Math.abs(to - from) + 1 }, (_, i) => from + (to > from ? i : -i));
          const steps = way
            .slice(1)
            .filter((year, i) => said(of(year, known)).join() !== said(of(way[i] as number, known)).join());
          expect(change.steps.map(({ year }) => year)).toEqual(steps);
          if (steps.length > 1) seen.stepped++;
          if (to < from) seen.backwards++;
        }
      },
    ),
    { seed: SEED, numRuns: 250 },
  );
  for (const count of Object.values(seen)) expect(count).toBeGreaterThan(20);
});
