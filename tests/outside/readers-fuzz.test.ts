/**
 * More than 10,000 inputs that nobody would write, to every reader of a data folder: none crashes, and whatever is complained about has a
 * rule, a place that exists, a message and a hint. Sources: fast-check makes the inputs; SARIF 2.1.0, as the package
 * @microsoft/jest-sarif carries its schema.
 */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { isDeepStrictEqual } from "node:util";
import AjvDraft04 from "ajv-draft-04";
import fc from "fast-check";
import { expect, test } from "vitest";
import { isScalar, parseDocument, visit } from "yaml";
import { type CheckedFolder, checkFolder } from "../../src/build/data/check-folder.ts";
import { findingsDocument } from "../../src/build/data/findings-shape.ts";
import { type Finding, isFaultless, locate, type ReadFolder, readFolder } from "../../src/build/data/read-folder.ts";
import { toSarif } from "../../src/build/data/to-sarif.ts";
import { citations, renderCitations } from "../../src/engine/records/citations.ts";
import { kindOf } from "../../src/engine/records/file-kinds.ts";
import { readCatalog } from "../../src/engine/records/read-catalog.ts";
import { readPlate } from "../../src/engine/records/read-plate.ts";
import { readScope } from "../../src/engine/scope/read-scope.ts";
import { readQuantity } from "../../src/engine/settings/read-quantity.ts";
import { readWindow } from "../../src/engine/settings/read-window.ts";
import { UNITS } from "../../src/engine/settings/unit-table.ts";
import { DATA } from "../helpers/demo-data.ts";
import { brokenLaws, folderOf } from "../helpers/finding-laws.ts";
import { askedScope, written } from "../helpers/random-scopes.ts";
import { SIGNS, slip, slipped, VALUES } from "../helpers/random-slips.ts";
import { SEED } from "../helpers/seed.ts";
import { catalogOf, type Folder, onDisk, sourceOf, TINY } from "../helpers/tiny-folder.ts";
import { tractorSpace } from "../helpers/tractor-space.ts";

/** Each test counts what it tried; they all together are many. */
let inputs = 0;
function tries<T>(count: number, arbitrary: fc.Arbitrary<T>, holds: (value: T) => void): void {
  inputs += count;
  fc.assert(fc.property(arbitrary, holds), { seed: SEED, numRuns: count });
}

const PATHS = Object.keys(TINY);
const tinySources = folderOf(TINY).sources;
const pieces = (most: number, ...some: string[]): fc.Arbitrary<string> =>
  fc
    .array(fc.oneof({ weight: 3, arbitrary: fc.constantFrom(...some) }, fc.string({ unit: "binary", maxLength: 3 })), {
      maxLength: most,
    })
    .map((all) => all.join(""));

function expectLawful(findings: readonly Finding[], texts: Folder): void {
  const broken = findings.flatMap((finding) => brokenLaws(finding, texts));
  // One tells enough.
  expect(broken.slice(0, 1)).toEqual([]);
}

/** What one file alone is complained about for. */
function lawsOfFile(path: string, text: string): void {
  const source = sourceOf(path, text);
  const kind = kindOf(path) as NonNullable<ReturnType<typeof kindOf>>;
  const { complaints } = readCatalog([{ path, kind, value: source.value, broken: source.faults.length > 0 }]);
  const own = [...source.faults, ...complaints.filter(({ file }) => file === path)];
  expectLawful(
    own.map((complaint) => locate(complaint, source)),
    { [path]: text },
  );
}

/** Everything of one folder: what is read and checked, and how it is told. */
function lawsOfFolder(read: ReadFolder, texts: Folder): CheckedFolder {
  const checked = checkFolder(read);
  expect(read.catalog !== undefined).toBe(isFaultless(read.findings));
  const all = [...read.findings, ...checked.findings, ...checked.accepted.map(({ finding }) => finding)];
  expectLawful(all, texts);
  const json = findingsDocument.safeParse(JSON.parse(JSON.stringify({ files: read.files, ...checked })));
  expect(json.error?.issues ?? []).toEqual([]);
  const log = toSarif(checked, "data");
  expect(holdsForSarif(log) ? [] : holdsForSarif.errors).toEqual([]);
  return checked;
}

