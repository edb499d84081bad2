import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { standsFor } from "../../../src/engine/interchange/stands-for.ts";
import { NONE } from "../../../src/engine/scope/diagram.ts";
import { type DrawnStandIn, KINDS, openWorld, PARTS, slowStandsFor, world } from "../../helpers/random-parts.ts";
import { SEED } from "../../helpers/seed.ts";

const MAY = ["yes", "yes, on conditions"];

function verdictOn(
  opened: ReturnType<typeof openWorld>,
  part: string,
  other: string | undefined,
  kind: number,
): string {
  const { index, cars } = opened;
  const pieces = standsFor(index, part, other, index.space.any(cars), undefined);
  const holding = pieces.filter((piece) => index.space.sets.meet(piece.cars, cars[kind] as (typeof cars)[number]));
  expect(holding).toHaveLength(1);
  return holding[0]?.verdict ?? "";
}

test("as the slow twin says, kind by kind", () => {
  const counts = new Map<string, number>();
  fc.assert(
    fc.property(
      world,
      fc.constantFrom(...PARTS),
      fc.option(fc.constantFrom(...PARTS), { nil: undefined }),
      (drawn, part, other) => {
        fc.pre(part !== other);
        const { index, cars } = openWorld(drawn);
        const pieces = standsFor(index, part, other, index.space.any(cars), undefined);
        cars.forEach((car, kind) => {
          const holding = pieces.filter((piece) => index.space.sets.meet(piece.cars, car));
          const expected = slowStandsFor(drawn, part, other, kind);
          expect(holding.map((piece) => piece.verdict)).toEqual([expected]);
          counts.set(expected, (counts.get(expected) ?? 0) + 1);
        });
      },
    ),
    { seed: SEED, numRuns: 500 },
  );
  console.log(`stands for: seed ${SEED}, ${JSON.stringify([...counts])}`);
  for (const verdict of [...MAY, "does not go on", "goes on but must not be used", "not on record"])
    expect(counts.get(verdict) ?? 0).toBeGreaterThan(60);
}, 120_000);

describe("laws", () => {
  const question = fc.tuple(world, fc.constantFrom(...PARTS), fc.constantFrom(...PARTS), fc.nat(KINDS.length - 1));

  test("another refusal never makes a permission", () => {
    const refusal = fc.record({
      part: fc.constantFrom(...PARTS),
      for: fc.option(fc.constantFrom(...PARTS), { nil: undefined }),
      verdict: fc.constantFrom("does-not-go-on" as const, "must-not-be-used" as const),
      about: fc.constant(undefined),
      record: fc.constant("R4"),
    });
    fc.assert(
      fc.property(question, refusal, ([drawn, part, other, kind], more) => {
        fc.pre(part !== other);
        const before = verdictOn(openWorld(drawn), part, other, kind);
        const after = verdictOn(openWorld({ ...drawn, standIns: [...drawn.standIns, more] }), part, other, kind);
        if (MAY.includes(after)) expect(MAY).toContain(before);
      }),
      { seed: SEED, numRuns: 300 },
    );
  }, 60_000);

  test("a permission for one direction changes nothing for the other", () => {
    const verdict = fc.constantFrom("yes" as const, "on-conditions" as const);
    fc.assert(
      fc.property(question, verdict, ([drawn, part, other, kind], more) => {
        fc.pre(part !== other);
        const permission = { part: other, for: part, verdict: more, about: undefined, record: "R4" };
        const after = { ...drawn, standIns: [...drawn.standIns, permission] };
        expect(verdictOn(openWorld(after), part, other, kind)).toBe(verdictOn(openWorld(drawn), part, other, kind));
        // And that alone permits nothing.
        const only = { ...drawn, standIns: [permission] };
        expect(verdictOn(openWorld(only), part, other, kind)).toBe("not on record");
      }),
      { seed: SEED, numRuns: 400 },
    );
  }, 60_000);

  test("the order in which records stand does not matter for what may be", () => {
    fc.assert(
      fc.property(question, ([drawn, part, other, kind]) => {
        fc.pre(part !== other);
        const turned = { ...drawn, standIns: [...drawn.standIns].reverse() };
        const [one, two] = [drawn, turned].map((it) => verdictOn(openWorld(it), part, other, kind));
        expect(MAY.includes(one as string)).toBe(MAY.includes(two as string));
        if (!MAY.includes(one as string)) expect(two).toBe(one);
      }),
      { seed: SEED, numRuns: 200 },
    );
  }, 60_000);
});

const say = (part: string, other: string, verdict: DrawnStandIn["verdict"] = "yes"): DrawnStandIn => ({
  part,
  for: other,
  verdict,
  about: undefined,
  record: "R1",
});

// statements, part, where this belongs, verdict
test.each<[DrawnStandIn[], string, string, string]>([
  [[say("P1", "P2")], "P1", "P2", "yes"],
  [[say("P1", "P2")], "P2", "P1", "not on record"],
  [[say("P1", "P2"), say("P2", "P3")], "P1", "P3", "yes"],
  [[say("P1", "P2"), say("P2", "P3", "on-conditions")], "P1", "P3", "yes, on conditions"],
  [[say("P1", "P2"), say("P2", "P3"), say("P1", "P3", "must-not-be-used")], "P1", "P3", "goes on but must not be used"],
  [[say("P1", "P2"), say("P2", "P3"), say("P3", "P4"), say("P1", "P3", "does-not-go-on")], "P1", "P4", "not on record"],
  [[say("P1", "P2"), say("P2", "P3"), say("P3", "P4"), say("P2", "P4", "does-not-go-on")], "P1", "P4", "not on record"],
  [[say("P1", "P2"), say("P1", "P2", "must-not-be-used")], "P1", "P2", "goes on but must not be used"],
  [[say("P1", "P2"), say("P2", "P1")], "P1", "P3", "not on record"],
])("%j: %s where %s belongs is '%s'", (standIns, part, other, verdict) => {
  expect(verdictOn(openWorld({ built: [], standIns, ended: [] }), part, other, 0)).toBe(verdict);
});

test("a chain of both-way steps that is too long is not on record, and ends", () => {
  const standIns = Array.from({ length: 40 }, (_, i) => [say(`Q${i}`, `Q${i + 1}`), say(`Q${i + 1}`, `Q${i}`)]).flat();
  const opened = openWorld({ built: [], standIns, ended: [] });
  expect(verdictOn(opened, "Q0", "Q12", 0)).toBe("yes");
  expect(verdictOn(opened, "Q0", "Q40", 0)).toBe("not on record");
});

test("no cars, nothing to say", () => {
  const { index } = openWorld({ built: [], standIns: [say("P1", "P2")], ended: [] });
  expect(standsFor(index, "P1", "P2", NONE, undefined)).toEqual([]);
});
