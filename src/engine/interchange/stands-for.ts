/**
 * May one part be fitted where another belongs, or where nothing is? Only what records say counts, each in its own direction:
 *
 *   A statement about these two parts, for these cars, decides. If one of them refuses, it is refused.
 *   Where none speaks of these cars, steps may follow each other: A for B and B for C make A for C, if every step holds for the
 *   car and no statement for that car refuses a part of the chain where any later part of it belongs. Of all chains the
 *   shortest count, each of them; longer ones only where somebody asks for these.
 *   Else nothing is on record.
 */
import type { StandsIn } from "../records/statement.ts";
import { type CarSet, NONE } from "../scope/diagram.ts";
import { cutBy } from "./cut-by.ts";
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
  /** Where it is permitted: every way, each a chain of statements from the part asked down to what belongs there. One is enough. */
  readonly ways: readonly Chain[];
  /** Where it is refused: the statements that refuse it. */
  readonly refusals: readonly StandsIn[];
}

/** Steps that follow each other: A for B, B for C. */
export type Chain = readonly StandsIn[];

/** Whether nothing but fitting is asked for. */
export function isPlain(way: Chain): boolean {
  return way.every((step) => step.verdict === "yes");
}

/** A chain is not followed further; beyond it nothing is on record. */
const LONGEST = 16;
/** So many steps are tried for one question; where more would be needed, nothing is on record. */
const MOST_STEPS = 20_000;

/**
 * The cars cut into pieces with one verdict and the same ways each; `other` is what belongs there, left out where nothing does.
 * `place` is where, left out where no record names one. Only chains of more than `longerThan` steps count, which is for where all shorter ones are closed.
 */
export function standsFor(
  index: PartIndex,
  part: string,
  other: string | undefined,
  cars: CarSet,
  place: string | undefined,
  longerThan = 0,
): StandsFor[] {
  return piecesAbout(index, part, other, cars, place).flatMap(({ cars: here, statements }) =>
    statements.length > 0 ? [decided(statements, here)] : byChain(index, { part, other, place }, here, longerThan),
  );
}

/** The cars cut so that the same statements about these two parts hold for all cars of a piece. */
export function piecesAbout(
  index: PartIndex,
  part: string,
  other: string | undefined,
  cars: CarSet,
  place: string | undefined,
) {
  if (cars === NONE) return [];
  const about = (index.standInsOf.get(part) ?? []).filter((it) => it.for === other);
  return cutBy(
    index.space,
    cars,
    about.map((it) => ({ item: it, cars: whereHolds(index, it, cars, place) })),
  ).map(({ cars: here, items }) => ({ cars: here, statements: items }));
}

function decided(statements: readonly StandsIn[], cars: CarSet): StandsFor {
  const refusals = statements.filter((it) => !isPermission(it));
  if (refusals.length > 0) return { verdict: sayRefusal(refusals), cars, ways: [], refusals };
  return permitted(
    statements.map((it) => [it]),
    cars,
  );
}

/** That it does not go on at all weighs more than that it must not be used. */
export function sayRefusal(refusals: readonly StandsIn[]): Stands {
  return refusals.some((it) => it.verdict === "does-not-go-on") ? "does not go on" : "goes on but must not be used";
}

function permitted(ways: readonly Chain[], cars: CarSet): StandsFor {
  return { verdict: ways.some(isPlain) ? "yes" : "yes, on conditions", cars, ways, refusals: [] };
}

/** Shortest chains first; a car that some of one length settle is not looked at again. */
function byChain(
  index: PartIndex,
  { part, other, place }: { part: string; other: string | undefined; place: string | undefined },
  cars: CarSet,
  longerThan: number,
): StandsFor[] {
  const { sets } = index.space;
  const settled: StandsFor[] = [];
  let left = cars;
  let steps = 0;
  const silence = (): StandsFor[] =>
    left === NONE ? settled : [...settled, { verdict: "not on record", cars: left, ways: [], refusals: [] }];
  let chains: { steps: Chain; parts: readonly string[]; cars: CarSet }[] = [{ steps: [], parts: [part], cars }];
  for (let length = 1; length <= LONGEST && chains.length > 0 && left !== NONE; length++) {
    const longer: typeof chains = [];
    const found: { item: Chain; cars: CarSet }[] = [];
    for (const chain of chains)
      for (const statement of index.standInsOf.get(chain.parts.at(-1) as string) ?? []) {
        if (!isPermission(statement)) continue;
        if (statement.for !== undefined && chain.parts.includes(statement.for)) continue;
        if (++steps > MOST_STEPS) return silence();
        let here = sets.and(whereHolds(index, statement, chain.cars, place), left);
        for (const earlier of chain.parts) {
          const refused = refusedFor(index, earlier, statement.for, here, place);
          here = sets.minus(here, refused);
        }
        if (here === NONE) continue;
        const way = [...chain.steps, statement];
        if (statement.for === other) {
          if (length > longerThan) found.push({ item: way, cars: here });
        } else if (statement.for !== undefined)
          longer.push({ steps: way, parts: [...chain.parts, statement.for], cars: here });
      }
    for (const { cars: here, items } of cutBy(index.space, left, found))
      if (items.length > 0) {
        settled.push(permitted(items, here));
        left = sets.minus(left, here);
      }
    chains = longer;
  }
  return silence();
}

function refusedFor(
  index: PartIndex,
  part: string,
  other: string | undefined,
  cars: CarSet,
  place: string | undefined,
): CarSet {
  const refusals = (index.standInsOf.get(part) ?? []).filter((it) => it.for === other && !isPermission(it));
  return refusals.reduce<CarSet>((sum, it) => index.space.sets.or(sum, whereHolds(index, it, cars, place)), NONE);
}
