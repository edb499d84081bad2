import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { commentsIn } from "../../../src/build/write/lost-comments.ts";
import { updatedText } from "../../../src/build/write/updated-text.ts";
import { FILE_KINDS, type FileKindName, kindOf } from "../../../src/engine/records/file-kinds.ts";
import { SEED } from "../../helpers/seed.ts";
import { sourceOf, TINY } from "../../helpers/tiny-folder.ts";

const PARTS = `# The pumps.
component: pump   # hydraulic
features:
  - {id: ribs,   name: 'ribs on the body', made: cast, where: on the car, effort: 2, record: HY59-01}
parts:
  # the first one
  - number: "4411"
    name: 'pump, short'   # as sold

    marks: {ribs: none,  bore: 18}
  # the later one
  - number: HT-102
    name: pump,
      long
    aliases:
      - long pump
      - longer pump
`;

// what is changed, and what stands there instead; all else keeps every byte
const CHANGES: [
  what: string,
  change: (parts: { [key: string]: unknown }[], file: Record<string, unknown>) => void,
  old: string,
  next: string,
][] = [
  [
    "a text keeps its quotes",
    (parts) => Object.assign(parts[0] ?? {}, { name: "pump, it's short" }),
    "'pump, short'",
    "'pump, it''s short'",
  ],
  [
    "a plain text gets quotes where it needs them",
    (_, file) => Object.assign(file, { component: "a: b" }),
    "component: pump ",
    'component: "a: b" ',
  ],
  [
    "a mark in a set on one line",
    (parts) => Object.assign(parts[0]?.marks ?? {}, { ribs: "two" }),
    "ribs: none,  bore",
    "ribs: two,  bore",
  ],
  [
    "a mark more in a set on one line",
    (parts) => Object.assign(parts[0]?.marks ?? {}, { wide: "yes" }),
    "{ribs: none,  bore: 18}",
    "{ribs: none,  bore: 18, wide: yes}",
  ],
  [
    "a text over two lines",
    (parts) => Object.assign(parts[1] ?? {}, { name: "pump, tall" }),
    "pump,\n      long\n",
    "pump, tall\n",
  ],
  [
    "a new field stands where the shape has it",
    (parts) => Object.assign(parts[0] ?? {}, { hand: "left" }),
    "# as sold\n",
    "# as sold\n    hand: left\n",
  ],
  [
    "several new fields, in the order of the shape",
    (parts) => Object.assign(parts[0] ?? {}, { castings: ["9"], hand: "left", aliases: ["x"] }),
    "# as sold\n",
    '# as sold\n    aliases: [x]\n    hand: left\n    castings: ["9"]\n',
  ],
  [
    "a new list",
    (parts) => Object.assign(parts[0] ?? {}, { castings: ["9"] }),
    "# as sold\n",
    '# as sold\n    castings: ["9"]\n',
  ],
  [
    "an entry of a list",
    (parts) => Object.assign(parts[1] ?? {}, { aliases: ["long pump", "tall pump"] }),
    "longer pump",
    "tall pump",
  ],
  [
    "an entry more",
    (parts) => Object.assign(parts[1] ?? {}, { aliases: ["high pump", "long pump", "longer pump"] }),
    "      - long pump",
    "      - high pump\n      - long pump",
  ],
  ["an entry less", (parts) => Object.assign(parts[1] ?? {}, { aliases: ["longer pump"] }), "      - long pump\n", ""],
  [
    "a field that is a default now goes",
    (parts) => Object.assign(parts[1] ?? {}, { aliases: [] }),
    "    aliases:\n      - long pump\n      - longer pump\n",
    "",
  ],
  [
    "a part more, at the end",
    (parts) => parts.push({ number: "HT-103", name: "pump" }),
    "- longer pump\n",
    "- longer pump\n  - number: HT-103\n    name: pump\n",
  ],
  ["a part less", (parts) => parts.pop(), PARTS.slice(PARTS.indexOf("  - number: HT-102")), ""],
  [
    "a part between two",
    (parts) => parts.splice(1, 0, { number: "HT-1", name: "x" }),
    "bore: 18}\n",
    "bore: 18}\n  - number: HT-1\n    name: x\n",
  ],
];

describe("one change", () => {
  test.each(CHANGES)("%s", (_, change, old, next) => {
    const value = parse(PARTS);
    change(value.parts, value);
    expect(PARTS.split(old)).toHaveLength(2);
    expect(updatedText("parts", PARTS, value)).toBe(PARTS.replace(old, () => next));
  });

  test("with the line ends of Windows and a byte order mark", () => {
    const windows = (text: string): string => `\uFEFF${text.replaceAll("\n", "\r\n")}`;
    for (const [what, change, old, next] of CHANGES) {
      const value = parse(PARTS);
      change(value.parts, value);
      expect(updatedText("parts", windows(PARTS), value), what).toBe(windows(PARTS.replace(old, () => next)));
    }
  });
});

