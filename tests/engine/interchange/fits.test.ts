import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { FITS, type Fit, fitsAt, mayBeFitted, toBuy } from "../../../src/engine/interchange/fits.ts";
import { nothingReported } from "../../../src/engine/interchange/reported.ts";
import { seeParts } from "../../../src/engine/interchange/see-parts.ts";
import {
  type DrawnWorld,
  KINDS,
  openWorld,
  PARTS,
  PLACES,
  slowBelongs,
  slowStandsFor,
  world,
} from "../../helpers/random-parts.ts";
import { SEED } from "../../helpers/seed.ts";
import { openSets, slowMayGo, slowSits, type WorldOfSets, worldOfSets } from "../../helpers/slow-fits.ts";

/** What the records say of a part in a place of one kind of tractor; several where it is not known what belongs there. */
function slowFits(drawn: DrawnWorld, part: string, place: string, seen: string | undefined, kind: number): string[] {
  const belongs = slowBelongs(drawn, place, kind);
  const settled = seen !== undefined && belongs.includes(seen) ? [seen] : belongs;
  const verdicts = settled.map((it) => {
    const said = slowStandsFor(drawn, part, PARTS.includes(it) ? it : undefined, kind);
    const isOpen = it === "not on record" && said.startsWith("yes");
    const asBuilt = it === part ? "as built" : isOpen ? "not on record" : said;
    const asSeen = seen === undefined || seen === part || seen === it ? [] : [slowStandsFor(drawn, part, seen, kind)];
    // The worst counts.
    return FITS.find((verdict) => [asBuilt, ...asSeen].includes(verdict)) ?? "";
  });
  return [...new Set(verdicts)].sort();
}

