/** Traits, values and verdicts in the words that people read. */

import { NOT_ON_RECORD } from "../../../engine/answers/compare-years.ts";
import { valueWords } from "../../../engine/answers/look.ts";
import type { FactView, Look } from "../../../engine/answers/shapes/look.ts";
import type { ValueView } from "../../../engine/answers/shapes/net-change.ts";
import type { Catalog } from "../../../engine/records/catalog.ts";
import { type Fact, NOT_ASKED } from "../../../engine/scope/facts.ts";
import type { Space } from "../../../engine/scope/space.ts";
import { numberOf, type Trait } from "../../../engine/scope/trait.ts";
import type { Step } from "../state.ts";

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

export function factWords(space: Space, fact: Fact): string {
  // A part that no scope asks for has no trait.
  if (fact.trait === NOT_ASKED) return `Fitted today: ${fact.text.replace(/^.*?=/, "")}`;
  const trait = space.trait(fact.trait);
  const found = fact.source === "as found" ? ", as found" : fact.source === "plate" ? ", from the plate" : "";
  return `${capital(trait.label)}: ${valueWords(trait, fact.values)}${found}`;
}

/** A step as the list of what is known shows it. */
export function stepWords(space: Space, step: Step, facts: readonly Fact[]): string {
  if (step.kind === "plate") return `Plate ${step.value}`;
  if (step.kind === "fitted") return `Fitted today: ${step.value}`;
  const index = space.find(step.trait);
  const label = index === undefined ? step.trait : capital(space.trait(index).label);
  if (step.kind === "skip") return `${label}: not known`;
  const source = step.kind === "found" ? "as found" : "said";
  const fact = facts.find((one) => one.trait === index && one.source === source);
  return fact ? factWords(space, fact) : `${label}: ${step.value}`;
}

/** A car in a few words: "Linnet · 1958 · front disc brakes: yes". A yes, a number or a part says nothing without its name. */
export function carWords(space: Space, facts: readonly Fact[]): string {
  return facts
    .map((fact) => {
      const words = factWords(space, { ...fact, source: "said" });
      const kind = fact.trait === NOT_ASKED ? undefined : space.trait(fact.trait);
      return kind?.kind === "list" || kind?.role === "year" ? words.replace(/^.*?: /, "") : words;
    })
    .join(" · ");
}

export function labelOf(space: Space, id: string): string {
  const index = space.find(id);
  return index === undefined ? id : space.trait(index).label;
}

/** "front disc brakes: applies; drums: does not apply". */
export function outcomeWords(look: Look): string {
  return look.outcomes.map(({ words, means }) => `${words}: ${means}`).join("; ");
}

/** What to type for a trait that is a number or a date. */
export function domainWords(trait: Trait, from: string, to: string): string {
  return trait.kind === "date" ? `A date from ${from} to ${to}, as ${from}.` : `From ${from} to ${to}.`;
}

/** A fact of an answer by the names of its trait and values, never as it is written in a question. */
export function factViewWords(space: Space, { trait: id, values, source }: FactView): string {
  const index = space.find(id);
  const from = source === "said" ? "" : source === "plate" ? " (from the plate)" : " (as found)";
  if (index === undefined) return `${capital(id)}${from}`;
  const trait = space.trait(index);
  const numbers = values.map((text) => text.split("..").map((end) => numberOf(trait, end) ?? Number.NaN));
  const words = valueWords(
    trait,
    numbers.map(([first, last]) => [first as number, (last ?? first) as number] as const),
  );
  return `${trait.label}: ${words}${from}`;
}

/** When an open record applies, as short as can be: "if 236 six; perhaps if 294 V8". Nothing where yes means that it does. */
export function shortOutcome({ outcomes }: Look): string {
  if (outcomes.every(({ values, verdict }) => values.length === 1 && values[0] === verdict)) return "";
  const ways = [
    ["yes", "if"],
    ["look first", "perhaps if"],
  ] as const;
  return ways
    .map(([wanted, word]) => [word, outcomes.filter(({ verdict }) => verdict === wanted)] as const)
    .filter(([, its]) => its.length > 0)
    .map(([word, its]) => `${word} ${its.map(({ words }) => words).join(" or ")}`)
    .join("; ");
}

/**
 * The values of a matter; the name of a part is left out where the matter is called the same. That the records say nothing for
 * some of the cars that this can be is said in few words, as it is so of most matters while little is known.
 */
export function valuesWords(catalog: Catalog, matter: string, values: readonly ValueView[]): string {
  const stated = values.filter(({ value }) => value !== NOT_ON_RECORD);
  const onSome = stated.length > 0 && stated.length < values.length ? ", on some" : "";
  const words = (stated.length > 0 ? stated : values).map(({ value, asFound }) => {
    const name = catalog.parts.get(value)?.name;
    const said = name === undefined || name === matter ? value : `${value} ${name}`;
    return asFound ? `${said}, as found` : said;
  });
  return `${words.join(" or ")}${onSome}`;
}
