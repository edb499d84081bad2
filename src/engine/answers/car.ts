/** The car of a question: its facts, the cars that fit them, and the parts known to be on it today. */

import { comesAlong } from "../interchange/see-parts.ts";
import { readPlate } from "../records/read-plate.ts";
import { type CarSet, NONE } from "../scope/diagram.ts";
import { carsWith, type Fact, FactError, NOT_ASKED, readFacts } from "../scope/facts.ts";
import { FITTED, type Space } from "../scope/space.ts";
import type { Trait } from "../scope/trait.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { builtWith, perhapsBuiltWith, placesOf } from "./fitted.ts";
import { partIndexOf } from "./part-indexes.ts";
import { requirePart } from "./part-number.ts";
import { QuestionError } from "./question-error.ts";
import type { CarInput } from "./shapes/car.ts";

export interface KnownCar {
  readonly facts: readonly Fact[];
  /** The cars that were built and fit the facts, with what is fitted today. */
  readonly cars: CarSet;
  readonly fitted: readonly string[];
  /** Traits of components that were found with the number of another kind of car. */
  readonly foreign: ReadonlySet<number>;
}

/** Reads what is known of a car. Throws a QuestionError for what is not understood; conflicting facts are no error here. */
export function readCar(knowledge: CarKnowledge, input: CarInput): KnownCar {
  const { space } = knowledge.catalog;
  try {
    const named = (input.fitted ?? []).map((typed) => requirePart(knowledge.catalog, typed).number);
    const facts: Fact[] = [
      ...plateFacts(knowledge, input.plate),
      ...readFacts(space, input.facts ?? {}, "said"),
      ...readFacts(space, input.found ?? {}, "as found"),
      ...named.map(
        (part): Fact => ({
          part,
          trait: space.askedFitted(part) ?? NOT_ASKED,
          values: [[1, 1]],
          source: "as found",
          text: `fitted=${part}`,
        }),
      ),
    ];
    return withFacts(knowledge, facts);
  } catch (error) {
    if (error instanceof FactError) throw new QuestionError(error.message);
    throw error;
  }
}

/** The car of which these facts are known. */
export function withFacts(knowledge: CarKnowledge, facts: readonly Fact[]): KnownCar {
  const { space, buildable } = knowledge.catalog;
  const fitted = fittedOf(space, facts);
  return {
    facts,
    fitted,
    cars: carsOf(knowledge, buildable, facts, fitted),
    foreign: foreignIn(space, buildable, facts),
  };
}

/** The same car as it left the plant: without what was found on it. */
export function asItLeft(knowledge: CarKnowledge, car: KnownCar): KnownCar {
  return withFacts(
    knowledge,
    car.facts.filter((fact) => fact.source !== "as found"),
  );
}

/** A component found with a number that no car like this one was built with came from another; so did all that it tells. */
function foreignIn(space: Space, buildable: CarSet, facts: readonly Fact[]): Set<number> {
  const found = facts.filter(
    (it) => it.source === "as found" && it.trait !== NOT_ASKED && space.trait(it.trait).kind === "serial",
  );
  const foreign = found.filter((fact) => {
    const others = facts.filter((it) => it !== fact);
    const cars = carsWith(space, buildable, others);
    return cars !== NONE && !space.sets.meet(cars, space.where(fact.trait, fact.values));
  });
  return new Set(
    foreign.flatMap(({ trait }) => {
      const { of } = space.trait(trait);
      const head = of === undefined ? undefined : space.find(of);
      return head === undefined ? [trait] : [trait, head];
    }),
  );
}

/** The parts that facts tell to be on the car; one may also be told as the trait that a scope asks for, "fitted PART": yes. */
function fittedOf(space: Space, facts: readonly Fact[]): string[] {
  const parts = facts.flatMap((fact) => {
    if (fact.part !== undefined) return [fact.part];
    const isTold = fact.trait !== NOT_ASKED && space.isFitted(fact.trait);
    return isTold && fact.values.every(([from]) => from === 1) ? [partOf(space.trait(fact.trait))] : [];
  });
  return [...new Set(parts)];
}

/** The cars that fit some facts, everything that nobody reports otherwise taken as built. */
export function carsOf(
  knowledge: CarKnowledge,
  built: CarSet,
  facts: readonly Fact[],
  fitted: readonly string[],
): CarSet {
  const { space } = knowledge.catalog;
  const told = facts.filter((fact) => fact.trait !== NOT_ASKED && space.isFitted(fact.trait));
  const cars = carsWith(space, built, facts);
  const open = new Set(told.map((fact) => fact.trait));
  // What may have come along with a part that was seen is not as built for certain.
  if (fitted.length > 0 && cars !== NONE)
    for (const part of comesAlong(partIndexOf(knowledge.catalog), cars, fitted)) {
      const trait = space.askedFitted(part);
      if (trait !== undefined) open.add(trait);
    }
  return asBuilt(knowledge, cars, fitted, open);
}

function plateFacts({ catalog }: CarKnowledge, typed: string | undefined): readonly Fact[] {
  if (typed === undefined) return [];
  const read = readPlate(catalog.space, catalog.buildable, catalog.plates, typed);
  if (read.as === "unknown")
    throw new QuestionError(`No plate has ${read.number.length} characters, as '${typed}' has.`);
  if (read.as === "misread")
    throw new QuestionError(
      `The plate '${typed}' was misread: ${read.slips
        .map(
          (slip) =>
            `character ${slip.place} (${slip.holds}) cannot be '${slip.character}'; it may be ${slip.couldBe.join(", ")}`,
        )
        .join("; ")}.`,
    );
  return read.facts;
}

/** The part that a trait "fitted PART" is about. */
function partOf(trait: Trait): string {
  return trait.id.slice(`${FITTED} `.length);
}

/**
 * What is on the car today where nobody says otherwise: what the plant fitted. A part that scopes ask for with "fitted" is on
 * the car exactly where it was built in, unless another part is reported in its place.
 */
function asBuilt(knowledge: CarKnowledge, cars: CarSet, fitted: readonly string[], told: ReadonlySet<number>): CarSet {
  const { space } = knowledge.catalog;
  const { sets } = space;
  const taken = new Set(fitted.flatMap((part) => [...placesOf(knowledge, part)]));
  let left = cars;
  space.traits.slice(space.declared.length).forEach((trait, i) => {
    if (left === NONE) return;
    const part = partOf(trait);
    const index = space.declared.length + i;
    if (told.has(index)) return;
    const on = space.where(index, [[1, 1]]);
    const replaced = [...placesOf(knowledge, part)].some((place) => taken.has(place));
    const built = replaced ? NONE : builtWith(knowledge, part);
    const perhaps = replaced ? NONE : perhapsBuiltWith(knowledge, part);
    const certainly = sets.and(on, built);
    const certainlyNot = sets.minus(sets.not(on), built);
    left = sets.and(left, sets.or(sets.or(certainly, certainlyNot), perhaps));
  });
  return left;
}