test("as the slow twin says, kind by kind, as built and with a part seen in the place", () => {
  const counts = new Map<string, number>();
  let seenThere = 0;
  fc.assert(
    fc.property(
      world,
      fc.constantFrom(...PARTS),
      fc.constantFrom(...PLACES),
      fc.option(fc.constantFrom(...PARTS), { nil: undefined }),
      (drawn, part, place, seen) => {
        const { index, cars } = openWorld(drawn);
        // With one place of its own it can be nowhere else.
        const isThere = seen !== undefined && `${slowSits(drawn, seen)}` === place;
        const on = isThere ? seeParts(index, index.space.any(cars), [seen]) : nothingReported();
        const fits = fitsAt(index, { part, place, cars: index.space.any(cars), on });
        cars.forEach((car, kind) => {
          const holding = fits.filter((fit) => index.space.sets.meet(fit.cars, car)).map((fit) => fit.verdict);
          const expected = slowFits(drawn, part, place, isThere ? seen : undefined, kind);
          expect([...new Set(holding)].sort()).toEqual(expected);
          const key = expected.join(" / ");
          counts.set(key, (counts.get(key) ?? 0) + 1);
          if (isThere) seenThere++;
        });
      },
    ),
    { seed: SEED, numRuns: 300 },
  );
  console.log(`fits: seed ${SEED}, ${JSON.stringify([...counts])}, with a part seen there ${seenThere}`);
  for (const verdict of FITS) expect(counts.get(verdict) ?? 0).toBeGreaterThan(5);
  expect(seenThere).toBeGreaterThan(600);
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
  const all = index.space.any(cars);
  return fitsAt(index, { part, place, cars: all, on: seeParts(index, all, fitted) }).map((fit: Fit) => fit.verdict);
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
    kind: fc.nat(KINDS.length - 1),
  });
  type Asked = typeof question extends fc.Arbitrary<infer T> ? T : never;

  /** The pieces that hold for each kind. */
  function piecesOf({ drawn, part, place, fitted }: Asked) {
    const { index, cars } = openSets(drawn);
    const every = index.space.any(cars);
    const all = fitsAt(index, { part, place, cars: every, on: seeParts(index, every, fitted) });
    const byKind = cars.map((car) => all.filter((fit) => index.space.sets.meet(fit.cars, car)));
    return { space: index.space, cars, all, byKind };
  }
  const may = (fits: readonly Fit[]): boolean[] => [...new Set(fits.map((fit) => mayBeFitted(fit.verdict)))].sort();
  const sayFit = (fit: Fit): string => {
    if (fit.verdict === "as built") return fit.verdict;
    return mayBeFitted(fit.verdict) ? `${fit.verdict.replace("yes, ", "")} ${toBuy(fit).length}` : "no";
  };

  test("may be fitted exactly where the slow twin says so, with as few parts to buy", () => {
    const counts = new Map<string, number>();
    fc.assert(
      fc.property(question, (asked) => {
        const { byKind } = piecesOf({ ...asked, fitted: [] });
        byKind.forEach((fits, kind) => {
          const expected = slowMayGo(asked.drawn, asked.part, asked.place, kind);
          expect([...new Set(fits.map(sayFit))].sort()).toEqual(expected);
          const key = expected.join(" / ");
          counts.set(key, (counts.get(key) ?? 0) + 1);
        });
      }),
      { seed: SEED, numRuns: 300 },
    );
    console.log(`fits with companions: seed ${SEED}, ${JSON.stringify([...counts])}`);
    for (const key of ["as built", "no", "yes 0", "yes 1", "on conditions 0", "on conditions 1"])
      expect(counts.get(key) ?? 0).toBeGreaterThan(0);
  }, 120_000);

  test("a part seen on the car never makes a plain permission of what has none", () => {
    let doubts = 0;
    fc.assert(
      fc.property(question, (asked) => {
        // A part that must go along and is on the car already is no longer in the way.
        const { along } = asked.drawn;
        fc.pre(asked.fitted.length > 0 && !asked.fitted.some((part) => along.flat().includes(part)));
        const [before, after] = [piecesOf({ ...asked, fitted: [] }), piecesOf(asked)];
        after.byKind.forEach((fits, kind) => {
          const was = may(before.byKind[kind] ?? []);
          if (!may(fits).includes(false)) expect(was).toContain(true);
          if (`${was}` === "true" && may(fits).includes(false)) doubts++;
        });
      }),
      { seed: SEED, numRuns: 300 },
    );
    console.log(`parts seen on the car: seed ${SEED}, made ${doubts} permissions doubtful`);
    expect(doubts).toBeGreaterThan(30);
  }, 120_000);

  test("what is said of many cars at once is what is said of each of them", () => {
    fc.assert(
      fc.property(question, ({ kind, ...asked }) => {
        const { index, cars } = openSets(asked.drawn);
        const { byKind } = piecesOf({ ...asked, kind, fitted: [] });
        const car = cars[kind] as (typeof cars)[number];
        const alone = fitsAt(index, { part: asked.part, place: asked.place, cars: car, on: nothingReported() });
        expect([...new Set(byKind[kind]?.map(sayFit))].sort()).toEqual([...new Set(alone.map(sayFit))].sort());
      }),
      { seed: SEED, numRuns: 200 },
    );
  }, 120_000);

  test("the pieces are all of the cars", () => {
    fc.assert(
      fc.property(question, (asked) => {
        const { space, cars, all } = piecesOf(asked);
        expect(space.any(all.map((fit) => fit.cars))).toBe(space.any(cars));
      }),
      { seed: SEED, numRuns: 200 },
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
      fc.property(question, refusal, (drawnQuestion, { at, about, ...more }) => {
        // Where a part that was seen can be changes with what refuses it.
        const asked = { ...drawnQuestion, fitted: [] };
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
      { seed: SEED, numRuns: 300 },
    );
  }, 120_000);

  // The statements, what each asks for, and what is said of P1 where P2 belongs.
  const to = (part: string, other: string | undefined, about?: number[]): DrawnWorld["standIns"][number] => ({
    ...say(part, other, "on-conditions"),
    about: about && new Set(about),
  });
  const refuse = (part: string, about: number[]) => ({
    ...say(part, undefined, "does-not-go-on"),
    about: new Set(about),
  });
  const everywhere = [...ALL_KINDS];
  function outcomes(standIns: DrawnWorld["standIns"], along: string[][]): string[] {
    const drawn = { built: built(["P2"]), standIns, ended: [], along };
    return piecesOf({ drawn, part: "P1", place: "front", fitted: [], kind: 0 }).all.map(
      (fit) => `${sayFit(fit)}: ${fit.ways.map((way) => way.companions.map((it) => it.part).join("+")).join(" or ")}`,
    );
  }

  test("a way whose companion is refused is not listed among the ways, whichever of two stands first", () => {
    const closed = refuse("P4", everywhere);
    expect(outcomes([to("P1", "P2"), to("P1", "P2"), closed], [["P4"], ["P5"]])).toEqual(["on conditions 1: P5"]);
    expect(outcomes([to("P1", "P2"), to("P1", "P2"), closed], [["P5"], ["P4"]])).toEqual(["on conditions 1: P5"]);
  });

  test("where one of two equally short chains is closed, the other one is followed; where both are, a longer one", () => {
    const closed = refuse("P4", everywhere);
    const chains = [to("P1", "P3"), to("P3", "P2"), to("P1", "P5"), to("P5", "P2"), closed];
    expect(outcomes(chains, [["P4"]])).toEqual(["on conditions 0: "]);
    expect(outcomes(chains, [[], [], ["P4"]])).toEqual(["on conditions 0: "]);
    expect(outcomes(chains, [["P4"], [], ["P4"]])).toEqual(["no: "]);
    const longer = [to("P1", "P3"), to("P3", "P2"), to("P1", "P5"), to("P5", "P3"), closed];
    expect(outcomes(longer, [["P4"]])).toEqual(["on conditions 0: "]);
  });

  test("a companion that only other cars at hand need closes no way", () => {
    const [some, others] = [everywhere.slice(0, 18), everywhere.slice(18)];
    const said = [to("P1", "P2", some), to("P1", "P2", others), refuse("P4", some)];
    expect(outcomes(said, [["P5"], ["P4"]]).sort()).toEqual(["on conditions 1: P4", "on conditions 1: P5"]);
  });
});

describe("a component with the number of another kind of car", () => {
  const drawn: DrawnWorld = {
    built: [
      { place: "front", parts: ["P1"], about: new Set([...ALL_KINDS].filter((kind) => KINDS[kind]?.my === 1957)) },
      { place: "rear", parts: ["P2"], about: new Set([...ALL_KINDS].filter((kind) => KINDS[kind]?.plant === "K")) },
    ],
    standIns: [],
    ended: [],
  };
  const { index, cars } = openWorld(drawn);
  const first = cars[0] as (typeof cars)[number];
  const plant = index.space.role("plant") as number;
  const fits = (part: string, place: string, foreign: number[]): string[] =>
    fitsAt(index, { part, place, cars: first, on: { ...nothingReported(), foreign: new Set(foreign) } }).map(
      (it) => it.verdict,
    );

  test("what depends on it and on the car is doubtful, all else is not", () => {
    expect(fits("P2", "rear", [plant])).toEqual(["as built", "not on record"]);
    expect(fits("P2", "rear", [])).toEqual(["as built"]);
    expect(fits("P1", "front", [plant])).toEqual(["as built"]);
  });
});