const SCHEMA = "node_modules/@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json";
const holdsForSarif = new AjvDraft04({ strict: false, validateFormats: false, unicodeRegExp: false }).compile(
  JSON.parse(readFileSync(SCHEMA, "utf8")) as object,
);

const path = fc.constantFrom(...PATHS);
const yamlText = pieces(30, ...SIGNS, ...VALUES, "id", "name", "scope", "a", "  a: ", "- b\n");

test("any text as a file", () => {
  tries(2500, fc.tuple(path, yamlText, fc.boolean()), ([at, text, isFacts]) => {
    lawsOfFile(at, isFacts ? `---\n${text}\n---\n${text}` : text);
  });
});

test("any bytes in files of a folder, and the same findings again", async () => {
  const bytes = fc.sample(
    fc.oneof(
      fc.uint8Array({ maxLength: 200 }),
      yamlText.map((text) => Buffer.from(text)),
    ),
    { seed: SEED, numRuns: 400 },
  );
  inputs += bytes.length;
  const names = "parts/%.yaml components/%.yaml vehicles/%.yaml changes/1959/%.md bulletins/%.md stray/%.yaml".split(
    " ",
  );
  const files = Object.fromEntries(
    bytes.map((one, i) => [(names[i % names.length] as string).replace("%", `f${i}`), one]),
  );
  // Of a file that is no text its lines are shown with a sign for what cannot be read.
  const texts = Object.fromEntries(
    Object.entries(files).map(([at, one]): [string, string] => [at, new TextDecoder().decode(one)]),
  );
  const folder = await onDisk(files);
  const read = await readFolder(folder);
  lawsOfFolder(read, texts);
  expect((await readFolder(folder)).findings).toEqual(read.findings);
});

const demo = Object.fromEntries(
  readdirSync(DATA, { recursive: true, encoding: "utf8" })
    .map((one) => one.replaceAll("\\", "/"))
    .filter((one) => kindOf(one))
    .sort()
    .map((one) => [one, readFileSync(join(DATA, one), "utf8")]),
);

test("files of the data folder after one to three slips", () => {
  const slips = fc.array(slip(), { minLength: 1, maxLength: 3 });
  tries(250, fc.tuple(fc.constantFrom(...Object.entries(demo)), slips), ([[at, text], done]) => {
    for (const [after, changed] of Object.entries(slipped({ [at]: text }, done)))
      if (kindOf(after)) lawsOfFile(after, changed);
  });
});

test("the tiny folder after one to three slips", () => {
  const any = slip();
  const readable = slip("scope", "likewise", "double");
  const slips = [any, readable].map((one) => fc.array(one, { minLength: 1, maxLength: 3 }));
  const seen = { unread: 0, "found of the whole": 0, nothing: 0 };
  tries(200, fc.oneof(...slips), (done) => {
    const texts = slipped(TINY, done);
    const read = folderOf(texts, tinySources);
    const { findings } = lawsOfFolder(read, texts);
    // All of it read anew.
    if (done.length === 3) expect(checkFolder(folderOf(texts)).findings).toEqual(findings);
    seen[!read.catalog ? "unread" : findings.length > 0 ? "found of the whole" : "nothing"]++;
  });
  // Each comes often enough to be a test of it.
  expect(Math.min(...Object.values(seen))).toBeGreaterThan(8);
});

test("the data folder after one to three slips", () => {
  const known = folderOf(demo).sources;
  tries(5, fc.array(slip("likewise", "borrow", "value"), { minLength: 1, maxLength: 3 }), (slips) => {
    const texts = slipped(demo, slips);
    lawsOfFolder(folderOf(texts, known), texts);
  });
});

