/**
 * What is known of one car. Facts are nearly always partial: a trait with one or more still possible values.
 *
 * Where a fact comes from ranks it. What is on the car now comes before what the plate says it left the plant with:
 * a fact "as found" takes the place of the plant's value for that trait, and of the numbers that go with it.
 */
import { type CarSet, NONE } from "./diagram.ts";
import { nearest } from "./nearest.ts";
import { type Ranges, ranges } from "./ranges.ts";
import type { Space } from "./space.ts";
import { numberOf, prefixesOf, span, type Trait, writtenValue } from "./trait.ts";

export type FactSource = "as found" | "plate" | "said";

/** In place of a trait: a part on the car that no scope asks for. It narrows nothing by itself. */
export const NOT_ASKED = -1;

export interface Fact {
  readonly trait: number;
  readonly values: Ranges;
  readonly source: FactSource;
  /** As the person gave it: "my=1973". */
  readonly text: string;
  /** The part on the car that it tells of, where somebody named one. */
  readonly part?: string;
}

/** A fact that is not understood, or that no car can have. */
export class FactError extends Error {}

export type GivenValue = string | number | boolean;
export type Given =
  | GivenValue
  | readonly GivenValue[]
  | { readonly from?: GivenValue | undefined; readonly to?: GivenValue | undefined };

/** Facts as given, by the id, alias or label of their trait. `eq` and `no` take lists of equipment. Throws a FactError. */
export function readFacts(space: Space, given: Readonly<Record<string, Given>>, source: FactSource): Fact[] {
  return Object.entries(given).flatMap(([name, value]) => {
    if (name === "eq" || name === "no") return readEquipment(space, name, value, source);
    const trait = space.find(name);
    if (trait === undefined) throw unknownTrait(space, name);
    return [
      {
        trait,
        values: readValues(space.trait(trait), value),
        // What is fitted is always a fact about today.
        source: space.isFitted(trait) ? "as found" : source,
        text: `${name}=${sayGiven(value)}`,
      },
    ];
  });
}

function readEquipment(space: Space, name: "eq" | "no", value: Given, source: FactSource): Fact[] {
  const codes = (Array.isArray(value) ? value : String(value).split(",")).map((code) => String(code).trim());
  return codes.map((code) => {
    const trait = space.find(code);
    if (trait === undefined || space.trait(trait).kind !== "flag") throw unknownTrait(space, code);
    const has = name === "eq" ? 1 : 0;
    return { trait, values: [[has, has]], source, text: `${name}=${code}` };
  });
}

function readValues(trait: Trait, value: Given): Ranges {
  if (Array.isArray(value)) {
    if (value.length === 0)
      throw new FactError(`${trait.label}: an empty list leaves no value possible; leave the fact out instead`);
    return ranges(value.map((one) => valueNumber(trait, one)));
  }
  if (typeof value === "object") {
    const { from, to } = value as { from?: GivenValue; to?: GivenValue };
    if (trait.kind === "list" || trait.kind === "flag")
      throw new FactError(`${trait.label} has no order, so it takes no range`);
    const [lo, hi] = span(trait);
    const pair = [
      from === undefined ? lo : valueNumber(trait, from)[0],
      to === undefined ? hi : valueNumber(trait, to)[0],
    ] as const;
    if (pair[0] > pair[1]) throw new FactError(`${trait.label}: the range runs backwards`);
    return [pair];
  }
  return [valueNumber(trait, value)];
}

function valueNumber(trait: Trait, value: GivenValue): readonly [number, number] {
  const text = typeof value === "boolean" ? (value ? "yes" : "no") : String(value);
  const number = numberOf(trait, text);
  if (number !== undefined) return [number, number];
  const known = trait.kind === "list" ? trait.values.flatMap(({ id, label }) => [id, label]) : [];
  const meant = nearest(text, known);
  const [lo, hi] = span(trait);
  const domain =
    known.length > 0
      ? `Values are ${known.filter((_, i) => i % 2 === 0).join(", ")}`
      : trait.kind === "flag"
        ? "Values are yes and no"
        : `Values run from ${writtenValue(trait, lo)} to ${writtenValue(trait, hi)}`;
  throw new FactError(`${trait.label} has no value '${text}'. ${meant ? `Did you mean '${meant}'?` : `${domain}.`}`);
}

function unknownTrait(space: Space, name: string): FactError {
  const ids = space.declared.map((trait) => trait.id);
  const meant = nearest(name, [...ids, ...space.declared.map((trait) => trait.label)]);
  return new FactError(
    `No trait is called '${name}'. ${meant ? `Did you mean '${meant}'?` : `Traits are ${ids.join(", ")}.`}`,
  );
}

