/**
 * The space of cars: every trait in its fixed order, and the sets of cars made over them.
 * The order of the traits is the order of the data; "is this part fitted today?" is one yes/no trait a part and comes last.
 */
import { type CarSet, CarSets, NONE } from "./diagram.ts";
import type { Ranges } from "./ranges.ts";
import { span, type Trait, type TraitRole } from "./trait.ts";

export const FITTED = "fitted";

export class Space {
  readonly traits: Trait[];
  readonly sets: CarSets;
  readonly #byName = new Map<string, number>();
  /** The traits that the data declares, without the "fitted today" ones. */
  readonly declared: readonly Trait[];

  constructor(traits: readonly Trait[]) {
    this.traits = [...traits];
    this.declared = [...traits];
    // Ids first: what one trait is also called never hides the id of another.
    const names = [(trait: Trait) => [trait.id], (trait: Trait) => [...trait.aliases, trait.label]];
    for (const namesOf of names)
      traits.forEach((trait, index) => {
        for (const name of namesOf(trait)) {
          const key = name.toLowerCase();
          if (!this.#byName.has(key)) this.#byName.set(key, index);
        }
      });
    this.sets = new CarSets((index) => span(this.trait(index)));
  }

  trait(index: number): Trait {
    const trait = this.traits[index];
    if (!trait) throw new RangeError(`no trait has the number ${index}`);
    return trait;
  }

  /** The number of the trait with this id, alias or label. */
  find(name: string): number | undefined {
    return this.#byName.get(name.trim().toLowerCase());
  }

  role(role: TraitRole): number | undefined {
    const index = this.traits.findIndex((trait) => trait.role === role);
    return index >= 0 ? index : undefined;
  }

  /** The number of the trait "this part is on the car today", if some scope asks for it. */
  askedFitted(part: string): number | undefined {
    return this.#byName.get(`${FITTED} ${part}`.toLowerCase());
  }

  /** Whether a trait is one of those "this part is on the car today". */
  isFitted(trait: number): boolean {
    return trait >= this.declared.length;
  }

  /** The number of the trait "this part is on the car today", made where no scope asked for it before. */
  fitted(part: string): number {
    const id = `${FITTED} ${part}`;
    const known = this.#byName.get(id.toLowerCase());
    if (known !== undefined) return known;
    this.traits.push({
      kind: "flag",
      id,
      label: `${part} fitted`,
      aliases: [],
      find: "look at the part itself and its marks",
      effort: 3,
      phrase: `with ${part} fitted`,
      otherwise: `without ${part} fitted`,
      today: true,
    });
    this.#byName.set(id.toLowerCase(), this.traits.length - 1);
    return this.traits.length - 1;
  }

  /** First and last number that the values of a trait are counted in. */
  span(trait: number): readonly [number, number] {
    return span(this.trait(trait));
  }

  where(trait: number, values: Ranges): CarSet {
    return this.sets.where(trait, values);
  }

  /** The union of many sets. */
  any(sets: Iterable<CarSet>): CarSet {
    let all: CarSet = NONE;
    for (const set of sets) all = this.sets.or(all, set);
    return all;
  }
}
