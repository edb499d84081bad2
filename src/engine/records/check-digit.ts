/**
 * The check digit of a 17-character vehicle identification number.
 * Source: 49 CFR 565.15(c), tables III to V: each character has a value, each place a weight; the sum of the products is
 * divided by 11, and the remainder, 10 written as X, must stand in the ninth place.
 */
const VALUES: Readonly<Record<string, number>> = {
  ...Object.fromEntries([..."0123456789"].map((digit) => [digit, Number(digit)])),
  ...Object.fromEntries([..."ABCDEFGH"].map((letter, i) => [letter, i + 1])),
  ...Object.fromEntries([..."JKLMN"].map((letter, i) => [letter, i + 1])),
  P: 7,
  R: 9,
  ...Object.fromEntries([..."STUVWXYZ"].map((letter, i) => [letter, i + 2])),
};
const WEIGHTS = [8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2];

/** The digit that belongs in the ninth place; nothing when the number is not 17 of the characters allowed. */
export function checkDigit(number: string): string | undefined {
  const characters = [...number.toUpperCase()];
  if (characters.length !== WEIGHTS.length) return undefined;
  let sum = 0;
  for (const [i, character] of characters.entries()) {
    const value = VALUES[character];
    if (value === undefined) return undefined;
    sum += value * (WEIGHTS[i] as number);
  }
  const remainder = sum % 11;
  return remainder === 10 ? "X" : String(remainder);
}
