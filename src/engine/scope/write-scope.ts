/**
 * A set of cars as the text of a scope: read again, the text gives the same set. Each way through the diagram that ends at "every
 * car" is an alternative; values that go on alike are one clause.
 */
import { ALL, type CarSet, isBranch, NONE } from "./diagram.ts";
import type { Ranges } from "./ranges.ts";
import { FITTED, type Space } from "./space.ts";
import { span, stretch, type Trait, writtenValue } from "./trait.ts";

/** The text; nothing where it would have more than `most` alternatives. */
export function writeScope(space: Space, set: CarSet, most: number): string | undefined {
  if (set === ALL) return "all";
  if (set === NONE) return noCar(space.trait(0));
  const alternatives: string[] = [];
  const walk = (at: CarSet, clauses: readonly string[]): void => {
    if (at === NONE || alternatives.length > most) return;
    if (!isBranch(at)) {
      alternatives.push(clauses.join("; "));
      return;
    }
    for (const [values, next] of space.sets.pieces(at))
      for (const clause of clausesFor(space.trait(at.trait), values)) walk(next, [...clauses, clause]);
  };
  walk(set, []);
  return alternatives.length > most ? undefined : alternatives.join(" || ");
}

/** One clause for any of some values, or, where the language has none for it, several of which one must hold. */
function clausesFor(trait: Trait, values: Ranges): string[] {
  if (trait.kind === "list") {
    const ids = values.flatMap(([from, to]) =>
      Array.from({ length: to - from + 1 }, (_, i) => writtenValue(trait, from + i)),
    );
    return [`${trait.id}=${ids.join(",")}`];
  }
  if (trait.kind === "flag") {
    const has = values[0]?.[0] === 1;
    if (trait.id.startsWith(`${FITTED} `))
      return [`${FITTED}${has ? "=" : "!="}${trait.id.slice(`${FITTED} `.length)}`];
    return [`${trait.id}=${has ? "yes" : "no"}`];
  }
  return values.flatMap((range) => stretches(trait, range)).map(([from, to]) => rangeClause(trait, from, to));
}

/** A range of serials cut where the letter changes: the language has no range across letters. */
function stretches(trait: Trait, [from, to]: readonly [number, number]): [number, number][] {
  const cut: [number, number][] = [];
  for (let start = from; start <= to; ) {
    const end = Math.min(to, stretch(trait, start)[1]);
    cut.push([start, end]);
    start = end + 1;
  }
  return cut;
}

function rangeClause(trait: Trait, from: number, to: number): string {
  const [first, last] = [writtenValue(trait, from), writtenValue(trait, to)];
  if (from === to) return `${trait.id}=${first}`;
  // The dashes of a date would run into that of a range.
  return trait.kind === "date" ? `${trait.id}>=${first}; ${trait.id}<=${last}` : `${trait.id}=${first}-${last}`;
}

/** None of all the values of a trait. */
function noCar(trait: Trait): string {
  if (trait.kind === "list") return `${trait.id}!=${trait.values.map((value) => value.id).join(",")}`;
  return `${trait.id}>${writtenValue(trait, span(trait)[1])}`;
}
