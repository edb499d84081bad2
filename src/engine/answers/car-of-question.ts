/**
 * The car of a question in words: what its chips say, over what was known of the car before. Where a question names two
 * cars, one is the car at hand and the other the one that a part comes from:
 *
 *   the other one is what stands after "off" or "from"; without such a word it is the first of two years, two lines or two engines.
 *   What is said of only one of them, such as the line in "will a 74 caliper fit a 72 Heron", goes for both.
 */
import type { Chip, Reading } from "../ask/read-question.ts";
import type { Space } from "../scope/space.ts";
import type { CarInput } from "./shapes/car.ts";

export interface CarsAsked {
  readonly car: CarInput;
  /** The car that the part comes from; nothing where the question names one car or none. */
  readonly donor: CarInput | undefined;
}

export function carsAsked(space: Space, { chips }: Reading, picked: CarInput, twoCars: boolean): CarsAsked {
  const ofCars = chips.filter(({ kind }) => kind === "line" || kind === "year" || kind === "trait");
  const isDonor = twoCars ? donorsAmong(ofCars) : () => false;
  const donors = ofCars.filter(isDonor);
  const own = ofCars.filter((chip) => !donors.includes(chip));
  const facts = factsOf(space, own);
  const car = { ...picked, facts: { ...picked.facts, ...facts } };
  if (donors.length === 0) return { car, donor: undefined };
  const theirs = factsOf(space, donors);
  const shared = Object.fromEntries(Object.entries(facts).filter(([trait]) => !(trait in theirs)));
  const lacking = Object.fromEntries(
    Object.entries(theirs).filter(([trait]) => isLine(space, trait) && !(trait in facts)),
  );
  return {
    car: { ...car, facts: { ...lacking, ...car.facts } },
    // Of the other car only its line is taken over, not what is built into the car at hand.
    donor: {
      facts: { ...Object.fromEntries(Object.entries(shared).filter(([trait]) => isLine(space, trait))), ...theirs },
    },
  };
}

function donorsAmong(chips: readonly Chip[]): (chip: Chip) => boolean {
  if (chips.some(({ donor }) => donor)) return ({ donor }) => donor === true;
  const firstOfTwo = (kind: Chip["kind"]): Chip | undefined => {
    const some = chips.filter((chip) => chip.kind === kind);
    return some.length > 1 ? some[0] : undefined;
  };
  const [year, line] = [firstOfTwo("year"), firstOfTwo("line")];
  const traits = chips.filter(({ kind }) => kind === "trait");
  const isFirstOfTwo = (chip: Chip): boolean => {
    const same = traits.filter(({ ids }) => traitOf(ids) === traitOf(chip.ids));
    return same.length > 1 && same[0] === chip;
  };
  return (chip) => chip === year || chip === line || isFirstOfTwo(chip);
}

function traitOf([id = ""]: readonly string[]): string {
  return id.slice(0, id.indexOf("="));
}

function isLine(space: Space, trait: string): boolean {
  const line = space.role("line");
  return line !== undefined && space.trait(line).id === trait;
}

/** Trait to its value, or to the values that are still possible. */
function factsOf(space: Space, chips: readonly Chip[]): Record<string, string | string[]> {
  const facts: Record<string, string[]> = {};
  for (const { kind, ids } of chips) {
    if (kind === "trait")
      for (const id of ids) {
        const [trait = "", value = ""] = id.split("=");
        facts[trait] = [...new Set([...(facts[trait] ?? []), value])];
      }
    else {
      const at = space.role(kind as "line" | "year");
      if (at !== undefined) facts[space.trait(at).id] = [...new Set([...(facts[space.trait(at).id] ?? []), ...ids])];
    }
  }
  return Object.fromEntries(
    Object.entries(facts).map(([trait, values]) => [trait, values.length === 1 ? (values[0] as string) : values]),
  );
}
