/** Facts and outcomes in the words that people read. */
import { expect, test } from "vitest";
import { factViewWords, shortOutcome } from "../../../src/browser/car/view/words.ts";
import type { FactView, Look } from "../../../src/engine/answers/shapes/look.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const { space } = tinyKnowledge().catalog;
const said = (trait: string, ...values: string[]): FactView => ({ trait, values, source: "said", text: `${trait}=?` });

// the fact of an answer, what people read
const FACTS: [FactView, string][] = [
  [said("my", "1959"), "model year: 1959"],
  [said("line", "B", "H"), "model line: Badger or Heron"],
  [said("number", "0007..0012"), "chassis number: 0007 to 0012"],
  [{ ...said("PT", "yes"), source: "plate" }, "power take-off: yes (from the plate)"],
  [{ ...said("fitted HT-999", "yes"), source: "as found" }, "Fitted HT-999 (as found)"],
];
test.each(FACTS)("%j", (fact, words) => {
  expect(factViewWords(space, fact)).toBe(words);
});

test("only the outcomes with which a record applies, or may, are said on paper", () => {
  const outcome = (words: string, verdict: "yes" | "no" | "look first") => ({
    values: [words],
    words,
    verdict,
    means: "",
  });
  const look = (...outcomes: Look["outcomes"]): Look => ({ outcomes }) as unknown as Look;
  expect(shortOutcome(look(outcome("four", "no"), outcome("six", "yes")))).toBe("if six");
  expect(shortOutcome(look(outcome("four", "look first"), outcome("six", "yes")))).toBe("if six; perhaps if four");
  expect(shortOutcome(look(outcome("yes", "yes"), outcome("no", "no")))).toBe("");
});
