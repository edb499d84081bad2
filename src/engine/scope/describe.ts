/**
 * A scope in plain words: "Alder and Birch from 1974, with front disc brakes; or Cedar of 1975".
 *
 * The words follow what the editor wrote, alternative by alternative. Of each alternative the model lines come first,
 * then the years, then the points in a plant's production, then all other traits in the order in which people ask for them.
 */
import { includes, outside, type Ranges } from "./ranges.ts";
import type { Alternative, FlagsClause, PointClause, Scope, ValuesClause } from "./scope.ts";
import type { Space } from "./space.ts";
import { span, type Trait, writtenValue } from "./trait.ts";

export function describe(space: Space, scope: Scope): string {
  return scope.alternatives.map((alternative) => describeAlternative(space, alternative)).join("; or ");
}

function describeAlternative(space: Space, alternative: Alternative): string {
  if (alternative.length === 0) return "every car";
  const line = space.role("line");
  const year = space.role("year");
  const values = alternative.filter((clause) => clause.type === "values");
  // "After the last year" is a scope without any car, and there is no year to name.
  if (values.some((clause) => clause.values.length === 0)) return "no car";
  const lines = values.filter((clause) => clause.trait === line).map((clause) => lineWords(space, clause));
  const years = values.filter((clause) => clause.trait === year).map((clause) => yearWords(clause));
  const points = alternative.filter((clause) => clause.type === "point").map((clause) => pointWords(space, clause));
  const others = [
    ...values.filter((clause) => clause.trait !== line && clause.trait !== year),
    ...alternative.filter((clause) => clause.type === "flags"),
  ]
    .sort((a, b) => firstTrait(a) - firstTrait(b))
    .map((clause) => (clause.type === "flags" ? flagWords(space, clause) : valueWords(space, clause)));
  const subject = [lines.length > 0 ? lines.join(", ") : "cars", ...years].join(" ");
  // "cars with the big engine" is one breath; "Alder from 1973, with the big engine" is two.
  const rest = [...points, ...others].join(", ");
  return [subject, rest].filter(Boolean).join(subject === "cars" ? " " : ", ");
}

function firstTrait(clause: ValuesClause | FlagsClause): number {
  return clause.type === "values" ? clause.trait : (clause.traits[0] ?? 0);
}

function lineWords(space: Space, clause: ValuesClause): string {
  const trait = space.trait(clause.trait);
  if (clause.written === "none of")
    return `all except ${list(labels(trait, outside(clause.values, span(trait))), "and")}`;
  return list(labels(trait, clause.values), "and");
}

function yearWords({ values, written }: ValuesClause): string {
  const first = values[0]?.[0] ?? 0;
  const last = values.at(-1)?.[1] ?? 0;
  if (written === "from" || written === "after") return `from ${first}`;
  if (written === "up to" || written === "before") return `up to ${last}`;
  const years = values.flatMap(([from, to]) =>
    to - from < 2 ? [...new Set([`${from}`, `${to}`])] : `${from} to ${to}`,
  );
  return `of ${list(years, "and")}`;
}

function pointWords(space: Space, point: PointClause): string {
  const plant = label(space, "plant", point.plant);
  const trait = space.trait(space.role(point.by) as number);
  const at = writtenValue(trait, point.at);
  const words = point.by === "sequence" ? `number ${at} of ${point.year}` : `${at} (model year ${point.year})`;
  return point.side === "from" ? `built at ${plant} from ${words} on` : `built at ${plant} before ${words}`;
}

function flagWords(space: Space, { side, traits }: FlagsClause): string {
  const phrases = traits
    .map((index) => space.trait(index))
    .map((trait) => (side === "any" ? trait.phrase : trait.otherwise));
  return list(phrases, side === "any" ? "or" : "and");
}

function valueWords(space: Space, { trait: index, values, written }: ValuesClause): string {
  const trait = space.trait(index);
  if (trait.kind === "flag")
    return list(
      [includes(values, 1) ? trait.phrase : "", includes(values, 0) ? trait.otherwise : ""].filter(Boolean),
      "or",
    );
  if (written === "none of")
    return trait.otherwise.replace("{}", list(labels(trait, outside(values, span(trait))), "or"));
  const first = values[0]?.[0] ?? 0;
  const last = values.at(-1)?.[1] ?? 0;
  const bound = {
    from: `${writtenValue(trait, first)} or later`,
    after: `after ${writtenValue(trait, first - 1)}`,
    "up to": `${writtenValue(trait, last)} or earlier`,
    before: `before ${writtenValue(trait, last + 1)}`,
  };
  if (written !== "one of") return trait.phrase.replace("{}", bound[written]);
  return trait.phrase.replace("{}", list(labels(trait, values), "or"));
}

function labels(trait: Trait, values: Ranges): string[] {
  if (trait.kind !== "list")
    return values.map(([from, to]) =>
      from === to ? writtenValue(trait, from) : `${writtenValue(trait, from)} to ${writtenValue(trait, to)}`,
    );
  return trait.values.filter((_, i) => values.some(([from, to]) => from <= i && i <= to)).map((value) => value.label);
}

function label(space: Space, role: "plant", number: number): string {
  const trait = space.trait(space.role(role) as number);
  return trait.kind === "list" ? (trait.values[number]?.label ?? "") : writtenValue(trait, number);
}

/** "a", "a and b", "a, b and c". */
export function list(items: readonly string[], word: "and" | "or"): string {
  if (items.length < 2) return items.join("");
  return `${items.slice(0, -1).join(", ")} ${word} ${items.at(-1)}`;
}