/** Everything but where it stands in the text. */
const said = (texts: Folder): string[] =>
  checkFolder(folderOf(texts, tinySources))
    .findings.map(({ position: _, shown: __, also, ...finding }) =>
      JSON.stringify({ ...finding, also: also?.map(({ position: _, ...it }) => it) }),
    )
    .sort();

/** The same facts: other quotes, spaces, comments and line ends. */
const REWRITE: ((facts: string) => string)[] = [
  (facts) => facts.replaceAll(/^(?=[\w-]+:)/gm, "# a comment: [\n\n"),
  (facts) => facts.replaceAll(/\n/g, " \t\n"),
  (facts) => facts.replaceAll("\n", "\r\n"),
  (facts) => requoted(facts, "QUOTE_DOUBLE"),
  (facts) => requoted(facts, "QUOTE_SINGLE"),
];

function requoted(facts: string, type: "QUOTE_DOUBLE" | "QUOTE_SINGLE"): string {
  const doc = parseDocument(facts);
  visit(doc, {
    Scalar: (_, node) => {
      if (isScalar(node) && typeof node.value === "string") node.type = type;
    },
  });
  return doc.toString({ lineWidth: 0 });
}

test("what changes nothing in meaning changes no finding", () => {
  const slips = fc.array(slip("scope", "likewise", "borrow"), { maxLength: 2 });
  let rewritten = 0;
  tries(50, fc.tuple(slips, fc.constantFrom(...REWRITE), fc.nat()), ([done, rewrite, which]) => {
    const texts = slipped(TINY, done);
    const at = PATHS[which % PATHS.length] as string;
    const text = texts[at] as string;
    const was = sourceOf(at, text);
    if (was.faults.length > 0) return;
    const again = text.replace(at.endsWith(".md") ? /(?<=^---\n)[\s\S]*?\n(?=---\n)/ : /[\s\S]+/, rewrite);
    if (!isDeepStrictEqual(sourceOf(at, again).value, was.value)) return;
    rewritten++;
    expect(said({ ...texts, [at]: again })).toEqual(said(texts));
  });
  expect(rewritten).toBeGreaterThan(40);
});

test("scopes", () => {
  let space = tractorSpace();
  const signs = "line my eq no at fitted number built = != >= < ; || , - # @ +".split(" ");
  const words = [..."B PT HT-101 K59#0412+ 1959 1957-1959 1959-02-30 all __proto__ 😀".split(" "), " ", "\n", "", "\0"];
  const spoilt = fc
    .tuple(askedScope, slip("cut", "put", "borrow"))
    .map(([asked, one]) => slipped({ scope: written(asked) }, [one]).scope ?? "");
  tries(2500, fc.oneof(pieces(12, ...signs, ...words), spoilt), (text) => {
    // Every part that a scope asks for is a trait more.
    if (space.traits.length > 40) space = tractorSpace();
    const read = readScope(space, text);
    if ("scope" in read) {
      const spaced = readScope(space, ` ${text.replaceAll(/[;,]|\|\|/g, (sign) => ` ${sign}\n`)} `);
      expect("scope" in spaced && spaced.scope.cars).toBe(read.scope.cars);
      return;
    }
    expect(readScope(space, text)).toEqual(read);
    expect(read.slips.length).toBeGreaterThan(0);
    for (const { from, to, message, hint } of read.slips) {
      // A piece that is missing at the very end stands behind it.
      expect(from >= 0 && from < to && to <= Math.max(text.length, from + 1) && from <= text.length).toBe(true);
      expect(message && hint).toBeTruthy();
    }
  });
});

