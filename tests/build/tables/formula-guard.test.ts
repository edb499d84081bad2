/** Outside: OWASP, "CSV Injection" (owasp.org/www-community/attacks/CSV_Injection): the signs that may begin a formula. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { guard, unguard } from "../../../src/build/tables/formula-guard.ts";
import { SEED } from "../../helpers/seed.ts";

const OWASP = ["=", "+", "-", "@", "\t", "\r", "\n", "＝", "＋", "－", "＠"];

test.each(OWASP)("a text that begins with %j is guarded", (sign) => {
  expect(guard(`${sign}1+1`)).toBe(`'${sign}1+1`);
});

test.each([
  // text, cell
  ["'=1", "''=1"],
  ["''-", "'''-"],
  ["'tis", "'tis"],
  ["a=b", "a=b"],
  ["..90", "..90"],
  ["", ""],
])("%j stands as %j", (text, cell) => {
  expect(guard(text)).toBe(cell);
});

test("no guarded text begins with such a sign, and every text comes back as it was", () => {
  const text = fc.string({ maxLength: 6, unit: fc.constantFrom("'", "a", " ", ...OWASP) });
  fc.assert(
    fc.property(text, (written) => {
      expect(OWASP).not.toContain(guard(written)[0]);
      expect(unguard(guard(written))).toBe(written);
    }),
    { seed: SEED, numRuns: 1000 },
  );
});
