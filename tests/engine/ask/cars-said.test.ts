import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { carsSaid, type Said, traitSaid } from "../../../src/engine/ask/cars-said.ts";
import { DENYING, DENYING_BEFORE } from "../../../src/engine/ask/little-words.ts";
import { readQuestion } from "../../../src/engine/ask/read-question.ts";
import { fold } from "../../../src/engine/ask/split.ts";
import { SEED } from "../../helpers/seed.ts";
import { TRACTOR_NUMBERS, TRACTOR_WORDS } from "../../helpers/tractor-words.ts";
import { IN_DOUBT, NO_DOUBT, NOT_YET, ONE_CAR, TWO_CARS, UNCLEAR } from "./cars-said.cases.ts";

const said = (question: string) => carsSaid(readQuestion(TRACTOR_WORDS, question, TRACTOR_NUMBERS));
const plain = (facts: readonly Said[]): string[] =>
  facts.map(({ ids, denied }) => {
    const names = ids.map((id) => id.replace(/^19/, "").replace(/=yes$/, "").replace(/^\w+=/, ""));
    return `${denied ? "not " : ""}${names.join(" or ")}`;
  });

describe("of one tractor", () => {
  test.each(ONE_CAR)("%s", (question, car) => {
    const { car: is, donor, unclear } = said(question);
    expect([plain(is), plain(donor), unclear]).toEqual([car, [], false]);
  });
});

describe("of two", () => {
  test.each(TWO_CARS)("%s", (question, car, donor) => {
    const { car: is, donor: from, unclear } = said(question);
    expect([plain(is), plain(from), unclear]).toEqual([car, donor, false]);
  });

  test.each(UNCLEAR)("%s: it is unclear which", (question, either) => {
    const { car, donor, unclear } = said(question);
    expect([plain(car), plain(donor), unclear]).toEqual([either, [], true]);
  });
});

describe("in doubt, and so not taken for said", () => {
  test.each(IN_DOUBT)("%s", (question, left) => {
    const { car, donor, murky } = said(question);
    expect([plain(car), plain(donor), murky]).toEqual([left, [], true]);
  });

  test.each(NO_DOUBT)("but not: %s", (question, car) => {
    expect(plain(said(question).car)).toEqual(car);
  });
});

// question, some word of it was not read and is not known to be harmless, or both of two sides are named
const MURKY: [question: string, murky: boolean][] = [
  ["", false],
  ["57 Badger pump", false],
  ["can I put the pump of a 57 on it", false],
  ["57 Badger pump, spring broken", true],
  ["the 57 used to have a pto", true],
  ["HT-101 for left and right", true],
  ["pump of a 57, at 59 psi", false], // a figure was read
  ["57 broken pump", false], // what stands before a thing describes it
  ["57 broken, pump", true], // but not before a comma
];
test.each(MURKY)("'%s' is murky: %s", (question, murky) => {
  expect(said(question).murky).toBe(murky);
});

// question, what was known of the tractor before need not hold, why
const LOST: [question: string, lost: boolean, why: string][] = [
  ["", false, "nothing is said"],
  ["57 Badger pump", false, "all is said of it"],
  ["Badger without pto", false, "a fact is denied"],
  ["57 pump does not fit", false, "a way to ask is denied"],
  ["pump without grease", true, "what is denied is no fact"],
  ["not the pump", true, "what is denied is no fact"],
  ["winch removed", true, "something is denied that stands before"],
  ["pump on a plough", true, "a tractor that the records do not know"],
  ["will the pump fit another plough", true, "another one"],
  ["pump on a Badger", false, "a tractor that they know"],
  ["57 pump on a 61", false, "two that they know"],
  ["pump and a plough", false, "nothing is put on it"],
];
test.each(LOST)("'%s' leaves in doubt which tractor it is: %s, for %s", (question, lost) => {
  expect(said(question).lost).toBe(lost);
});

describe("not read rightly yet", () => {
  test.fails.each(NOT_YET)("%s: $2", (question, car) => {
    expect(plain(said(question).car)).toEqual(car);
  });
});

