/**
 * What two years differ in, in a matter that has one value for some cars and another one for others.
 *
 * Cars are compared kind by kind. A *kind* is all cars that are alike in what the matter depends on: the traits that its
 * statements name, but for what runs within a year (numbers, dates) and what was fitted since.
 *
 *   Each kind of the last year is compared with the same kind of the first year. Where there was none, with the kinds that are
 *   alike but for equipment; where there was none, with those of the same line; or else with all of them. If some of these are
 *   kinds that the last year has no more, only with those: it came in their place.
 *   Its values are those on record. What is not on record is no value: that something is not said is no change.
 *
 *   If one of the kinds that it is compared with had the same values, or all of them together had, there is no change for it.
 *   Otherwise, if nothing is on record for it, or for none of the others, the matter is on record in one of the years only: what
 *   changed is not known.
 *   Otherwise it has changed, from all values of those kinds to its own.
 *
 * So the two sides of a change are never the same, and no car has part in it whose kind kept what it had. A kind with several
 * values in a year (a running change) has changed when it has not the same ones in the other year.
 */
import { type CarSet, NONE } from "../scope/diagram.ts";
import type { Space } from "../scope/space.ts";

export const NOT_ON_RECORD = "not on record";

interface ValueOfCars {
  readonly said: string;
  readonly cars: CarSet;
}

/** Kinds of cars that all changed from the same values to the same values. */
export interface Difference {
  readonly from: readonly string[];
  readonly to: readonly string[];
  /** The kinds in the last year, and those that they were compared with: sets in which only named traits count. */
  readonly kinds: CarSet;
  readonly compared: CarSet;
}

export interface ComparedYears {
  readonly changed: readonly Difference[];
  /** Kinds for which the matter is on record in one of the years only: `from` or `to` is empty. */
  readonly oneSided: readonly Difference[];
}

interface Kind {
  readonly cars: CarSet;
  readonly known: readonly string[];
  /** For some of its cars nothing is on record. */
  readonly silent: boolean;
}

/** `named`: the traits that the statements of the matter name. */
export function compareYears(
  space: Space,
  first: readonly ValueOfCars[],
  last: readonly ValueOfCars[],
  named: ReadonlySet<number>,
): ComparedYears {
  const { sets } = space;
  const stages = likenesses(space, named);
  const [closest] = stages as [ReadonlySet<number>];
  let rest = kindsOf(space, last, closest);
  const still = rest.map((kind) => kind.cars);
  const before = kindsOf(space, first, closest).flatMap((kind) =>
    split(space, kind.cars, [{ cars: space.any(still) }]).map(({ cars, within }) => ({
      ...kind,
      cars,
      isGone: within.length === 0,
    })),
  );
  const found = { changed: new Map<string, Difference>(), oneSided: new Map<string, Difference>() };
  for (const stage of stages) {
    const wide = before.map((kind) => ({ kind, cars: sets.forget(kind.cars, stage) }));
    const unlike: Kind[] = [];
    for (const after of rest)
      for (const { cars, within } of split(space, after.cars, wide)) {
        const alike = within.map(({ kind }) => kind);
        const gone = alike.filter((kind) => kind.isGone);
        if (alike.length === 0) unlike.push({ ...after, cars });
        else note(space, found, { ...after, cars }, gone.length > 0 ? gone : alike, sets.forget(cars, stage));
      }
    rest = unlike;
    if (rest.length === 0) break;
  }
  return { changed: [...found.changed.values()], oneSided: [...found.oneSided.values()] };
}

function note(
  space: Space,
  found: Record<"changed" | "oneSided", Map<string, Difference>>,
  after: Kind,
  others: readonly Kind[],
  like: CarSet,
): void {
  const isSame = (known: readonly string[]): boolean => known.join("\n") === after.known.join("\n");
  if (others.some((other) => isSame(other.known)) || isSame(knownOf(others))) return;
  const stated = others.filter((other) => other.known.length > 0);
  const sides = { from: saidOf(stated), to: saidOf([after].filter((kind) => kind.known.length > 0)) };
  const notes = found[sides.from.length > 0 && sides.to.length > 0 ? "changed" : "oneSided"];
  const key = JSON.stringify(sides);
  const same = notes.get(key);
  const compared = space.any((stated.length > 0 ? stated : others).map((kind) => space.sets.and(kind.cars, like)));
  notes.set(key, {
    ...sides,
    kinds: space.sets.or(same?.kinds ?? NONE, after.cars),
    compared: space.sets.or(same?.compared ?? NONE, compared),
  });
}

/** All that is said of some kinds; "not on record" last. */
function saidOf(kinds: readonly Kind[]): string[] {
  return kinds.some((kind) => kind.silent) ? [...knownOf(kinds), NOT_ON_RECORD] : knownOf(kinds);
}

function knownOf(kinds: readonly Kind[]): string[] {
  return [...new Set(kinds.flatMap((kind) => kind.known))].sort();
}

/** Kinds with the same values in a year are taken together. */
function kindsOf(space: Space, values: readonly ValueOfCars[], besides: ReadonlySet<number>): Kind[] {
  const wide = values.map(({ said, cars }) => ({ said, cars: space.sets.forget(cars, besides) }));
  return split(space, space.any(wide.map(({ cars }) => cars)), wide).map(({ cars, within }) => {
    const said = within.map((value) => value.said);
    return { cars, known: said.filter((it) => it !== NOT_ON_RECORD).sort(), silent: said.includes(NOT_ON_RECORD) };
  });
}

/** Cars cut up by some sets, so that each piece is within a set or apart from it. */
function split<T extends { readonly cars: CarSet }>(
  { sets }: Space,
  cars: CarSet,
  by: readonly T[],
): { cars: CarSet; within: T[] }[] {
  let pieces: { cars: CarSet; within: T[] }[] = [{ cars, within: [] }];
  for (const one of by)
    pieces = pieces
      .flatMap((piece) => [
        { cars: sets.and(piece.cars, one.cars), within: [...piece.within, one] },
        { cars: sets.minus(piece.cars, one.cars), within: piece.within },
      ])
      .filter((piece) => piece.cars !== NONE);
  return pieces;
}

/** What is not looked at when cars of two years are compared, from the closest likeness to none at all. */
function likenesses(space: Space, named: ReadonlySet<number>): ReadonlySet<number>[] {
  const running = runningTraits(space);
  const all = [...space.traits.keys()];
  const line = space.role("line");
  const besides = all.filter((trait) => running.has(trait) || !named.has(trait));
  return [
    new Set(besides),
    new Set([...besides, ...all.filter((trait) => space.trait(trait).kind === "flag")]),
    new Set(all.filter((trait) => trait !== line)),
    new Set(all),
  ];
}

/** The traits that tell one car from the next of its kind: year, running numbers, serials, and what is fitted today. */
export function runningTraits(space: Space): ReadonlySet<number> {
  return new Set(
    [...space.traits.keys()].filter((index) => {
      const { role, kind, of } = space.trait(index);
      return (
        role === "year" ||
        role === "sequence" ||
        role === "date" ||
        kind === "serial" ||
        of !== undefined ||
        index >= space.declared.length
      );
    }),
  );
}

/** The traits that the scopes of some statements ask for. */
export function namedIn(space: Space, scopes: Iterable<CarSet>): ReadonlySet<number> {
  return new Set([...scopes].flatMap((cars) => [...space.sets.traitsOf(cars)]));
}
