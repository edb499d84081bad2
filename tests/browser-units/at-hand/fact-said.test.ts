import { expect, test } from "vitest";
import { factSaid } from "../../../src/browser/at-hand/fact-said.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const { space } = tinyKnowledge().catalog;

// trait, values, where it comes from, as people read it
test.each<[string, string[], "said" | "plate" | "as found", string]>([
  ["line", ["B"], "said", "model line: Badger"],
  ["line", ["B", "H"], "said", "model line: Badger or Heron"],
  ["my", ["1958"], "plate", "model year: 1958 (plate)"],
  ["number", ["0412..9999"], "said", "chassis number: 0412 to 9999"],
  ["PT", ["yes"], "as found", "power take-off: yes (as found)"],
  ["no such trait", ["1"], "said", "no such trait"],
])("%s %j %s", (trait, values, source, words) => {
  expect(factSaid(space, { trait, values, source, text: "" })).toBe(words);
});