function sayGiven(value: Given): string {
  if (Array.isArray(value)) return value.map(String).join(",");
  if (typeof value === "object") {
    const { from, to } = value as { from?: GivenValue; to?: GivenValue };
    return `${from ?? ""}..${to ?? ""}`;
  }
  return String(value);
}

/**
 * The cars that were built and fit the facts.
 *
 * Facts about the car as it was built narrow what was built. Facts as found come last: their trait, and the traits that go
 * with it, are forgotten first, so that a car with another engine than it left the plant with is still a car. A serial found
 * tells by its letter what it sits on.
 */
export function carsWith(space: Space, built: CarSet, facts: readonly Fact[]): CarSet {
  const narrow = (cars: CarSet, fact: Fact): CarSet => space.sets.and(cars, space.where(fact.trait, fact.values));
  const asked = facts.filter((fact) => fact.trait !== NOT_ASKED);
  const asBuilt = asked.filter((fact) => fact.source !== "as found");
  const found = asked.filter((fact) => fact.source === "as found");
  const cars = asBuilt.reduce(narrow, built);
  if (found.length === 0 || cars === NONE) return cars;
  return [...found, ...headsOf(space, found)].reduce(narrow, space.sets.forget(cars, replacedBy(space, found)));
}

/**
 * What the letters of serials found tell of the traits that they go with: a letter that is the name of a value there is that
 * value. The number itself tells nothing more: an engine changed since may have one that no car of this year or line had.
 */
function headsOf(space: Space, found: readonly Fact[]): Fact[] {
  return found.flatMap((fact) => {
    const trait = space.trait(fact.trait);
    const head = trait.of === undefined ? undefined : space.find(trait.of);
    if (trait.kind !== "serial" || head === undefined) return [];
    const values = prefixesOf(trait, fact.values).map((prefix) => numberOf(space.trait(head), prefix));
    // One letter that is no such name, and it may be any of them.
    if (values.some((value) => value === undefined)) return [];
    return [{ ...fact, trait: head, values: ranges(values.map((value) => [value as number, value as number])) }];
  });
}

/** The traits that facts as found take the place of: their own, what those go with, and all that goes with these. */
function replacedBy(space: Space, found: readonly Fact[]): Set<number> {
  const heads = new Set(
    found.map(({ trait }) => {
      const { of } = space.trait(trait);
      return of === undefined ? trait : (space.find(of) ?? trait);
    }),
  );
  const replaced = new Set(heads);
  space.declared.forEach((trait, index) => {
    const head = trait.of === undefined ? undefined : space.find(trait.of);
    if (head !== undefined && heads.has(head)) replaced.add(index);
  });
  return replaced;
}

/**
 * A smallest set of facts that no car was built with. Of several the one whose facts were given first.
 * Empty when the facts do not conflict.
 */
export function conflict(space: Space, built: CarSet, facts: readonly Fact[]): readonly Fact[] {
  if (carsWith(space, built, facts) !== NONE) return [];
  const asBuilt = facts.filter((fact) => fact.source !== "as found");
  for (let size = 1; size <= asBuilt.length; size++) {
    const found = conflictOfSize(space, built, asBuilt, size);
    if (found) return found;
  }
  // What was found contradicts itself: of all the facts none is kept that can be left out.
  return neededFacts(facts, (some) => carsWith(space, built, some) === NONE);
}

/** Tries the facts in order, giving up a beginning as soon as it is longer than allowed. */
function conflictOfSize(space: Space, cars: CarSet, facts: readonly Fact[], size: number): Fact[] | undefined {
  if (cars === NONE) return [];
  if (size === 0) return undefined;
  for (const [i, fact] of facts.entries()) {
    const narrowed = space.sets.and(cars, space.where(fact.trait, fact.values));
    if (narrowed === cars) continue;
    const rest = conflictOfSize(space, narrowed, facts.slice(i + 1), size - 1);
    if (rest) return [fact, ...rest];
  }
  return undefined;
}

/** Facts without which the matter would not be decided as it is: none of those kept can be left out. */
export function neededFacts(facts: readonly Fact[], decides: (facts: readonly Fact[]) => boolean): readonly Fact[] {
  let needed = [...facts];
  // Later facts go first, so that the ones people give first, line and year, carry the answer where they can.
  for (const fact of [...facts].reverse()) {
    const without = needed.filter((one) => one !== fact);
    if (decides(without)) needed = without;
  }
  return needed;
}
