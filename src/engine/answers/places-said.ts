/**
 * Of several places, those that a question speaks of by side: left or right, front or rear, upper or lower. Where
 * both of two opposite sides are said ("the left one on the right"), none of them decides. "Right" is also a word for what is correct.
 * Where no side is said, or none fits, all places are meant.
 */
import type { Reading } from "../ask/read-question.ts";
import { fold, split } from "../ask/split.ts";

const OPPOSITES: readonly (readonly [string, string])[] = [
  ["left", "right"],
  ["front", "rear"],
  ["upper", "lower"],
];

export function placesSaid(places: readonly string[], { words }: Pick<Reading, "words">): string[] {
  const isSaid = (side: string): boolean => words.some((word, i) => word === side && !isCorrect(words, i));
  const wanted = OPPOSITES.flatMap(([a, b]) => (isSaid(a) === isSaid(b) ? [] : [isSaid(a) ? a : b]));
  return wanted.reduce<string[]>(
    (left, side) => {
      const fitting = left.filter((place) => split(place).map(fold).includes(side));
      return fitting.length > 0 ? fitting : left;
    },
    [...places],
  );
}

/** "Which is right", "the right part", "all right". */
function isCorrect(words: readonly string[], at: number): boolean {
  if (words[at] !== "right") return false;
  const [before, next] = [words[at - 1] ?? "", words[at + 1] ?? ""];
  return ["is", "are", "all", "which", "look"].includes(before) || ["part", "number", "for", "to"].includes(next);
}