const valueIn = (path: string, text: string): Record<string, unknown> =>
  FILE_KINDS[kindOf(path) as FileKindName].shape.parse(sourceOf(path, text).value) as Record<string, unknown>;

test("what a shape fills in by itself changes nothing", () => {
  for (const [path, text] of Object.entries(TINY))
    expect(updatedText(kindOf(path) as FileKindName, text, valueIn(path, text)), path).toBe(text);
});

test("the story below the facts", () => {
  const path = "changes/1958/FR58-01.md";
  const text = TINY[path] as string;
  const next = updatedText("change", text, { ...valueIn(path, text), story: "Six holes.\n\nAnd a slot." });
  expect(next).toBe(text.replace("Four holes.", "Six holes.\n\nAnd a slot."));
});

test("whatever is changed, it is read back as it was meant", () => {
  const path = "changes/1959/HY59-01.md";
  const text = TINY[path] as string;
  const value = valueIn(path, text);
  const odd = ["a: b", "- x", "'q'", "#no", "12", "yes", "a #b", "x".repeat(200), "wort ".repeat(40), "[", '"', "é|>"];
  const word = fc
    .oneof(fc.string({ maxLength: 30 }), fc.constantFrom(...odd))
    .map((text) => text.trim())
    .filter((text) => /^\P{Cc}+$/u.test(text));
  const lines = fc.array(word, { minLength: 1, maxLength: 3 }).map((texts) => texts.join("\n"));
  const id = fc.stringMatching(/^[A-Za-z0-9][A-Za-z0-9_-]{0,4}$/);
  const list = fc.array(word, { maxLength: 4 });
  fc.assert(
    fc.property(
      fc.record(
        {
          title: word,
          words: list,
          story: lines,
          withdrawn: word,
          "left-alone": fc.array(lines, { maxLength: 3 }),
          customer: lines,
          built: fc.shuffledSubarray([
            ...(value.built as object[]),
            { place: "new, place", part: "none", scope: "all" },
          ]),
          supersedes: fc.array(fc.record({ old: id, new: id, with: fc.array(id, { maxLength: 3 }) }), { maxLength: 3 }),
        },
        { requiredKeys: [] },
      ),
      (change) => {
        const next = { ...value, ...change };
        const written = updatedText("change", text, next);
        expect(sourceOf(path, written).faults).toEqual([]);
        expect(FILE_KINDS.change.shape.parse(sourceOf(path, written).value)).toStrictEqual(
          FILE_KINDS.change.shape.parse(next),
        );
      },
    ),
    { seed: SEED, numRuns: 40 },
  );
});

test("whatever stood in the file before, even if it was no YAML, what is meant stands there afterwards", () => {
  const pieces = [
    "name:",
    " x\n",
    "- ",
    "title: 'a'\n",
    "# c\n",
    "{",
    "}",
    "&a ",
    "*a",
    "!!map ",
    "---\n",
    "...\n",
    "\t",
    '"',
    "? ",
    "about: |\n  b\n",
    "\r\n",
    "\uFEFF",
  ];
  const value = { name: "Hollin", title: "Changes", about: "What changed.", site: "https://hollin.example/" };
  fc.assert(
    fc.property(
      fc.array(fc.oneof(fc.constantFrom(...pieces), fc.string({ maxLength: 4 })), { maxLength: 10 }),
      (texts) => {
        const written = updatedText("maker", texts.join(""), value);
        expect(FILE_KINDS.maker.shape.parse(sourceOf("maker.yaml", written).value)).toMatchObject(value);
        expect(updatedText("maker", written, value)).toBe(written);
      },
    ),
    { seed: SEED, numRuns: 100 },
  );
});

/** A file of parts, each piece of it in a manner of its own, with a comment wherever one may stand. */
const MANNERS = ["below", "far", "braces", "over lines", "json"] as const;
type Manner = (typeof MANNERS)[number];
interface Drawn {
  readonly list: "below" | "brackets";
  readonly parts: readonly { readonly manner: Manner; readonly aliases: Manner; readonly marks: Manner }[];
}

