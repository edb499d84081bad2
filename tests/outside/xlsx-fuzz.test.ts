/** Workbooks spoiled at random, in the archive and in the XML inside: each is read or refused in one clear sentence. */
import fc from "fast-check";
import { strToU8, unzipSync, zipSync } from "fflate";
import { expect, test } from "vitest";
import { openSheet } from "../../src/build/tables/import-rows.ts";
import { readXlsx } from "../../src/build/tables/read-xlsx.ts";
import { SheetError } from "../../src/build/tables/sheet.ts";
import { writeXlsx } from "../../src/build/tables/write-xlsx.ts";
import { SEED } from "../helpers/seed.ts";

const SENTENCE = /^fuzz\.xlsx(, sheet '[^']*')?(, row \d+)?: .+; .+$/s;
const book = await writeXlsx("fuzz.xlsx", [
  {
    name: "built",
    rows: [
      ["record", "n", "day"],
      ["HY59-01", 7, new Date(Date.UTC(1959, 1, 28))],
      ["x", true, null],
    ],
  },
]);
const files = unzipSync(book);
const names = Object.keys(files);

/** One byte of the archive another, or its end cut off. */
const spoiltArchive = fc
  .tuple(fc.nat({ max: book.length - 1 }), fc.nat({ max: 255 }), fc.boolean())
  .map(([at, byte, cut]) => (cut ? book.subarray(0, at) : book.with(at, byte)));

/** A piece of the XML of one file taken out, and another put in its place. */
const spoiltXml = fc
  .tuple(
    fc.constantFrom(...names),
    fc.nat({ max: 2000 }),
    fc.nat({ max: 12 }),
    fc.constantFrom(
      "",
      '<c r="B2">',
      "</row>",
      "<v>",
      "&#0;",
      "9999999",
      "<f>",
      '"',
      't="s"',
      't="d"',
      'r="ZZZ9"',
      "&bomb;",
      "<!--",
      "]]>",
      "\uD83D",
    ),
  )
  .map(([name, from, length, piece]) => {
    const xml = Buffer.from(files[name] ?? []).toString();
    const at = from % xml.length;
    return zipSync({ ...files, [name]: strToU8(xml.slice(0, at) + piece + xml.slice(at + length)) }, { level: 0 });
  });

test("300 workbooks", async () => {
  const outcomes = { read: 0, refused: 0 };
  await fc.assert(
    fc.asyncProperty(fc.oneof(spoiltArchive, { weight: 2, arbitrary: spoiltXml }), async (bytes) => {
      try {
        const { path, form, grids } = await readXlsx("fuzz.xlsx", bytes);
        for (const grid of grids) openSheet(path, form, grid);
        outcomes.read++;
      } catch (error) {
        if (!(error instanceof SheetError)) throw error;
        outcomes.refused++;
        expect(error.message).toMatch(SENTENCE);
      }
    }),
    { seed: SEED, numRuns: 300 },
  );
  expect(Math.min(outcomes.read, outcomes.refused)).toBeGreaterThan(30);
});
