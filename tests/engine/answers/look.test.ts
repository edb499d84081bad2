import { expect, test } from "vitest";
import { look, lookAmong, lookAt, sayFact, sayValues, valueWords } from "../../../src/engine/answers/look.ts";
import { readScope } from "../../../src/engine/scope/read-scope.ts";
import type { Trait } from "../../../src/engine/scope/trait.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const { catalog } = tinyKnowledge();
const { space } = catalog;
const cars = (text: string) => {
  const read = readScope(space, text);
  if (!("scope" in read)) throw new Error(text);
  return space.sets.and(catalog.buildable, read.scope.cars);
};
const trait = (id: string) => space.trait(space.find(id) as number);

test("what to look at, where, and what each answer would mean", () => {
  expect(look(space, cars("line=B; my=1959; plant=K"), cars("number>=0412"))).toEqual({
    what: "Look at the chassis number. The frame.",
    trait: "number",
    label: "chassis number",
    find: "the frame",
    effort: 3,
    options: ["0000 to 0411", "0412 to 9999"],
    outcomes: [
      { values: ["0000..0411"], words: "0000 to 0411", verdict: "no", means: "does not apply" },
      { values: ["0412..9999"], words: "0412 to 9999", verdict: "yes", means: "applies" },
    ],
    deciding: ["number"],
  });
});

test("what an answer would mean can be said otherwise", () => {
  const found = look(
    space,
    cars("my=1959"),
    cars("line=B"),
    (left) => `${space.sets.valuesOf(left, space.find("line") as number)}`,
  );
  expect(found?.outcomes.map(({ words, means }) => [words, means])).toEqual([
    ["Badger", "0,0"],
    ["Heron", "1,1"],
  ]);
});

test("values are told apart by the look that tells the first open one, and what is left is said", () => {
  const values = [
    { said: "long", cars: cars("line=B") },
    { said: "short", cars: cars("line=H; plant=K") },
    { said: "none", cars: cars("line=H; plant=D") },
  ];
  const found = lookAmong(space, cars("my=1959"), values, (left) => `it has ${left}`);
  expect(found?.outcomes.map(({ words, means }) => [words, means])).toEqual([
    ["Badger", "it has long"],
    ["Heron", "it has short or none"],
  ]);
  expect(lookAmong(space, cars("line=B"), values)).toBeUndefined();
});

test("nothing is asked where nothing is open", () => {
  expect(look(space, cars("line=B"), cars("line=B"))).toBeUndefined();
  expect(look(space, cars("line=B"), cars("line=H"))).toBeUndefined();
});

test("for a trait by itself, values of a list one by one and numbers as they run", () => {
  expect(lookAt(space, cars("line=H"), space.find("plant") as number).options).toEqual(["Kelby", "Dunmoor"]);
  expect(lookAt(space, cars("my=1957"), space.find("plant") as number).options).toEqual(["Kelby"]);
  expect(lookAt(space, cars("all"), space.find("my") as number).options).toEqual(["1957 to 1961"]);
});

// trait, values, as written, in words
const VALUES: [string, [number, number][], string[], string][] = [
  ["line", [[0, 1]], ["B", "H"], "Badger or Heron"],
  ["PT", [[0, 1]], ["no", "yes"], "no or yes"],
  ["my", [[1958, 1958]], ["1958"], "1958"],
  [
    "my",
    [
      [1957, 1958],
      [1960, 1960],
    ],
    ["1957..1958", "1960"],
    "1957 to 1958 or 1960",
  ],
  ["number", [[7, 12]], ["0007..0012"], "0007 to 0012"],
];
test.each(VALUES)("%s %j", (id, values, written, words) => {
  expect([sayValues(trait(id), values), valueWords(trait(id), values)]).toEqual([written, words]);
});

test("a whole series of serials is said by its letter", () => {
  const serial = { ...trait("number"), kind: "serial", prefixes: ["A", "B", "C"], digits: 4 } as Trait;
  expect(
    valueWords(serial, [
      [1, 9_999],
      [20_000, 20_400],
    ]),
  ).toBe("C0000 to C0400, or any number beginning with A");
  expect(valueWords(serial, [[9_990, 19_999]])).toBe("A9990 to A9999, or any number beginning with B");
  expect(valueWords(serial, [[1, 29_999]])).toBe("any number");
  expect(valueWords(serial, [[7, 7]])).toBe("A0007");
});

test("a fact, as given and as understood", () => {
  const fact = {
    trait: space.find("line") as number,
    values: [[1, 1]] as const,
    source: "said",
    text: "line=heron",
  } as const;
  expect(sayFact(space, fact)).toEqual({ trait: "line", values: ["H"], source: "said", text: "line=heron" });
});
