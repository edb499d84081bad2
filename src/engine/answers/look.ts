/** What to look at next, in words: the trait, how a person finds it on the car, and what each answer would mean. */

import type { Applies } from "../scope/applies.ts";
import { type CarSet, NONE } from "../scope/diagram.ts";
import { type Fact, NOT_ASKED } from "../scope/facts.ts";
import { nextLook } from "../scope/question.ts";
import type { Ranges } from "../scope/ranges.ts";
import type { Space } from "../scope/space.ts";
import { type SerialTrait, stretch, type Trait, writtenValue } from "../scope/trait.ts";
import type { FactView, Look } from "./shapes/look.ts";

/** What a verdict on a record means for the car. */
const MEANS: Readonly<Record<Applies, string>> = {
  yes: "applies",
  no: "does not apply",
  "look first": "still open",
  "no such car": "no such car was built",
};

/**
 * Nothing where the scope is decided. `means` says in words what it would mean that only these of the cars are left; without
 * it that the scope applies to them or not.
 */
export function look(space: Space, cars: CarSet, scope: CarSet, means?: (left: CarSet) => string): Look | undefined {
  const next = nextLook(space, cars, scope);
  if (!next) return undefined;
  const trait = space.trait(next.trait);
  const outcomes = next.outcomes.map(({ values, verdict }) => ({
    values: sayValues(trait, values),
    words: valueWords(trait, values),
    verdict,
    means: means?.(space.sets.and(cars, space.where(next.trait, values))) ?? MEANS[verdict],
  }));
  return {
    ...lookAt(space, cars, next.trait),
    options: outcomes.map((outcome) => outcome.words),
    outcomes,
    deciding: next.deciding.map((index) => space.trait(index).id),
  };
}

/** The look that tells some values apart, each of which holds for some of the cars; what an answer leaves possible is said with `say`. */
export function lookAmong(
  space: Space,
  cars: CarSet,
  values: readonly { readonly said: string; readonly cars: CarSet }[],
  say: (left: string) => string = (left) => left,
): Look | undefined {
  const means = (left: CarSet): string => {
    const possible = values.filter((value) => space.sets.and(left, value.cars) !== NONE);
    return say(possible.map((value) => value.said).join(" or "));
  };
  for (const value of values) {
    const [all, some] = withoutParts(space, cars, value.cars);
    const found = look(space, all, some, means);
    if (found) return found;
  }
  return undefined;
}

/**
 * That the plant fitted a part to the cars of one value and not to those of the others tells which car this is only as long as nobody
 * has changed it. So what is fitted today is not looked at where the values can be told apart without it.
 */
function withoutParts(space: Space, cars: CarSet, some: CarSet): [CarSet, CarSet] {
  const { sets } = space;
  const parts = new Set([...sets.traitsOf(cars), ...sets.traitsOf(some)].filter((trait) => space.isFitted(trait)));
  if (parts.size === 0) return [cars, some];
  const [bare, others] = [sets.forget(some, parts), sets.forget(sets.minus(cars, some), parts)];
  return sets.meet(bare, others) ? [cars, some] : [sets.forget(cars, parts), bare];
}

function whatToDo(space: Space, index: number): string {
  const { label, find } = space.trait(index);
  const how = `${find.charAt(0).toUpperCase()}${find.slice(1)}${/[.!?]$/.test(find) ? "" : "."}`;
  return `${space.isFitted(index) ? `Look whether it is so: ${label}.` : `Look at the ${label}.`} ${how}`;
}

/** The question for one trait, with the values that are still possible, each by itself where they can be told one by one. */
export function lookAt(space: Space, cars: CarSet, index: number): Omit<Look, "outcomes" | "deciding"> {
  const trait = space.trait(index);
  const possible = space.sets.valuesOf(cars, index);
  const single = trait.kind === "list" || trait.kind === "flag";
  return {
    what: whatToDo(space, index),
    trait: trait.id,
    label: trait.label,
    find: trait.find,
    effort: trait.effort,
    options: possible.flatMap(([from, to]) =>
      single
        ? Array.from({ length: to - from + 1 }, (_, i) => valueWords(trait, [[from + i, from + i]]))
        : [valueWords(trait, [[from, to]])],
    ),
  };
}

/** Values as an editor writes them; a run of numbers is one text. */
export function sayValues(trait: Trait, values: Ranges): string[] {
  if (trait.kind === "list" || trait.kind === "flag")
    return values.flatMap(([from, to]) =>
      Array.from({ length: to - from + 1 }, (_, i) => writtenValue(trait, from + i)),
    );
  return values.map(([from, to]) =>
    from === to ? writtenValue(trait, from) : `${writtenValue(trait, from)}..${writtenValue(trait, to)}`,
  );
}

/** The same for people: labels in place of ids, and a series of numbers that is in it whole by its letter. */
export function valueWords(trait: Trait, values: Ranges): string {
  if (trait.kind === "serial") return serialWords(trait, values);
  if (trait.kind !== "list")
    return sayValues(trait, values)
      .map((text) => text.replace("..", " to "))
      .join(" or ");
  return trait.values
    .filter((_, i) => values.some(([from, to]) => from <= i && i <= to))
    .map((value) => value.label)
    .join(" or ");
}

/** "R318204 to R335699, or any number beginning with L". Numbers are counted from 1: without a 0 a series is still whole. */
function serialWords(trait: SerialTrait, values: Ranges): string {
  const single: string[] = [];
  const whole: string[] = [];
  for (const [from, to] of values) {
    // A run of numbers may go on from one letter into the next.
    for (let at = from; at <= to; ) {
      const [first, last] = stretch(trait, at);
      const end = Math.min(to, last);
      if (at <= first + 1 && end === last) whole.push(trait.prefixes[first / 10 ** trait.digits] ?? "");
      else
        single.push(at === end ? writtenValue(trait, at) : `${writtenValue(trait, at)} to ${writtenValue(trait, end)}`);
      at = end + 1;
    }
  }
  if (whole.length === 0) return single.join(" or ");
  const any = whole.length === trait.prefixes.length ? "any number" : `any number beginning with ${whole.join(" or ")}`;
  return single.length === 0 ? any : `${single.join(" or ")}, or ${any}`;
}

export function sayFact(space: Space, fact: Fact): FactView {
  // A part that no scope asks for has no trait; it is named as the others are.
  if (fact.trait === NOT_ASKED)
    return { trait: fact.text.replace("=", " "), values: ["yes"], source: fact.source, text: fact.text };
  const trait = space.trait(fact.trait);
  return { trait: trait.id, values: sayValues(trait, fact.values), source: fact.source, text: fact.text };
}
