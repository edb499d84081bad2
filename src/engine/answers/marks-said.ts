/** Whether a question speaks of a mark by which the parts of a component are told apart: of its name, or of a value of it. */
import { wordsOf } from "../ask/card.ts";
import { componentWords } from "../ask/rank.ts";
import type { Reading } from "../ask/read-question.ts";
import type { Vocabulary } from "../ask/vocabulary-shape.ts";
import type { Catalog } from "../records/catalog.ts";

/** Words of so many marks' names that they say nothing of one: where it is, and what it is on. */
const COMMON = new Set([
  "of",
  "the",
  "on",
  "in",
  "a",
  "and",
  "or",
  "with",
  "at",
  "to",
  "part",
  "side",
  "end",
  "none",
  "yes",
  "no",
  "left",
  "right",
  "number",
]);

export function saysMark(
  { parts, relatives }: Pick<Catalog, "parts" | "relatives">,
  vocabulary: Vocabulary,
  component: string,
  { rest }: Reading,
): boolean {
  const own = [...parts.values(), ...relatives.values()].filter((part) => part.component === component);
  const names = componentWords(vocabulary, component);
  const marks = new Set(
    wordsOf(
      own.flatMap(({ features, marks: values }) => [
        ...features.map(({ name }) => name),
        ...Object.values(values).map(String),
      ]),
    ),
  );
  return own.length > 1 && wordsOf([rest]).some((word) => marks.has(word) && !names.has(word) && !COMMON.has(word));
}
