/**
 * The model year of a new record, and whether the day of today can be that of its issue.
 *
 *   named   are the years in the clauses of its scope and in the words that say from when it holds
 *   year    is the one that is learnt from the day of issue, if it is among those named; else the first one that is named
 *   today   is taken for the day of issue only where its model year is next to the years that are named, or to those that the
 *           traits know where none is: else nobody can tell the day, and it is asked for
 */
import type { Catalog } from "../../engine/records/catalog.ts";
import { readScope } from "../../engine/scope/read-scope.ts";
import type { Clause } from "../../engine/scope/scope.ts";
import { span } from "../../engine/scope/trait.ts";
import type { Answers, Field } from "./field.ts";
import { yearFor } from "./known-ids.ts";

/** The fields of a record, with a day and a year that agree with its cars. */
export function withNamedYears(fields: readonly Field[]): Field[] {
  return fields.map((field) => {
    if (field.name === "issued")
      return {
        ...field,
        suggest: ({ catalog, today }, answers) => (isNear(catalog, today, answers) ? today : undefined),
      };
    if (field.name === "year")
      return { ...field, suggest: ({ catalog }, answers) => suggestedYear(catalog, answers)?.toString() };
    return field;
  });
}

/** In the order of years. */
export function namedYears(catalog: Catalog, { scope, starts }: Answers): number[] {
  const { space } = catalog;
  const role = space.role("year");
  if (role === undefined) return [];
  const [first, last] = span(space.trait(role));
  const read = readScope(space, String(scope ?? ""));
  const clauses: Clause[] = "scope" in read ? read.scope.alternatives.flat() : [];
  const inScope = clauses.flatMap((clause) => {
    if (clause.type === "point") return [clause.year];
    return clause.type === "values" && clause.trait === role ? clause.values.flat() : [];
  });
  const inWords = [...String(starts ?? "").matchAll(/\b\d{4}\b/g)].map(Number);
  const within = [...inScope, ...inWords].filter((year) => year >= first && year <= last);
  return [...new Set(within)].sort((a, b) => a - b);
}

export function suggestedYear(catalog: Catalog, answers: Answers): number | undefined {
  const named = namedYears(catalog, answers);
  // Then nothing is written: what is missing is the day, and not the year as well, which is learnt from it.
  if (answers.issued === undefined) return named[0] ?? catalog.years[0];
  const learnt = yearFor(catalog, String(answers.issued));
  return named.includes(learnt) ? learnt : (named[0] ?? learnt);
}

function isNear(catalog: Catalog, today: string, answers: Answers): boolean {
  const role = catalog.space.role("year");
  const named = namedYears(catalog, answers);
  const known = named.length > 0 || role === undefined ? named : span(catalog.space.trait(role));
  const year = yearFor(catalog, today);
  return known.length === 0 || (year >= (known[0] as number) - 1 && year <= (known.at(-1) as number) + 1);
}

/** What was taken for granted, said to whoever did not say it. */
export function saidAssumed(
  answers: Answers,
  asked: { readonly flags: Readonly<Record<string, unknown>>; readonly today: string },
): string {
  const { flags, today } = asked;
  const lines = [];
  if (!flags.issued && answers.issued === today)
    lines.push(`Taken as issued today, ${today}, because no --issued says otherwise.`);
  if (!flags.year && answers.year !== undefined)
    lines.push(`Taken as of model year ${answers.year}; --year says otherwise.`);
  return lines.join("\n");
}
