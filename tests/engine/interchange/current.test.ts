import fc from "fast-check";
import { expect, test } from "vitest";
import { askedFor, currentOf, orderedAlong } from "../../../src/engine/interchange/current.ts";
import type { PartIndex } from "../../../src/engine/interchange/part-index.ts";
import { nothingReported } from "../../../src/engine/interchange/reported.ts";
import type { Supersedes } from "../../../src/engine/records/statement.ts";
import { NONE } from "../../../src/engine/scope/diagram.ts";
import { readScope } from "../../../src/engine/scope/read-scope.ts";
import { type Drawn, KINDS, openWorld, PARTS, PLACES } from "../../helpers/random-parts.ts";
import { SEED } from "../../helpers/seed.ts";

interface Rule {
  readonly old: string;
  readonly new: string;
  readonly with: readonly string[];
  readonly about: Drawn;
}

/** The rules over the 36 kinds of tractors of the random worlds. */
function open(rules: readonly Rule[], built: readonly string[] = []) {
  const all = new Set(KINDS.keys());
  const { index, cars } = openWorld({
    built: built.map((part, i) => ({ place: PLACES[i] as string, parts: [part], about: all })),
    standIns: [],
    ended: [],
  });
  const ordersOf = new Map<string, Supersedes[]>();
  rules.forEach(({ about, ...rule }, i) => {
    const text = [...(about ?? [])].map((kind) => {
      const { line, my, plant } = KINDS[kind] as (typeof KINDS)[number];
      return `line=${line}; my=${my}; plant=${plant}`;
    });
    const read = about && readScope(index.space, text.join(" || "));
    const scope = read && "scope" in read ? read.scope : undefined;
    const rulesOf = ordersOf.get(rule.old) ?? [];
    ordersOf.set(rule.old, [...rulesOf, { ...rule, type: "supersedes", record: "R1", index: i, scope }]);
  });
  return { index: { ...index, ordersOf } satisfies PartIndex, cars };
}

/** Every end that the rules lead to from a number, for one kind. */
function slowEnds(rules: readonly Rule[], part: string, kind: number, seen: readonly string[] = [part]): string[] {
  const next = rules.filter((rule) => rule.old === part && (rule.about === undefined || rule.about.has(kind)));
  if (next.length === 0) return [part];
  return next.flatMap((rule) =>
    seen.includes(rule.new) ? [`${part} circle`] : slowEnds(rules, rule.new, kind, [...seen, rule.new]),
  );
}

const about = fc.array(fc.boolean(), { minLength: 36, maxLength: 36 }).map((bits) => {
  const kinds = bits.flatMap((bit, i) => (bit ? [i] : []));
  return new Set(kinds.length > 0 ? kinds : [0]);
});
const rule = fc.record({
  old: fc.constantFrom(...PARTS),
  new: fc.constantFrom(...PARTS),
  with: fc.constant([]),
  about: fc.option(about, { nil: undefined }),
});

test("as rule by rule for each kind, splits and circles among them", () => {
  const counts = { one: 0, several: 0, circle: 0 };
  fc.assert(
    fc.property(fc.array(rule, { maxLength: 7 }), fc.constantFrom(...PARTS), (drawn, part) => {
      const rules = drawn.filter((it) => it.old !== it.new);
      const { index, cars } = open(rules);
      const found = currentOf(index, part, index.space.any(cars));
      cars.forEach((car, kind) => {
        const here = found.filter((it) => index.space.sets.meet(it.cars, car));
        const ends = [...new Set(here.map((it) => (it.circle ? `${it.part} circle` : it.part)))].sort();
        const expected = [...new Set(slowEnds(rules, part, kind))].sort();
        expect(ends).toEqual(expected);
        if (expected.some((it) => it.endsWith("circle"))) counts.circle++;
        else if (expected.length > 1) counts.several++;
        else counts.one++;
      });
    }),
    { seed: SEED, numRuns: 400 },
  );
  console.log(`current: seed ${SEED}, ${JSON.stringify(counts)}`);
  for (const count of Object.values(counts)) expect(count).toBeGreaterThan(300);
}, 120_000);

const to = (old: string, next: string, ...along: string[]): Rule => ({ old, new: next, with: along, about: undefined });

test("a chain of twelve is followed to its end, each rule once", () => {
  const rules = Array.from({ length: 12 }, (_, i) => to(`Q${i}`, `Q${i + 1}`));
  const { index, cars } = open(rules);
  const [end, ...others] = currentOf(index, "Q0", index.space.any(cars));
  expect([end?.part, end?.steps.length, others.length]).toEqual(["Q12", 12, 0]);
});

test("splits that merge again do not multiply without end, and the end is still found", () => {
  const stages = Array.from({ length: 30 }, (_, i) => [
    ...[to(`A${i}`, `B${i}`), to(`A${i}`, `C${i}`)],
    ...[to(`B${i}`, `A${i + 1}`), to(`C${i}`, `A${i + 1}`)],
  ]).flat();
  const { index, cars } = open(stages);
  const ends = currentOf(index, "A0", index.space.any(cars));
  expect([...new Set(ends.map((it) => it.part))]).toEqual(["A30"]);
  expect(ends.length).toBeLessThan(1_000);
});

test("no cars, no number", () => {
  expect(currentOf(open([to("P1", "P2")]).index, "P1", NONE)).toEqual([]);
});

test("what must be ordered along, each once; what all these cars were built with is marked", () => {
  const { index, cars } = open([to("P1", "P2", "P4", "P5"), to("P2", "P3", "P5")], ["P4"]);
  const [end] = currentOf(index, "P1", index.space.any(cars));
  if (!end) throw new Error("it leads nowhere");
  expect(orderedAlong(index, end, nothingReported()).map((it) => [it.part, it.onTheCar])).toEqual([
    ["P4", true],
    ["P5", false],
  ]);
});

test("a number is asked for the cars that were built with it, if any of these may be meant", () => {
  const { index, cars } = open([], ["P1"]);
  const all = index.space.any(cars);
  expect(askedFor(index, "P1", all)).toBe(all);
  expect(askedFor(index, "P2", all)).toBe(all);
  expect(askedFor(index, "P1", NONE)).toBe(NONE);
});
