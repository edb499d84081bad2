import { describe, expect, test } from "vitest";
import { askIndexOf, recordsWith, textsOf, vocabularyFor } from "../../../src/engine/answers/ask-index.ts";
import { findNumber, plainNumber } from "../../../src/engine/ask/numbers.ts";
import { vocabularyShape } from "../../../src/engine/ask/vocabulary-shape.ts";
import { askedKnowledge } from "../../helpers/tiny-asked.ts";

const { catalog } = askedKnowledge();
const index = askIndexOf(catalog);

describe("what questions are read and ranked with", () => {
  test("is made of a catalog once, and of another one anew", () => {
    expect(askIndexOf(catalog)).toBe(index);
    const other = askIndexOf(askedKnowledge().catalog);
    expect(other).not.toBe(index);
    expect(other).toEqual(index);
  });

  test("the vocabulary has the shape that is published, and is the same without cards", () => {
    expect(vocabularyShape.parse(JSON.parse(JSON.stringify(index.vocabulary)))).toEqual(index.vocabulary);
    expect(vocabularyFor(catalog)).toEqual(index.vocabulary);
  });

  test("it counts in how many records each word stands, without numbers, in the order of the alphabet", () => {
    const { words } = index.vocabulary;
    expect(words).toMatchObject({ wider: 1, longer: 1 });
    expect(Object.keys(words).filter((word) => /\d/.test(word))).toEqual([]);
    expect(Object.keys(words)).toEqual(Object.keys(words).toSorted());
  });

  test("it knows the units of all quantities, and those that only the records use", () => {
    expect(index.vocabulary.units).toEqual(expect.arrayContaining(["bar", "mm", "N·m"]));
    expect(new Set(index.vocabulary.units).size).toBe(index.vocabulary.units.length);
  });

  test("every part, record and bulletin is found by its number, however it is written", () => {
    const found = (text: string): string[] => findNumber(index.numbers, plainNumber(text)).map(({ id }) => id);
    for (const id of [...catalog.parts.keys(), ...catalog.records.keys(), ...catalog.bulletins.keys()])
      expect([id, found(id), found(id.toLowerCase().replaceAll("-", " "))]).toEqual([id, [id], [id]]);
    expect(found("4411")).toEqual(["HT-102"]); // a casting number
  });

  test("there is a card for each record and bulletin, and a text for each card", () => {
    const all = [...catalog.records.keys(), ...catalog.bulletins.keys()].sort();
    expect(index.cards.map(({ id }) => id).sort()).toEqual(all);
    expect(textsOf(catalog)).toHaveLength(all.length);
  });
});

describe("the records that hold a word", () => {
  const held = (word: string): string[] => [...recordsWith(index, word)].sort();
  // word, addresses of the records and bulletins whose text holds it
  const CASES: [string, string[]][] = [
    ["wider", ["/records/FR60-01/"]],
    ["Wider", ["/records/FR60-01/"]],
    ["bends", ["/records/FR60-01/"]],
    ["bending", ["/records/FR60-01/"]], // another form of the word
    ["zeppelin", []],
    ["", []],
  ];
  test.each(CASES)("%j", (word, addresses) => {
    expect(held(word)).toEqual(addresses);
  });
});
