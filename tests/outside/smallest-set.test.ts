/**
 * Smallest sets of parts judged from outside. Source: Z3, SMT-LIB 2 (the theorem prover, npm z3-solver): it is told the companions,
 * alternatives and clashes, and asked whether there is a set of a size, and none that is smaller.
 */
import fc from "fast-check";
import { afterAll, expect, test } from "vitest";
import { init } from "z3-solver";
import { isClosed, type SetQuestion, smallestSet } from "../../src/engine/interchange/smallest-set.ts";
import { SEED } from "../helpers/seed.ts";

const { Z3, em } = await init();
const context = Z3.mk_context(Z3.mk_config());
afterAll(() => em.PThread.terminateAllThreads());

interface Drawn {
  readonly size: number;
  /** By part its ways, each a list of companions. */
  readonly ways: readonly (readonly (readonly number[])[])[];
  readonly clashes: readonly (readonly [number, number])[];
}

function drawn(least: number, most: number, clashes: number): fc.Arbitrary<Drawn> {
  return fc.integer({ min: least, max: most }).chain((size) => {
    const part = fc.nat(size - 1);
    const companions = fc.uniqueArray(part, { minLength: 1, maxLength: 3 });
    const ways = fc.oneof(
      { weight: 3, arbitrary: fc.constant<number[][]>([]) },
      { weight: 3, arbitrary: companions.map((one) => [one]) },
      { weight: 3, arbitrary: fc.array(companions, { minLength: 2, maxLength: 3 }) },
    );
    return fc.record({
      size: fc.constant(size),
      ways: fc.array(ways, { minLength: size, maxLength: size }),
      clashes: fc.array(fc.tuple(part, part), { maxLength: clashes }),
    });
  });
}

function question({ size, ways, clashes }: Drawn): SetQuestion {
  const name = (i: number): string => `P${i}`;
  return {
    parts: Array.from({ length: size }, (_, i) => name(i)),
    wanted: [name(0)],
    ways: (part) => (ways[Number(part.slice(1))] ?? []).map((one) => one.map(name)),
    clashes: clashes.map(([a, b]) => [name(a), name(b)] as const),
  };
}

/** Whether there is a set with at most so many parts. */
function isThere({ size, ways, clashes }: Drawn, most: number): boolean {
  const all = (claims: readonly string[]): string => `(and true ${claims.join(" ")})`;
  const text = [
    "(reset)(set-logic QF_FD)", // Finite domains: a question about them is always answered.
    ...Array.from({ length: size }, (_, i) => `(declare-const p${i} Bool)`),
    "(assert p0)",
    ...ways.flatMap((own, i) =>
      own.length === 0
        ? []
        : [`(assert (=> p${i} (or ${own.map((one) => all(one.map((it) => `p${it}`))).join(" ")})))`],
    ),
    ...clashes.map(([a, b]) => `(assert (not (and p${a} p${b})))`),
    `(assert ((_ at-most ${most}) ${Array.from({ length: size }, (_, i) => `p${i}`).join(" ")}))`,
    "(check-sat)",
  ].join("\n");
  // Not Z3.eval_smtlib2_string: it lets go of a long text before its thread has read it.
  const said: string = em.ccall("Z3_eval_smtlib2_string", "string", ["number", "string"], [context, text]).trim();
  if (!/^(un)?sat$/.test(said)) throw new Error(`Z3 says: ${said.slice(0, 500)}`);
  return said === "sat";
}

// how many parts, at most so many clashes, how many problems
test.each([
  [4, 16, 8, 400],
  [30, 60, 30, 40],
  [200, 200, 120, 8],
])(
  "from %i to %i parts with up to %i clashes: %i problems, the same size or both impossible",
  (least, most, clashes, runs) => {
    const counts = { impossible: 0, alone: 0, several: 0, largest: 0 };
    for (const one of fc.sample(drawn(least, most, clashes), { seed: SEED, numRuns: runs })) {
      const asked = question(one);
      const found = smallestSet(asked);
      if (!found) {
        counts.impossible++;
        expect(isThere(one, one.size), JSON.stringify(one)).toBe(false);
        continue;
      }
      expect(isClosed(asked, found)).toBe(true);
      expect(isThere(one, found.length), JSON.stringify(one)).toBe(true);
      expect(isThere(one, found.length - 1), JSON.stringify(one)).toBe(false);
      counts[found.length === 1 ? "alone" : "several"]++;
      counts.largest = Math.max(counts.largest, found.length);
    }
    console.log(`smallest sets: seed ${SEED}, ${runs} problems: ${JSON.stringify(counts)}`);
    expect(counts.several).toBeGreaterThan(runs / 10);
    if (clashes < 20) expect(counts.impossible).toBeGreaterThan(runs / 50);
  },
  300_000,
);
