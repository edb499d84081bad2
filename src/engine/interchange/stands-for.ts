/**
 * May one part be fitted where another belongs, or where nothing is? Only what records say counts, each in its own direction:
 *
 *   A statement about these two parts, for these cars, decides. If one of them refuses, it is refused.
 *   Where none speaks of these cars, steps may follow each other: A for B and B for C make A for C, if every step holds for the
 *   car and no statement for that car refuses a part of the chain where any later part of it belongs.
 *   Else nothing is on record.
 */
import type { StandsIn } from "../records/statement.ts";
import { type CarSet, NONE } from "../scope/diagram.ts";
import { isPermission, type PartIndex, whereHolds } from "./part-index.ts";

/** Worst first: of two that both hold for a car, the earlier one counts. */
export const STANDS = [
  "does not go on",
  "goes on but must not be used",
  "not on record",
  "yes, on conditions",
  "yes",
] as const;
export type Stands = (typeof STANDS)[number];

/** Whether statements permit it; "as built" needs none. */
export function isPermitted(verdict: Stands | "as built"): boolean {
  return verdict === "yes" || verdict === "yes, on conditions";
}

export interface StandsFor {
  readonly verdict: Stands;
  readonly cars: CarSet;
  /** Refusals; or ways to go, each a chain of statements from the part asked down to what belongs there. One way is enough. */
  readonly ways: readonly (readonly StandsIn[])[];
}

/** A chain is not followed further; beyond it nothing is on record. */
const LONGEST = 16;
/** So many steps are tried for one question; where more would be needed, nothing is on record. */
const MOST_STEPS = 20_000;

/** The cars cut into parts with one verdict each; `other` is what belongs there, left out where nothing does. */
export function standsFor(index: PartIndex, part: string, other: string | undefined, cars: CarSet): StandsFor[] {
  const about = (index.standInsOf.get(part) ?? []).filter((it) => it.for === other);
  const direct = cutBy(index, cars, about).map((piece) => verdictOf(piece.statements, piece.cars));
  const silent = direct.find((piece) => piece.ways.length === 0);
  if (!silent) return direct;
  const spoken = direct.filter((piece) => piece !== silent);
  return [...spoken, ...byChain(index, part, other, silent.cars)];
}

/** Cuts cars so that each of the statements holds for all cars of a piece, or for none. */
function cutBy(index: PartIndex, cars: CarSet, statements: readonly StandsIn[]) {
  const { sets } = index.space;
  let pieces: { cars: CarSet; statements: readonly StandsIn[] }[] = [{ cars, statements: [] }];
  for (const statement of statements)
    pieces = pieces.flatMap((piece) => {
      const holds = whereHolds(index, statement, piece.cars);
      const rest = sets.minus(piece.cars, holds);
      return [
        ...(holds === NONE ? [] : [{ cars: holds, statements: [...piece.statements, statement] }]),
        ...(rest === NONE ? [] : [{ cars: rest, statements: piece.statements }]),
      ];
    });
  return pieces;
}

function verdictOf(statements: readonly StandsIn[], cars: CarSet): StandsFor {
  const some = (verdict: StandsIn["verdict"]) => statements.filter((it) => it.verdict === verdict).map((it) => [it]);
  const refused = [...some("does-not-go-on"), ...some("must-not-be-used")];
  if (some("does-not-go-on").length > 0) return { verdict: "does not go on", cars, ways: refused };
  if (refused.length > 0) return { verdict: "goes on but must not be used", cars, ways: refused };
  if (some("yes").length > 0) return { verdict: "yes", cars, ways: some("yes") };
  return statements.length > 0
    ? { verdict: "yes, on conditions", cars, ways: some("on-conditions") }
    : { verdict: "not on record", cars, ways: [] };
}

/** Shortest chains first; a car that one of them settles is not looked at again. */
function byChain(index: PartIndex, part: string, other: string | undefined, cars: CarSet): StandsFor[] {
  const { sets } = index.space;
  const found: StandsFor[] = [];
  let left = cars;
  let steps = 0;
  let chains: { steps: readonly StandsIn[]; parts: readonly string[]; cars: CarSet }[] = [
    { steps: [], parts: [part], cars },
  ];
  for (let length = 1; length <= LONGEST && chains.length > 0 && left !== NONE; length++) {
    const longer: typeof chains = [];
    for (const chain of chains)
      for (const statement of index.standInsOf.get(chain.parts.at(-1) as string) ?? []) {
        if (!isPermission(statement)) continue;
        if (statement.for !== undefined && chain.parts.includes(statement.for)) continue;
        if (++steps > MOST_STEPS) return [...found, { verdict: "not on record", cars: left, ways: [] }];
        let here = sets.and(whereHolds(index, statement, chain.cars), left);
        for (const earlier of chain.parts) here = sets.minus(here, refusedFor(index, earlier, statement.for, here));
        if (here === NONE) continue;
        const way = [...chain.steps, statement];
        if (statement.for === other) {
          const verdict = way.every((it) => it.verdict === "yes") ? "yes" : "yes, on conditions";
          found.push({ verdict, cars: here, ways: [way] });
          left = sets.minus(left, here);
        } else if (statement.for !== undefined)
          longer.push({ steps: way, parts: [...chain.parts, statement.for], cars: here });
      }
    chains = longer;
  }
  return left === NONE ? found : [...found, { verdict: "not on record", cars: left, ways: [] }];
}

function refusedFor(index: PartIndex, part: string, other: string | undefined, cars: CarSet): CarSet {
  const refusals = (index.standInsOf.get(part) ?? []).filter((it) => it.for === other && !isPermission(it));
  return refusals.reduce<CarSet>((sum, it) => index.space.sets.or(sum, whereHolds(index, it, cars)), NONE);
}
