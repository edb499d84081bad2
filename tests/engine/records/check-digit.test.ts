import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { checkDigit } from "../../../src/engine/records/check-digit.ts";
import { SEED } from "../../helpers/seed.ts";

// Source: 49 CFR 565.15(c), table III (what each character counts) and table IV (the weight of each place), written out by hand.
const COUNTS: Readonly<Record<string, number>> = {
  "0": 0,
  "1": 1,
  "2": 2,
  "3": 3,
  "4": 4,
  "5": 5,
  "6": 6,
  "7": 7,
  "8": 8,
  "9": 9,
  A: 1,
  B: 2,
  C: 3,
  D: 4,
  E: 5,
  F: 6,
  G: 7,
  H: 8,
  J: 1,
  K: 2,
  L: 3,
  M: 4,
  N: 5,
  P: 7,
  R: 9,
  S: 2,
  T: 3,
  U: 4,
  V: 5,
  W: 6,
  X: 7,
  Y: 8,
  Z: 9,
};
// place: 1  2  3  4  5  6  7   8  9 10 11 12 13 14 15 16 17
const WEIGHTS = [8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2];
const CHARACTERS = Object.keys(COUNTS);

/** One character among sixteen that count nothing: what stands in the ninth place is its count times its weight, divided by 11. */
function alone(character: string, place: number): string {
  return "0".repeat(place) + character + "0".repeat(16 - place);
}

describe("the check digit of a vehicle identification number", () => {
  test("each character counts what the table says, in each place as much as its weight", () => {
    const found = CHARACTERS.flatMap((character) =>
      WEIGHTS.map((_, place) => `${character} in place ${place + 1}: ${checkDigit(alone(character, place))}`),
    );
    const printed = CHARACTERS.flatMap((character) =>
      WEIGHTS.map((weight, place) => {
        const remainder = ((COUNTS[character] as number) * weight) % 11;
        return `${character} in place ${place + 1}: ${remainder === 10 ? "X" : remainder}`;
      }),
    );
    expect(found).toEqual(printed);
  });

  // The products of the regulation's own sample. The number is invented so that its characters give the same ones.
  test("is 4 for products of 8, 49, 24, 5, 32, 15, 18, 80, 0, 45, 56, 7, 6, 40, 12, 12 and 2, which make 411", () => {
    const number = "APU1H59H45G118341";
    const products = [...number].map((character, i) => (COUNTS[character] as number) * (WEIGHTS[i] as number));
    expect(products).toEqual([8, 49, 24, 5, 32, 15, 18, 80, 0, 45, 56, 7, 6, 40, 12, 12, 2]);
    expect(products.reduce((a, b) => a + b)).toBe(411);
    expect(checkDigit(number)).toBe("4");
  });

  // number, its check digit
  test.each([
    ["11111111111111111", "1"],
    ["00000000000000000", "0"],
    // 5 times 2 leaves 10, which is written X.
    ["00000000000000005", "X"],
    ["apu1h59h45g118341", "4"],
  ])("of %s is %s", (number, digit) => {
    expect(checkDigit(number)).toBe(digit);
  });

  // number, why it has none
  test.each([
    ["", "it is empty"],
    ["1111111111111111", "a character is missing"],
    ["111111111111111111", "there is a character too many"],
    ["1111111I111111111", "I is not used"],
    ["1111111O111111111", "O is not used"],
    ["1111111Q111111111", "Q is not used"],
    ["1111111 111111111", "a space counts nothing"],
    ["1111111Ä111111111", "a letter is none of the 33"],
  ])("there is none for '%s': %s", (number) => {
    expect(checkDigit(number)).toBeUndefined();
  });

  test("finds every single misread character that counts differently, whatever the place, and no other", () => {
    const places = WEIGHTS.flatMap((_, place) => (place === 8 ? [] : [place]));
    let slips = 0;
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...CHARACTERS), { minLength: 17, maxLength: 17 }), (characters) => {
        const right = checkDigit(characters.join(""));
        for (const place of places)
          for (const other of CHARACTERS) {
            if (other === characters[place]) continue;
            slips++;
            const same = COUNTS[other] === COUNTS[characters[place] as string];
            expect(checkDigit(characters.with(place, other).join("")) === right).toBe(same);
          }
      }),
      { seed: SEED, numRuns: 40 },
    );
    expect(slips).toBe(40 * 16 * 32);
  });

  test("does not depend on what stands in its own place", () => {
    const digits = CHARACTERS.map((character) => checkDigit([..."APU1H59H45G118341"].with(8, character).join("")));
    expect(new Set(digits)).toEqual(new Set(["4"]));
  });
});