test("what stands before the part, or after off, is said of where it comes from", () => {
  expect(said("57 pump").ofPart).toBe(true);
  expect(said("pump off a 57").ofPart).toBe(true);
  expect(said("pump of the 57").ofPart).toBe(true);
  expect(said("57, pump").ofPart).toBe(false); // a comma parts them
  expect(said("for 57 pump").ofPart).toBe(false);
  expect(said("pump for a 57").ofPart).toBe(false);
  expect(said("57 Badger").ofPart).toBe(false);
});

test("a fact is said of its trait; line and year are traits, too", () => {
  expect(traitSaid({ kind: "trait", ids: ["fuel=diesel", "fuel=tvo"] })).toBe("fuel");
  expect(traitSaid({ kind: "year", ids: ["1957"] })).toBe("year");
  expect(traitSaid({ kind: "line", ids: ["B"] })).toBe("line");
});

describe("of any question", () => {
  const tables = [ONE_CAR, TWO_CARS, UNCLEAR, IN_DOUBT, NO_DOUBT];
  const words = tables.flatMap((rows) => rows.flatMap(([question]) => question.split(" "))).filter(Boolean);
  const question = fc.array(fc.constantFrom(...words), { maxLength: 12 }).map((some) => some.join(" "));
  const options = { seed: SEED, numRuns: 600 };

  test("nothing is said of a tractor that no chip says, and nothing twice", () => {
    fc.assert(
      fc.property(question, (text) => {
        const reading = readQuestion(TRACTOR_WORDS, text, TRACTOR_NUMBERS);
        const { car, donor, unclear, murky } = carsSaid(reading);
        const chips = reading.chips.filter(({ kind }) => kind === "line" || kind === "year" || kind === "trait");
        const keys = chips.map(({ kind, ids }) => `${kind} ${ids}`);
        const taken = [...car, ...donor].map(({ kind, ids }) => `${kind} ${ids}`);
        for (const key of taken) {
          expect(keys).toContain(key);
          keys.splice(keys.indexOf(key), 1);
        }
        expect(murky || keys.length === 0).toBe(true);
        if (unclear) expect(donor).toEqual([]);
      }),
      options,
    );
  });

  test("without a denying word nothing is denied", () => {
    const denies = (word: string): boolean => {
      const plain = fold(word.replace(",", ""));
      return DENYING.has(plain) || DENYING_BEFORE.has(plain) || plain === "shaftless";
    };
    const affirmed = fc
      .array(fc.constantFrom(...words.filter((word) => !denies(word))), { maxLength: 12 })
      .map((some) => some.join(" "));
    fc.assert(
      fc.property(affirmed, (text) => {
        const { car, donor } = said(text);
        expect([...car, ...donor].filter(({ denied }) => denied)).toEqual([]);
      }),
      options,
    );
  });

  test("a word that denies what stands before it leaves nothing for certain, wherever it stands", () => {
    const parts = fc.array(fc.constantFrom(...words), { maxLength: 8 }).map((some) => some.join(" "));
    fc.assert(
      fc.property(parts, fc.constantFrom(...DENYING_BEFORE), parts, (before, denying, after) => {
        const reading = readQuestion(TRACTOR_WORDS, `${before} ${denying} ${after}`, TRACTOR_NUMBERS);
        const { car, donor, murky } = carsSaid(reading);
        expect([car, donor]).toEqual([[], []]);
        const isOfCar = reading.chips.some(({ kind }) => ["line", "year", "trait"].includes(kind));
        expect(murky || !isOfCar).toBe(true);
      }),
      options,
    );
  });

  test("'without' before what a tractor has turns it round, whatever stands before", () => {
    const before = fc.constantFrom("pump of a Badger", "57 Heron", "", "oil seal for a 59", "which pump");
    fc.assert(
      fc.property(before, fc.constantFrom("pto", "winch", "power take-off"), (start, has) => {
        const last = (question: string) => plain(said(question).car).at(-1);
        expect(last(`${start} without ${has}`)).toBe(`not ${last(`${start} with ${has}`)}`);
      }),
      options,
    );
  });
});
