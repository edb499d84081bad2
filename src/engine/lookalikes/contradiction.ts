/**
 * "Nothing fits: what contradicts what?"
 *
 *   Some observations contradict each other if no part fits all of them. The smallest set that does is named; of several the one
 *   whose observations came first. Beside it, for each observation that rules out a part, what would be possible without it.
 */
import type { MarkTable } from "./mark-table.ts";
import { type Observation, possibleParts } from "./possible-parts.ts";

export interface Contradiction {
  readonly smallest: readonly Observation[];
  readonly without: readonly { readonly observation: Observation; readonly leaves: readonly string[] }[];
}

/** Nothing where some part fits all that was seen. */
export function contradiction(table: MarkTable, observations: readonly Observation[]): Contradiction | undefined {
  if (table.parts.length === 0 || possibleParts(table, observations).length > 0) return undefined;
  const telling = observations.filter((it) => possibleParts(table, [it]).length < table.parts.length);
  for (let size = 1; ; size++)
    for (const some of choices(telling, size))
      if (possibleParts(table, some).length === 0)
        return {
          smallest: some,
          without: telling.map((observation) => ({
            observation,
            leaves: possibleParts(
              table,
              telling.filter((it) => it !== observation),
            ).map((part) => part.number),
          })),
        };
}

/** Every choice of so many, in the order of the list. */
function* choices<T>(list: readonly T[], size: number): Generator<T[]> {
  if (size === 0) yield [];
  for (let i = 0; size > 0 && i <= list.length - size; i++)
    for (const rest of choices(list.slice(i + 1), size - 1)) yield [list[i] as T, ...rest];
}