function drawnText({ list, parts }: Drawn): string {
  let comments = 0;
  const note = (): string => ` # ${++comments}`;
  const line = (pad: number, text: string): string => `${" ".repeat(pad)}${text}${note()}\n`;
  const inLines = (pad: number, open: string, items: string[], close: string): string =>
    `${open}${note()}\n${items.map((it, i) => line(pad + 2, it + (i < items.length - 1 ? "," : ""))).join("")}${" ".repeat(pad)}${close}`;
  const seq = (pad: number, manner: Manner, words: string[]): string => {
    if (manner === "below" || manner === "far")
      return `${note()}\n${words.map((it) => line(pad + 2, `${manner === "far" ? "-   " : "- "}${it}`)).join("")}`;
    if (manner === "over lines") return ` ${inLines(pad, "[", words, "]")}${note()}\n`;
    return ` [${(manner === "json" ? words.map((it) => JSON.stringify(it)) : words).join(", ")}]${note()}\n`;
  };
  const map = (pad: number, manner: Manner, pairs: string[]): string => {
    if (manner === "below" || manner === "far") return `${note()}\n${pairs.map((it) => line(pad + 2, it)).join("")}`;
    if (manner === "over lines") return ` ${inLines(pad, "{", pairs, "}")}${note()}\n`;
    return ` { ${pairs.join(", ")} }${note()}\n`;
  };
  const part = ({ manner, aliases, marks }: Drawn["parts"][number], i: number): string => {
    const fields = [`number: HT-${i}`, "name: pump", "aliases: [old, older]", "marks: { ribs: two, bore: 18 }"];
    if (list === "brackets" || manner === "braces") return `{ ${fields.join(", ")} }`;
    if (manner === "over lines") return inLines(2, "{", fields, "}");
    if (manner === "json")
      return `{ "number": "HT-${i}", "name": "pump", "aliases": ["old", "older"], "marks": { "ribs": "two", "bore": 18 } }`;
    const pad = manner === "far" ? 6 : 4;
    const lead = " ".repeat(pad);
    return `${fields[0]}${note()}\n${lead}# ${++comments}\n${line(pad, "name: pump")}${lead}aliases:${seq(pad, aliases, ["old", "older"])}${lead}marks:${map(pad, marks, ["ribs: two", "bore: 18"])}`;
  };
  const head = `# head\ncomponent: pump${note()}\n`;
  if (list === "brackets") return `${head}parts: [\n${parts.map((it, i) => line(2, `${part(it, i)},`)).join("")}]\n`;
  const far = parts[0]?.manner === "far" ? "-   " : "- ";
  const entries = parts.map((it, i) => {
    const text = part({ ...it, manner: far === "- " && it.manner === "far" ? "below" : it.manner }, i);
    const dash = it.manner === "below" && far !== "- " ? "- " : far;
    return `  ${it.manner === "below" || it.manner === "far" ? dash : "- "}${text}${text.endsWith("\n") ? "" : `${note()}\n`}  # ${++comments}\n`;
  });
  return `${head}parts:\n${entries.join("")}`;
}

test("however a file is written, what is added or changed in it takes no comment away", () => {
  type Part = { number: string; name: string; aliases: string[]; marks: Record<string, unknown>; hand?: string };
  const changes: Record<string, (parts: Part[]) => void> = {
    "a mark": (parts) => void Object.assign(parts[0]?.marks ?? {}, { wide: "yes" }),
    "an alias": (parts) => void parts.at(-1)?.aliases.push("oldest"),
    "an alias in front": (parts) => void parts[0]?.aliases.unshift("oldest"),
    "a field": (parts) => void Object.assign(parts[0] ?? {}, { hand: "left" }),
    "a part": (parts) => void parts.push({ number: "HT-9", name: "pump", aliases: ["x"], marks: { ribs: "one" } }),
    "another text": (parts) => void Object.assign(parts.at(-1) ?? {}, { name: "long pump, of 1959" }),
    "another mark": (parts) => void Object.assign(parts.at(-1)?.marks ?? {}, { bore: "20, worn" }),
    "another alias": (parts) => void parts[0]?.aliases.splice(1, 1, "oldest"),
  };
  const manner = fc.constantFrom(...MANNERS);
  const drawn: fc.Arbitrary<Drawn> = fc.record({
    list: fc.constantFrom("below", "brackets"),
    parts: fc.array(fc.record({ manner, aliases: manner, marks: manner }), { minLength: 1, maxLength: 3 }),
  });
  fc.assert(
    fc.property(drawn, fc.subarray(Object.keys(changes), { minLength: 1 }), (file, names) => {
      const text = drawnText(file);
      expect(sourceOf("parts/pump.yaml", text).faults, text).toEqual([]);
      const value = valueIn("parts/pump.yaml", text);
      for (const name of names) changes[name]?.(value.parts as Part[]);
      const written = updatedText("parts", text, value);
      expect(commentsIn("parts", written), `${text}\n${written}`).toEqual(commentsIn("parts", text));
      expect(valueIn("parts/pump.yaml", written)).toEqual(FILE_KINDS.parts.shape.parse(value));
    }),
    { seed: SEED, numRuns: 300 },
  );
});
