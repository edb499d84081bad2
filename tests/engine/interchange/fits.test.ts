import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { FITS, type Fit, fitsAt, mayBeFitted } from "../../../src/engine/interchange/fits.ts";
import {
  type DrawnWorld,
  openWorld,
  PARTS,
  PLACES,
  slowBelongs,
  slowStandsFor,
  world,
} from "../../helpers/random-parts.ts";
import { SEED } from "../../helpers/seed.ts";
import { openSets, slowMayGo, slowPlaces, type WorldOfSets, worldOfSets } from "../../helpers/slow-fits.ts";

/** What the records say of a part in a place of one kind of tractor; several where it is not known what belongs there. */
function slowFits(drawn: DrawnWorld, part: string, place: string, found: readonly string[], kind: number): string[] {
  const verdicts = slowBelongs(drawn, place, kind).map((belongs) => {
    const asBuilt =
      belongs === part ? "as built" : slowStandsFor(drawn, part, PARTS.includes(belongs) ? belongs : undefined, kind);
    const asFound = found.filter((it) => it !== part).map((it) => slowStandsFor(drawn, part, it, kind));
    // The worst counts.
    return FITS.find((verdict) => [asBuilt, ...asFound].includes(verdict)) ?? "";
  });
  return [...new Set(verdicts)].sort();
}

test("as the slow twin says, kind by kind, as built and with a part found in the place", () => {
  const counts = new Map<string, number>();
  fc.assert(
    fc.property(
      world,
      fc.constantFrom(...PARTS),
      fc.constantFrom(...PLACES),
      fc.subarray(PARTS, { maxLength: 1 }),
      (drawn, part, place, fitted) => {
        const { index, cars } = openWorld(drawn);
        const fits = fitsAt(index, { part, place, cars: index.space.any(cars), fitted });
        const found = fitted.filter((it) => slowPlaces(drawn, it).includes(place));
        cars.forEach((car, kind) => {
          const holding = fits.filter((fit) => index.space.sets.meet(fit.cars, car)).map((fit) => fit.verdict);
          const expected = slowFits(drawn, part, place, found, kind);
          expect([...new Set(holding)].sort()).toEqual(expected);
          const key = expected.join(" / ");
          counts.set(key, (counts.get(key) ?? 0) + 1);
        });
      },
    ),
    { seed: SEED, numRuns: 1500 },
  );
  console.log(`fits: seed ${SEED}, ${JSON.stringify([...counts])}`);
  for (const verdict of FITS) expect(counts.get(verdict) ?? 0).toBeGreaterThan(20);
}, 120_000);

const ALL_KINDS = new Set(Array.from({ length: 36 }, (_, i) => i));
const say = (part: string, other: string | undefined, verdict: DrawnWorld["standIns"][number]["verdict"] = "yes") => ({
  part,
  for: other,
  verdict,
  about: undefined,
  record: "R1",
});

function verdicts(drawn: DrawnWorld, part: string, place: string | undefined, fitted: string[] = []): string[] {
  const { index, cars } = openWorld(drawn);
  return fitsAt(index, { part, place, cars: index.space.any(cars), fitted }).map((fit: Fit) => fit.verdict);
}

const built = (parts: (string | undefined)[]) => [{ place: "front", parts, about: ALL_KINDS }];

// what was built in, what is said, part, parts found, verdicts
test.each<[string, DrawnWorld, string, string[], string[]]>([
  ["the plant's own part", { built: built(["P1"]), standIns: [], ended: [] }, "P1", [], ["as built"]],
  ["nothing said", { built: built(["P1"]), standIns: [], ended: [] }, "P2", [], ["not on record"]],
  ["an empty place", { built: built([undefined]), standIns: [say("P2", undefined)], ended: [] }, "P2", [], ["yes"]],
  [
    "a place that is not empty",
    { built: built(["P1"]), standIns: [say("P2", undefined)], ended: [] },
    "P2",
    [],
    ["not on record"],
  ],
  [
    "one of two in a mixed stretch",
    { built: built(["P1", "P2"]), standIns: [say("P2", "P1", "must-not-be-used")], ended: [] },
    "P2",
    [],
    ["goes on but must not be used", "as built"],
  ],
  [
    "another part found, nothing said of the two",
    { built: built(["P1"]), standIns: [say("P2", "P1")], ended: [] },
    "P2",
    ["P3"],
    ["yes"],
  ],
  [
    "back to the plant's part, refused",
    { built: built(["P1"]), standIns: [say("P2", "P1"), say("P1", "P2", "must-not-be-used")], ended: [] },
    "P1",
    ["P2"],
    ["goes on but must not be used"],
  ],
  [
    "back to the plant's part, nothing said",
    { built: built(["P1"]), standIns: [say("P2", "P1")], ended: [] },
    "P1",
    ["P2"],
    ["not on record"],
  ],
  [
    "back to the plant's part, permitted",
    { built: built(["P1"]), standIns: [say("P2", "P1"), say("P1", "P2")], ended: [] },
    "P1",
    ["P2"],
    ["yes"],
  ],
  [
    "a record that was ended",
    { built: built(["P1"]), standIns: [say("P2", "P1")], ended: [{ record: "R1", about: undefined }] },
    "P2",
    [],
    ["not on record"],
  ],
])("%s", (_, drawn, part, fitted, expected) => {
  expect(verdicts(drawn, part, "front", fitted).sort()).toEqual([...expected].sort());
});

