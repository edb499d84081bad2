import { expect, describe as group, test } from "vitest";
import { describe, list } from "../../../src/engine/scope/describe.ts";
import { readScope } from "../../../src/engine/scope/read-scope.ts";
import { Space } from "../../../src/engine/scope/space.ts";
import { TRACTOR_TRAITS } from "../../helpers/tractor-space.ts";
import { DESCRIPTIONS } from "./describe.cases.ts";

// trait, its words of yes or around a value, its words of no or "not"
const PHRASES: Record<string, [phrase: string, otherwise: string]> = {
  fuel: ["with the {} engine", "without the {} engine"],
  tilt: ["with a seat at {}", "with no seat at {}"],
  built: ["built on {}", "not built on {}"],
  axle: ["with axle {}", "without axle {}"],
  PT: ["with power take-off", "without power take-off"],
  WN: ["with a winch", "without a winch"],
  repainted: ["repainted since", "not repainted"],
};
const space = new Space(
  TRACTOR_TRAITS.map((trait) => {
    const [phrase, otherwise] = PHRASES[trait.id] ?? [trait.phrase, trait.otherwise];
    return { ...trait, phrase, otherwise };
  }),
);

group("a scope in words", () => {
  test.each(DESCRIPTIONS)("%s: %s", (text, words) => {
    const read = readScope(space, text);
    expect("scope" in read ? describe(space, read.scope) : read.slips).toBe(words);
  });
});

// items, word, sentence
const LISTS: [string[], "and" | "or", string][] = [
  [[], "and", ""],
  [["a"], "and", "a"],
  [["a", "b"], "and", "a and b"],
  [["a", "b", "c"], "or", "a, b or c"],
];
test.each(LISTS)("%j with '%s': %s", (items, word, sentence) => {
  expect(list(items, word)).toBe(sentence);
});
