import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readSource } from "../../../src/build/data/source.ts";
import type { Complaint } from "../../../src/engine/records/complaint.ts";
import { type DataFile, kindOf } from "../../../src/engine/records/file-kinds.ts";
import { readCatalog } from "../../../src/engine/records/read-catalog.ts";
import { SEED } from "../../helpers/seed.ts";
import { readTexts, type Spoil, sourceOf, spoiled, TINY } from "../../helpers/tiny-folder.ts";
import { FAULTS, PLACES } from "./source.cases.ts";

/** Where the first complaint stands, and which characters are marked. */
function firstPlace(spoil: Spoil, rewrite = (text: string): string => text): [string, string] {
  const folder = Object.fromEntries(Object.entries(spoiled(spoil)).map(([path, text]) => [path, rewrite(text)]));
  const [complaint] = readTexts(folder).complaints as [Complaint];
  const source = sourceOf(complaint.file, folder[complaint.file] as string);
  const { line, column, length } = source.locate(complaint);
  const marked = source.line(line).slice(column - 1, column - 1 + length);
  return [`${complaint.file}:${line}:${column}`, marked];
}

describe("a complaint finds its place in the text", () => {
  test.each(PLACES)("%s", (_, spoil, place, marked) => {
    expect(firstPlace(spoil)).toEqual([place, marked]);
  });

  test.each(PLACES)("%s, in a file with the line ends of Windows", (_, spoil, place, marked) => {
    expect(firstPlace(spoil, (text) => text.replaceAll("\n", "\r\n"))).toEqual([place, marked]);
  });

  test.each(PLACES)("%s, in a file with a byte order mark", (_, spoil, place, marked) => {
    expect(firstPlace(spoil, (text) => `\uFEFF${text}`)).toEqual([place, marked]);
  });
});

describe("a file that cannot be read says why and where", () => {
  test.each(FAULTS)("%s: %j", (path, text, place, message, hint) => {
    const source = sourceOf(path, text);
    expect(source.faults).toEqual([{ severity: "error", rule: "unreadable", file: path, path: [], message, hint }]);
    const { line, column } = source.locate(source.faults[0] as Complaint);
    expect(`${line}:${column}`).toBe(place);
    expect(source.value).toBe(text);
  });
});

test("facts and text are read from a Markdown file, its text without the white space round it", () => {
  const source = readSource("x.md", "---\nid: a\nn: [1, two]\n---\n\n  # Head\n\n--- not the end\n\n", "story");
  expect(source.value).toEqual({ id: "a", n: [1, "two"], story: "# Head\n\n--- not the end" });
  expect(source.faults).toEqual([]);
});

test("facts may be empty, and white space may follow the '---'", () => {
  expect(readSource("x.md", "--- \n---\t\ntext", "story").value).toBeNull();
});

test("values are what YAML 1.2 says, and nothing else is made of them", () => {
  const text =
    "a: yes\nb: 1959-02-01\nc: 0x10\nd: 1e3\ne: ~\nf: !!js/function 'x'\ng: !!binary aGk=\nh: <b>x</b>\ni: 010\n'<<': {z: 1}\n";
  expect(readSource("x.yaml", text, undefined).value).toEqual({
    a: "yes",
    b: "1959-02-01",
    c: 16,
    d: 1000,
    e: null,
    f: "x",
    g: "aGk=",
    h: "<b>x</b>",
    i: 10,
    "<<": { z: 1 },
  });
});

test("a field called __proto__ is a field like any other", () => {
  const { value } = readSource("x.md", "---\n__proto__: { polluted: true }\n---\ntext", "story");
  expect(Object.keys(value as object)).toEqual(["__proto__", "story"]);
  expect({}).not.toHaveProperty("polluted");
});

