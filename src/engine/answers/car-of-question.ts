/**
 * The car of a question in words: what is said of it, over what was known of the car before (`picked`).
 *
 *   What is denied is taken out of what is possible.
 *   Where the question contradicts the car that was picked: in a question about fitting, the car in the question is where the part
 *   comes from if it stands there as such, and otherwise it is unclear; in any other question it is another car, and the
 *   picked one does not count.
 */
import { type CarsSaid, carsSaid, type Said, traitSaid } from "../ask/cars-said.ts";
import type { Reading } from "../ask/read-question.ts";
import { NONE } from "../scope/diagram.ts";
import type { Space } from "../scope/space.ts";
import { readCar } from "./car.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { QuestionError } from "./question-error.ts";
import type { CarInput } from "./shapes/car.ts";

export interface CarsAsked {
  readonly car: CarInput;
  /** It may be a car that the records know nothing of, so nothing is permitted. */
  readonly lost: boolean;
  /** What of it is certain whatever the words mean that were not understood: a permission has to hold for this. */
  readonly sure: CarInput;
  /** The car that the part comes from; nothing where the question names one car or none. */
  readonly donor: CarInput | undefined;
  /** Two cars are spoken of and it is not clear which one is at hand: the answer must hold for either. */
  readonly unclear: boolean;
}

export function carsAsked(knowledge: CarKnowledge, reading: Reading, picked: CarInput, ofFitting: boolean): CarsAsked {
  const { space } = knowledge.catalog;
  const said = carsSaid(reading);
  const { lost } = said;
  const own = factsOf(space, said.car);
  if (contradicts(knowledge, picked, own)) {
    if (!ofFitting)
      return { car: { facts: own }, sure: said.murky ? {} : { facts: own }, donor: undefined, unclear: false, lost };
    if (said.ofPart) return { car: picked, sure: picked, donor: { facts: own }, unclear: false, lost };
    return { car: {}, sure: {}, donor: undefined, unclear: true, lost };
  }
  const car: CarInput = { ...picked, facts: { ...picked.facts, ...own } };
  const both = said.donor.length === 0 ? { car, donor: undefined, unclear: said.unclear } : twoCars(space, said, car);
  return { ...both, lost, sure: lost ? {} : said.murky ? picked : both.car };
}

function twoCars(space: Space, said: CarsSaid, car: CarInput): Omit<CarsAsked, "sure" | "lost"> {
  const theirs = factsOf(space, said.donor);
  const line = space.role("line");
  const id = line === undefined ? undefined : space.trait(line).id;
  const facts = car.facts ?? {};
  if (id === undefined) return { car, donor: { facts: theirs }, unclear: false };
  // The line said of one of them goes for both: "will a 74 caliper fit a 72 Heron".
  const ours = id in facts ? facts : id in theirs ? { [id]: theirs[id] as string | string[], ...facts } : facts;
  const lent = id in theirs || !(id in facts) ? theirs : { [id]: facts[id] as string | string[], ...theirs };
  return { car: { ...car, facts: ours }, donor: { facts: lent }, unclear: false };
}

function contradicts(knowledge: CarKnowledge, picked: CarInput, own: CarInput["facts"]): boolean {
  const isPicked = picked.plate !== undefined || Object.keys(picked.facts ?? {}).length > 0;
  if (!isPicked || Object.keys(own ?? {}).length === 0) return false;
  try {
    const both = [{ plate: picked.plate, facts: picked.facts }, { facts: own }].map(
      (car) => readCar(knowledge, car).cars,
    ) as [never, never];
    return knowledge.catalog.space.sets.and(...both) === NONE;
  } catch (error) {
    if (error instanceof QuestionError) return false;
    throw error;
  }
}

/** Trait to its value, or to the values that are still possible. */
export function factsOf(space: Space, said: readonly Said[]): Record<string, string | string[]> {
  const facts = new Map<string, Set<string>>();
  const possible = (trait: string): Set<string> => facts.get(trait) ?? new Set();
  const known = said.flatMap((one) => {
    const index = indexOf(space, one);
    return index === undefined ? [] : [{ ...one, trait: space.trait(index).id, all: valuesOf(space, index) }];
  });
  for (const { trait, ids, denied } of known)
    if (!denied) facts.set(trait, new Set([...possible(trait), ...ids.map((id) => id.slice(id.indexOf("=") + 1))]));
  for (const { trait, ids, denied, all } of known)
    if (denied) {
      const gone = ids.map((id) => id.slice(id.indexOf("=") + 1));
      const left = [...(facts.get(trait) ?? all ?? [])].filter((value) => !gone.includes(value));
      // Where nothing is left, it was denied and said: nothing is taken from it.
      if (left.length > 0) facts.set(trait, new Set(left));
      else facts.delete(trait);
    }
  return Object.fromEntries(
    [...facts].map(([trait, values]) => {
      const all = known.find((it) => it.trait === trait)?.all;
      const some = [...values].filter((value) => all?.includes(value) ?? true);
      return [trait, some.length === 1 ? (some[0] as string) : some];
    }),
  );
}

function indexOf(space: Space, said: Said): number | undefined {
  return said.kind === "trait" ? space.find(traitSaid(said)) : space.role(said.kind);
}

/** Every value of a list, flag or year; of any other trait nothing can be taken out. */
function valuesOf(space: Space, index: number): string[] | undefined {
  const trait = space.trait(index);
  if (trait.kind === "list") return trait.values.map(({ id }) => id);
  if (trait.kind === "flag") return ["yes", "no"];
  if (trait.kind !== "whole" || trait.role !== "year") return undefined;
  return Array.from({ length: trait.to - trait.from + 1 }, (_, i) => String(trait.from + i));
}
