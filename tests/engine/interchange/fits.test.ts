import fc from "fast-check";
import { expect, test } from "vitest";
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

/** Whether a part was built in the place, or is said to stand in for one that was. */
function goesInto({ built, standIns }: DrawnWorld, part: string, place: string): boolean {
  const names = [part, ...standIns.filter((it) => it.part === part).map((it) => it.for)];
  return built.some((it) => it.place === place && it.parts.some((one) => one !== undefined && names.includes(one)));
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
        const found = fitted.filter((it) => goesInto(drawn, it, place));
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
