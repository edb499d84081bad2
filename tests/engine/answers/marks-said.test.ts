import { describe, expect, test } from "vitest";
import { askIndexOf } from "../../../src/engine/answers/ask-index.ts";
import { saysMark } from "../../../src/engine/answers/marks-said.ts";
import { type Reading, readQuestion } from "../../../src/engine/ask/read-question.ts";
import { askedKnowledge } from "../../helpers/tiny-asked.ts";

const { catalog } = askedKnowledge();
const { vocabulary } = askIndexOf(catalog);
const nothing = readQuestion(vocabulary, "");
const says = (component: string, rest: string): boolean =>
  saysMark(catalog, vocabulary, component, { ...nothing, rest });

describe("a question speaks of a mark", () => {
  // component, words that nothing else was read from, whether they name a mark
  const CASES: [string, string, boolean][] = [
    ["step", "holes", true],
    ["step", "five", true], // a value of the mark
    ["step", "three holes tread", true],
    ["step", "hole", true],
    ["step", "rusty", false],
    ["step", "", false],
    ["step", "step", false], // the name of the thing itself
    ["step", "footboard", false],
    ["step", "in the", false], // words that stand in the names of most marks
    ["step", "left", false],
    ["pump", "ribs", true],
    ["pump", "two", true],
    ["pump", "none", false],
    ["pump", "holes", false], // the mark of another component
    ["gasket", "ribs", false], // its parts have no marks
    ["lift", "ribs", false], // it has no parts
    ["zeppelin", "ribs", false],
  ];
  test.each(CASES)("%s: %s", (component, rest, isSaid) => {
    expect(says(component, rest)).toBe(isSaid);
  });

  test("only what is left of the question counts", () => {
    const reading: Reading = { ...nothing, words: ["holes"], rest: "" };
    expect(saysMark(catalog, vocabulary, "step", reading)).toBe(false);
  });

  test("a single part is told from nothing", () => {
    const [one] = [...catalog.parts.values()].filter(({ component }) => component === "step");
    const alone = { ...catalog, parts: new Map(one ? [[one.number, one]] : []), relatives: new Map() };
    expect(saysMark(alone, vocabulary, "step", { ...nothing, rest: "holes" })).toBe(false);
  });
});
