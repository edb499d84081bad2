/** Slips of the hand in the files of a data folder: cut, doubled, swapped, of the wrong type, under a wrong name, in strange signs. */
import fc from "fast-check";
import type { Folder } from "./tiny-folder.ts";

interface Where {
  readonly file: number;
  readonly at: number;
  /** Another place, in the same file or another. */
  readonly other: number;
  readonly put: string;
}
export interface Slip extends Where {
  readonly how: keyof typeof HOW;
}

/** Signs that mean something to YAML, to Markdown, to a scope, to an editor or to nobody. */
export const SIGNS: readonly string[] = [
  ..."[ ] { } ' \" # ! | @ ` , ; || - ? : \\ [[ ]] [[x]] [[|]] <b> &a *a >- !!int é 😀".split(" "),
  ...["\n", "\r", "\r\n", "\t", "  ", ": ", "- ", " #", "&a ", "---\n", "...\n", "%YAML 1.2\n", "<<: ", "? ", "x: y\n"],
  ...["\0", "\uFEFF", "\u0085", "\u2028", "\u202E", "\ud83d", "__proto__: 1\n"],
];

/** Values that are hardly ever meant. */
export const VALUES: readonly string[] = [
  ..."[] {} [[[[[]]]]] {a:[1]} [null] [{}] null ~ true no all none '' 'yes' '1' - # / ../x a/b %2e 😀".split(" "),
  ..."0 -1 1.5 1e999 -.inf .nan 9007199254740993 123456789012345678901234567890 0x10 1_000".split(" "),
  ..."1959-02-30 1959-13-01 0000-00-00 9999-12-31 1959-2-1 .. ..5 9..1 1e9..1e10".split(" "),
  ..."__proto__ constructor toString hasOwnProperty length then on-conditions".split(" "),
  ...['"  "', '"\\0"', '"a\\nb"', '"a b"', "'\u202Ex'", "!!int x", "!!str 5", "!x y", "{a: {b: {c: 1}}}"],
  "x".repeat(300),
];

/** Tractors that a statement of the tiny folder may be about. */
const SCOPES: readonly string[] = [
  ..."all line=B line=H line!=B,H my>=1959 my<1959 my=1960-1961 plant=D eq=PT no=PT number=0412".split(" "),
  ..."at=K59#0412+ at=K59#0411- at=D60#0001+ fitted=HT-101 fitted!=HT-201".split(" "),
  ...["line=B; my=1958", "line=H; my=1957", "eq=WN; line=B", "line=B || line=H; my=1960", "line=B; at=K58#9999+"],
];

