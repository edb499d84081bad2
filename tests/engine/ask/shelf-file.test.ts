import fc from "fast-check";
import { expect, test } from "vitest";
import { shelfFile } from "../../../src/engine/ask/shelf-file.ts";
import { SEED } from "../../helpers/seed.ts";

// how numbers begin, the name of their file
const FILES: [shelf: string, file: string][] = [
  ["HY", "HY.json"],
  ["44", "44.json"],
  ["7", "7.json"],
  ["Ö1", "ud61.json"],
  ["泵1", "u6cf51.json"],
];
test.each(FILES)("numbers that begin with %s are in %s", (shelf, file) => {
  expect(shelfFile(shelf)).toBe(file);
});

test("a name is fit for any disk and address, and two beginnings do not share one", () => {
  const shelf = fc.stringMatching(/^[A-Z0-9]{1,2}$/);
  fc.assert(
    fc.property(fc.oneof(shelf, fc.string({ unit: "grapheme", maxLength: 2 })), shelf, (one, other) => {
      expect(shelfFile(one)).toMatch(/^[A-Za-z0-9]*\.json$/);
      if (one !== other) expect(shelfFile(one)).not.toBe(shelfFile(other));
    }),
    { seed: SEED, numRuns: 500 },
  );
});
