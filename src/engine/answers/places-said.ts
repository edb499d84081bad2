/**
 * Of several places, those that a question speaks of by side: left or right, front or rear, upper or lower. Of two opposite
 * sides the one said last is meant: "the left one on the right". Where no side is said, or none fits, all of them are.
 */
import type { Reading } from "../ask/read-question.ts";
import { fold, split } from "../ask/split.ts";

const OPPOSITES: readonly (readonly [string, string])[] = [
  ["left", "right"],
  ["front", "rear"],
  ["upper", "lower"],
];

export function placesSaid(places: readonly string[], { words }: Pick<Reading, "words">): string[] {
  const wanted = OPPOSITES.flatMap(([a, b]) => {
    const [at, other] = [words.lastIndexOf(a), words.lastIndexOf(b)];
    return at < 0 && other < 0 ? [] : [at > other ? a : b];
  });
  return wanted.reduce<string[]>(
    (left, side) => {
      const fitting = left.filter((place) => split(place).map(fold).includes(side));
      return fitting.length > 0 ? fitting : left;
    },
    [...places],
  );
}