const VALUE = /(?<=(?:[:,[{]|^ *-) )[^\s,[\]{}|>][^,\n[\]{}]*/gm;
const PAIR = /\b([\w-]+): ([^\s,[\]{}|>][^,\n[\]{}]*)/g;
const NAME = /[\w-]+(?=:(?:\s|$))/g;

/** The text with the one of all matches that the number falls on put otherwise. */
function instead(text: string, pattern: RegExp, at: number, put: string): string {
  const found = [...text.matchAll(pattern)];
  const one = found[at % Math.max(1, found.length)];
  return one ? text.slice(0, one.index) + put + text.slice(one.index + one[0].length) : text;
}

/** One of the matches in a text. */
function oneOf(text: string, pattern: RegExp, at: number): string {
  const found = text.match(pattern) ?? [""];
  return found[at % found.length] as string;
}

/** What becomes of a file's text; `borrowed` is that of another file. */
const HOW = {
  cut: (text: string, { at, other }: Where) => {
    const from = at % (text.length + 1);
    return text.slice(0, from) + text.slice(from + (other % 5 ? other % 8 : other % 300));
  },
  put: (text: string, { at, put }: Where) => {
    const from = at % (text.length + 1);
    return text.slice(0, from) + put + text.slice(from);
  },
  double: (text: string, { at }: Where) =>
    lines(text, (all) => all.toSpliced(at % all.length, 0, all[at % all.length] as string)),
  swap: (text: string, { at, other }: Where) =>
    lines(text, (all) => {
      const [a, b] = [at % all.length, other % all.length];
      return all.with(a, all[b] as string).with(b, all[a] as string);
    }),
  value: (text: string, { at, put }: Where) => instead(text, VALUE, at, put),
  borrow: (text: string, { at, other }: Where, borrowed: string) =>
    instead(text, VALUE, at, oneOf(borrowed, VALUE, other)),
  likewise,
  scope: (text: string, { at, other }: Where) =>
    instead(text, /(?<=\bscope: )[^,\n}]+/g, at, SCOPES[other % SCOPES.length] as string),
  name: (text: string, { at, other, put }: Where, borrowed: string) =>
    instead(text, NAME, at, other % 3 ? oneOf(borrowed, NAME, other) : put.trim()),
  nest: (text: string, { at, other, put }: Where) =>
    instead(text, VALUE, at, "[".repeat(other % 90) + put + "]".repeat(other % 90)),
  windows: (text: string) => text.replaceAll("\n", "\r\n"),
  mark: (text: string) => `\uFEFF${text}`,
  tabs: (text: string) => text.replaceAll("  ", "\t"),
  twice: (text: string) => text + text,
  other: (_text: string, _slip: Where, borrowed: string) => borrowed,
  // These three are done with the files, not with their texts.
  gone: (text: string) => text,
  copy: (text: string) => text,
  exchange: (text: string) => text,
} as const;

/** What is easily mistaken and can still be read: a field has the value that another field of this name has. */
function likewise(text: string, { at, other }: Where, borrowed: string): string {
  const pairs = [...`${text}\n${borrowed}`.matchAll(PAIR)].map(([, name, value]) => ({ name, value }));
  const mistakes = [...text.matchAll(PAIR)].flatMap((match) => {
    const [all, name, value] = match;
    const values = pairs.filter((pair) => pair.name === name && pair.value !== value).map((pair) => pair.value);
    return values.length > 0 ? [{ from: match.index, to: match.index + all.length, name, values }] : [];
  });
  const one = mistakes[at % Math.max(1, mistakes.length)];
  return one
    ? `${text.slice(0, one.from)}${one.name}: ${one.values[other % one.values.length]}${text.slice(one.to)}`
    : text;
}

function lines(text: string, change: (all: string[]) => string[]): string {
  return change(text.split("\n")).join("\n");
}

const number = fc.nat(1_000_000);

const USUAL: readonly Slip["how"][] = [
  ...(["cut", "put", "double", "swap", "value", "value", "borrow", "name", "nest"] as const),
  ...(["likewise", "likewise", "scope"] as const),
];

/** Of the given sorts; else of all, the usual ones more often. */
export function slip(...how: readonly Slip["how"][]): fc.Arbitrary<Slip> {
  const usual = fc.constantFrom(...USUAL);
  const rare = fc.constantFrom(...(Object.keys(HOW) as Slip["how"][]));
  return fc.record({
    how: how.length > 0 ? fc.constantFrom(...how) : fc.oneof({ weight: 6, arbitrary: usual }, rare),
    file: number,
    at: number,
    other: number,
    put: fc.oneof(
      { weight: 4, arbitrary: fc.constantFrom(...SIGNS, ...VALUES) },
      fc.string({ unit: "binary", maxLength: 8 }),
    ),
  });
}

/** The folder after slips, one upon the other. */
export function slipped(folder: Folder, slips: readonly Slip[]): Folder {
  const texts: Record<string, string> = { ...folder };
  for (const one of slips) {
    const paths = Object.keys(texts);
    if (paths.length === 0) break;
    const path = longOne(texts, one.file);
    const second = paths[one.other % paths.length] as string;
    const [text, borrowed] = [texts[path] as string, texts[second] as string];
    if (one.how === "gone") delete texts[path];
    else if (one.how === "copy") texts[path.replace(/(?=\.\w+$)/, "-2")] = text;
    else if (one.how === "exchange") [texts[path], texts[second]] = [borrowed, text];
    else {
      // Where there is nothing to do it to, it is done to the next file.
      const start = paths.indexOf(path);
      for (const at of [...paths.slice(start), ...paths.slice(0, start)]) {
        const changed = HOW[one.how](texts[at] as string, one, borrowed);
        if (changed === texts[at]) continue;
        texts[at] = changed;
        break;
      }
    }
  }
  return texts;
}

/** A file; one that is twice as long twice as often. */
function longOne(texts: Folder, number: number): string {
  const paths = Object.entries(texts).flatMap(([path, text]) => Array<string>(Math.ceil(text.length / 200)).fill(path));
  return paths[number % paths.length] ?? (Object.keys(texts)[0] as string);
}