// text nested deeper than anybody writes
const DEEP: [string, string][] = [
  ["opened lists", "[".repeat(50_000)],
  ["opened and closed lists", "[".repeat(20_000) + "]".repeat(20_000)],
  ["opened fields", "{a: ".repeat(20_000)],
  ["lists in lists", "- ".repeat(20_000)],
  ["fields in fields", Array.from({ length: 1200 }, (_, i) => `${" ".repeat(i)}a:`).join("\n")],
];
test.each(DEEP)("very many %s are refused, or read and refused for their shape", (_, text) => {
  const source = readSource("maker.yaml", text, undefined);
  const file: DataFile = { path: "maker.yaml", kind: "maker", value: source.value, broken: source.faults.length > 0 };
  const { complaints } = readCatalog([file]);
  expect(
    source.faults.length + complaints.filter((complaint) => complaint.file === "maker.yaml").length,
  ).toBeGreaterThan(0);
});

test("thousands of complaints about one file are placed", () => {
  const text = `parts:\n${"  - nothing: x\n".repeat(5000)}component: pump\n`;
  const source = sourceOf("parts/pump.yaml", text);
  const { complaints } = readCatalog([{ path: "parts/pump.yaml", kind: "parts", value: source.value }]);
  const own = complaints.filter((complaint) => complaint.file === "parts/pump.yaml");
  expect(own).toHaveLength(15_000);
  expect(source.locate(own.at(-1) as Complaint)).toEqual({ line: 5001, column: 5, length: 7 });
});

/** A text of the tiny folder after a few slips of the hand. */
const mangled = fc
  .record({
    path: fc.constantFrom(...Object.keys(TINY)),
    slips: fc.array(
      fc.record({
        at: fc.nat(3000),
        cut: fc.oneof({ weight: 3, arbitrary: fc.nat(3) }, { weight: 1, arbitrary: fc.nat(200) }),
        put: fc.oneof(
          fc.constantFrom(
            "",
            ":",
            ": ",
            "\n",
            "\t",
            "  ",
            "- ",
            "[",
            "]",
            "{",
            "}",
            "'",
            '"',
            "#",
            "&a ",
            "*a",
            "!",
            "|",
            ">",
          ),
          fc.constantFrom(
            "---\n",
            "...",
            "%",
            "@",
            "`",
            "\r",
            "\u0000",
            "\uFEFF",
            "\u2028",
            "<<: ",
            "? ",
            "[[x]]",
            "||",
            ";",
          ),
          fc.constantFrom("1e999", "-9007199254740993", ".inf", "null", "__proto__: 1\n", "constructor: 1\n", "\ud83d"),
          fc.string(),
        ),
      }),
      { minLength: 1, maxLength: 4 },
    ),
  })
  .map(({ path, slips }): [string, string] => [
    path,
    slips.reduce((text, { at, cut, put }) => {
      const from = at % (text.length + 1);
      return text.slice(0, from) + put + text.slice(from + cut);
    }, TINY[path] as string),
  ]);

describe("whatever a file holds, findings come back and nothing is thrown", () => {
  const expectFindings = (path: string, text: string): void => {
    const { catalog, complaints } = readTexts({ ...TINY, [path]: text });
    expect(catalog === undefined).toBe(complaints.some((complaint) => complaint.severity === "error"));
    const source = sourceOf(path, text);
    for (const complaint of complaints.filter(({ file }) => file === path)) {
      const { line, column, length } = source.locate(complaint);
      const shown = source.line(line);
      expect(line).toBeGreaterThan(0);
      expect(column).toBeGreaterThan(0);
      expect(column).toBeLessThanOrEqual(shown.length + 2);
      expect(length).toBeGreaterThan(0);
      expect(complaint.message).not.toBe("");
      expect(complaint.hint).not.toBe("");
    }
  };

  test("files of the tiny folder after slips of the hand", () => {
    fc.assert(
      fc.property(mangled, ([path, text]) => expectFindings(path, text)),
      { seed: SEED, numRuns: 500 },
    );
  }, 60_000);

  test("any text at all", () => {
    const paths = fc.constantFrom(...Object.keys(TINY));
    const text = fc.oneof(
      fc.string({ unit: "binary" }),
      fc.string().map((body) => `---\n${body}\n---\n${body}`),
    );
    fc.assert(
      fc.property(paths, text, (path, written) => {
        expect(kindOf(path)).toBeDefined();
        expectFindings(path, written);
      }),
      { seed: SEED, numRuns: 300 },
    );
  }, 60_000);
});