test("a part of which no record names a place", () => {
  expect(verdicts({ built: [], standIns: [say("P2", undefined)], ended: [] }, "P2", undefined)).toEqual(["yes"]);
});

test("which verdicts are permissions", () => {
  expect(FITS.filter(mayBeFitted)).toEqual(["yes, on conditions", "yes", "as built"]);
});

describe("with parts that must go along", () => {
  const question = fc.record({
    drawn: worldOfSets,
    part: fc.constantFrom(...PARTS),
    place: fc.constantFrom(...PLACES),
    fitted: fc.subarray(PARTS, { maxLength: 2 }),
  });
  type Asked = typeof question extends fc.Arbitrary<infer T> ? T : never;

  /** The pieces that hold for each kind. */
  function piecesOf({ drawn, part, place, fitted }: Asked) {
    const { index, cars } = openSets(drawn);
    const all = fitsAt(index, { part, place, cars: index.space.any(cars), fitted });
    const byKind = cars.map((car) => all.filter((fit) => index.space.sets.meet(fit.cars, car)));
    return { space: index.space, cars, all, byKind };
  }
  const may = (fits: readonly Fit[]): boolean[] => [...new Set(fits.map((fit) => mayBeFitted(fit.verdict)))].sort();

  test("may be fitted only where the slow twin says so", () => {
    const counts = new Map<string, number>();
    let tooStrict = 0;
    fc.assert(
      fc.property(question, (asked) => {
        const { byKind } = piecesOf({ ...asked, fitted: [] });
        byKind.forEach((fits, kind) => {
          const expected = slowMayGo(asked.drawn, asked.part, asked.place, kind);
          const found = may(fits);
          // A refusal too many is a fault as well, but not the one that hurts somebody.
          if (found.includes(true)) expect(expected).toContain(true);
          if (!found.includes(false)) expect(expected).toEqual([true]);
          if (`${found}` !== `${expected}`) tooStrict++;
          const asksMore = fits.some(
            (fit) => mayBeFitted(fit.verdict) && fit.ways[0]?.some((it) => it.with.length > 0),
          );
          const key = `${expected}${asksMore ? " with more" : ""}`;
          counts.set(key, (counts.get(key) ?? 0) + 1);
        });
      }),
      { seed: SEED, numRuns: 1500 },
    );
    console.log(
      `fits with companions: seed ${SEED}, ${JSON.stringify([...counts])}, refused without need ${tooStrict}`,
    );
    expect(tooStrict).toBeLessThan(20);
    expect(counts.get("true with more") ?? 0).toBeGreaterThan(200);
  }, 120_000);

  test("the pieces are all of the cars, and overlap only where it is not known what belongs there", () => {
    fc.assert(
      fc.property(question, (asked) => {
        const { space, cars, all, byKind } = piecesOf(asked);
        expect(space.any(all.map((fit) => fit.cars))).toBe(space.any(cars));
        byKind.forEach((fits, kind) => {
          const belongs = slowBelongs(asked.drawn, asked.place, kind);
          expect(fits.length).toBe(belongs.length);
        });
      }),
      { seed: SEED, numRuns: 1000 },
    );
  }, 120_000);

  test("another refusal, anywhere among the statements, never makes a permission", () => {
    const refusal = fc.record({
      part: fc.constantFrom(...PARTS),
      for: fc.option(fc.constantFrom(...PARTS), { nil: undefined }),
      verdict: fc.constantFrom("does-not-go-on" as const, "must-not-be-used" as const),
      about: fc.option(fc.subarray([...ALL_KINDS], { minLength: 1 }), { nil: undefined }),
      record: fc.constant("R4"),
      at: fc.nat(9),
    });
    fc.assert(
      fc.property(question, refusal, (asked, { at, about, ...more }) => {
        const { standIns, along } = asked.drawn;
        const drawn: WorldOfSets = {
          ...asked.drawn,
          standIns: standIns.toSpliced(at, 0, { ...more, about: about && new Set(about) }),
          along: along.toSpliced(Math.min(at, standIns.length), 0, []),
        };
        const [before, after] = [piecesOf(asked), piecesOf({ ...asked, drawn })];
        after.byKind.forEach((fits, kind) => {
          const [was, is] = [may(before.byKind[kind] ?? []), may(fits)];
          if (is.includes(true)) expect(was).toContain(true);
          if (!is.includes(false)) expect(was).toEqual([true]);
        });
      }),
      { seed: SEED, numRuns: 1000 },
    );
  }, 120_000);

  test.todo("a way whose companion is refused is not listed among the ways, whichever of two stands first");
  test.todo(
    "where one of two equally short chains is closed by a refused companion, the other one is followed, in any order of records",
  );
  test.todo("a companion that only other cars at hand need closes no way");
});