test("citations", () => {
  tries(2500, pieces(15, "[", "]", "[[", "]]", "|", "HY59-01", " ", "\n", "words", "[[pump]]"), (text) => {
    let end = 0;
    for (const { from, to, id } of citations(text)) {
      expect(from).toBeGreaterThanOrEqual(end);
      expect(text.slice(from, to)).toMatch(/^\[\[[^[\]]+\]\]$/);
      expect(text.slice(from, to)).toContain(id);
      end = to;
    }
    expect(renderCitations(text, ({ from, to }) => text.slice(from, to))).toBe(text);
  });
});

test("quantities and windows", () => {
  const words = UNITS.flatMap((unit) => [unit.id, ...unit.says]);
  const signs = [
    ". , / - – .. ( ) ' \" ½ ° + e5".split(" "),
    " ",
    " to ",
    "No. ",
    "letter ",
    "goes ",
    "not ",
    "up to ",
  ].flat();
  const figures = ["0 1 7 12 40 1250 1,250 0.5 7/64 1-1/2 99999 000 1e999".split(" "), "1 1/2"].flat();
  const typed = pieces(6, ...signs, ...figures, ...figures, ...words.slice(0, 40), "E", "TDC", "\0", "\u202E");
  const figure = fc.constantFrom(...figures);
  const whole = fc
    .tuple(
      fc.constantFrom("", "-", "up to "),
      figure,
      fc.constantFrom("", "", "..", " to ", "-"),
      figure,
      fc.constantFrom("", " "),
    )
    .chain(([sign, low, dots, high, gap]) =>
      fc.constantFrom(...words, "").map((word) => `${sign}${dots ? low + dots : ""}${high}${gap}${word}`),
    );
  const seen = { quantity: 0, choice: 0, refused: 0 };
  tries(
    2000,
    fc.tuple(fc.oneof(typed, whole), fc.option(fc.constantFrom(...UNITS), { nil: undefined })),
    ([text, unit]) => {
      for (const reader of [readQuantity, readWindow]) {
        const read = reader(text, unit);
        seen[read.as]++;
        expect(reader(text, unit)).toEqual(read);
        if (read.as === "refused") expect(read.why).toMatch(/\S/);
        else if (read.as === "quantity") expect(read.low.lte(read.high)).toBe(true);
        else {
          expect(read.ask).toMatch(/\S/);
          expect(read.choices.length).toBeGreaterThan(0);
          for (const choice of read.choices)
            expect(`${choice.typed}: ${reader(choice.typed, unit).as}`).toBe(`${choice.typed}: quantity`);
        }
      }
    },
  );
  expect(Math.min(...Object.values(seen))).toBeGreaterThan(30);
});

test("numbers on plates", () => {
  const { space, buildable, plates } = catalogOf();
  const strange = fc.constantFrom("O", "I", "8", " ", ".", "ß", "é", "😀", "\0", "");
  const place = (...signs: string[]): fc.Arbitrary<string> =>
    fc.oneof({ weight: 9, arbitrary: fc.constantFrom(...signs) }, strange);
  const figure = place("0", "4", "1", "2", "9");
  const typed = fc.tuple(place("B", "H"), place("7", "8", "9"), place("K", "D"), figure, figure, figure, figure);
  const seen = { read: 0, misread: 0, "not built": 0, unknown: 0 };
  tries(1000, typed, (characters) => {
    const read = readPlate(space, buildable, plates, characters.join(""));
    seen[read.as]++;
    expect(readPlate(space, buildable, plates, ` ${characters.join("-").toLowerCase()}`)).toEqual(read);
    if ("slips" in read)
      for (const { place, character, couldBe } of read.slips) {
        // No plate holds a character that takes the place of two.
        if (!read.number.includes("😀")) expect(character).toBe(read.number[place - 1]);
        for (const other of couldBe) expect(other).toMatch(/^[A-Z\d]$/);
      }
  });
  expect(Math.min(...Object.values(seen))).toBeGreaterThan(30);
});

test("these were more than 10,000 inputs", () => {
  expect(inputs).toBeGreaterThanOrEqual(10_000);
});
