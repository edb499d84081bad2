import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { answerNetChange } from "../../../src/engine/answers/answer-net-change.ts";
import { readFactText } from "../../../src/engine/answers/fact-text.ts";
import { QuestionError } from "../../../src/engine/answers/question-error.ts";
import { answerQuestion } from "../../../src/engine/answers/questions.ts";
import { lawfulAnswer } from "../../helpers/answer-laws.ts";
import { demoKnowledge } from "../../helpers/demo-data.ts";
import { fixtureRows } from "../../helpers/fixture-rows.ts";
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
import { slowCompare } from "../../helpers/slow-compare.ts";
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

const demo = await demoKnowledge();
const ofDemo = (from: number, facts: object, fitted: readonly string[] = []): Answer =>
  answerQuestion(demo, { question: "net-change", from, facts, fitted }) as Answer;
/** Many rows look at another change of the same answer. */
const answersOfRows = new Map<string, Answer>();
const sidesOf = ({ from, to }: Answer["changes"][number]): string[] =>
  [from, to].map((side) => side.map((it) => it.value).join(" or "));

test.each(fixtureRows<[string, string, string, string, string, string]>("net-change"))(
  "against %s, %s, fitted %s: %s: %s",
  (from, facts, fitted, name, expected, by) => {
    const given = Object.fromEntries(facts.split("; ").map(readFactText));
    const question = [from, facts, fitted].join(" | ");
    const answer = answersOfRows.get(question) ?? ofDemo(Number(from), given, fitted === "" ? [] : [fitted]);
    answersOfRows.set(question, answer);
    const found = answer.changes.filter((change) => change.name === name);
    const apart = answer.notOnRecord.filter((one) => one.name === name);
    if (expected === "apart") {
      expect([found, apart.length > 0]).toEqual([[], true]);
      expect(apart.flatMap(({ see }) => see.map((it) => it.record))).toEqual(by === "" ? [] : [by]);
      for (const { record } of apart.flatMap(({ see }) => see))
        expect(answer.changes.filter((it) => it.kind === "record").flatMap((it) => it.records)).toContain(record);
      return;
    }
    expect(found.map((change) => sidesOf(change).join(" > "))).toEqual(expected === "no change" ? [] : [expected]);
    const ended = found.flatMap((change) => (change.cancelled ?? []).flatMap((it) => it.by));
    expect(ended.map((it) => it.record)).toEqual(by === "" ? [] : [by]);
  },
);

test("of every line and year of the demonstration data: no change has two sides that read the same, or one side without a value", () => {
  const [line, year] = ["line", "year"].map((role) => demo.catalog.space.role(role as "line") as number);
  for (const { id, cars } of demo.catalog.lines)
    for (const [first, last] of demo.catalog.space.sets.valuesOf(cars, year as number))
      for (let my = first; my < last; my++)
        for (const [from, to] of [
          [my, my + 1],
          [my + 1, my],
        ] as const) {
          const lineTrait = demo.catalog.space.trait(line as number).id;
          const { changes } = ofDemo(from, { [lineTrait]: id, [demo.catalog.space.trait(year as number).id]: to });
          const wrong = changes.filter((change) => {
            const [before, after] = sidesOf(change);
            return before === after || [before, after].includes("not on record");
          });
          expect([id, from, to, wrong]).toEqual([id, from, to, []]);
        }
});

/** The slow twin: a figure is looked up car by car, also before and after a number within a year, forwards and backwards. */
test("is what car by car has changed against the cars of the other year that are most like it", () => {
  const SILENT = "not on record";
  const VALUES = ["1 to 2 mm", "3 to 4 mm", SILENT];
  const seen = { none: 0, changed: 0, oneSided: 0, stepped: 0, backwards: 0 };
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
          const said = (car: Tractor): string[] => (stated(car) === SILENT ? [] : [stated(car)]);
          const slow = slowCompare(before, after, said, ["line", "plant"]);
          const changed = slow.filter((it) => it.from.length > 0 && it.to.length > 0);
          const answer = answerQuestion(own, {
            question: "net-change",
            from,
            car: asked({ my: to, ...known }),
          }) as Answer;
          const changes = answer.changes.filter(({ name }) => name === "gap");
          const text = (values: readonly string[]): string =>
            [...new Set(values)]
              .filter((it) => it !== SILENT)
              .sort()
              .join(" or ");
          const shown = (values: readonly { value: string }[]): string => text(values.map(({ value }) => value));
          const pairs = (all: readonly { from: readonly string[]; to: readonly string[] }[]): string[] =>
            [...new Set(all.map((it) => `${text(it.from)} > ${text(it.to)}`))].sort();
          expect(
            [
              ...new Set(
                changes.flatMap(({ byCars, ...one }) =>
                  byCars ? pairs(byCars) : [`${shown(one.from)} > ${shown(one.to)}`],
                ),
              ),
            ].sort(),
          ).toEqual(pairs(changed));
          const apart = answer.notOnRecord.map(({ year, values }) =>
            from !== to && year === from ? ` > ${shown(values)}` : `${shown(values)} > `,
          );
          expect([...new Set(apart)].sort()).toEqual(pairs(slow.filter((it) => !changed.includes(it))));
          if (slow.length === 0) seen.none++;
          if (slow.length > changed.length) seen.oneSided++;
          for (const change of changes) {
            seen.changed++;
            // The two sides never read the same, and nobody is sent to look where nothing is open.
            expect(change.from.map((it) => it.value)).not.toEqual(change.to.map((it) => it.value));
            if (change.verdict === "changed") {
              expect(changed.length).toBe(after.length);
              expect(changed.some((it) => it.silentBefore || it.to.some((value) => it.from.includes(value)))).toBe(
                false,
              );
            }
            if (changes.length === 1 && changed.length < after.length) expect(change.verdict).toBe("look first");
            const way = Array.from({ length: Math.abs(to - from) + 1 }, (_, i) => from + (to > from ? i : -i));
            expect(way.slice(1)).toEqual(expect.arrayContaining(change.steps.map(({ year }) => year)));
            expect(change.steps.length).toBeGreaterThan(0);
            if (change.steps.length > 1) seen.stepped++;
            if (to < from) seen.backwards++;
          }
        }
      },
    ),
    { seed: SEED, numRuns: 250 },
  );
  expect(Object.entries(seen).filter(([, count]) => count <= 20)).toEqual([]);
});
