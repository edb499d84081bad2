/**
 * The JSON Schemas for editors judged from outside. Source: Ajv, JSON Schema 2020-12. What the schemas let through and what the check
 * of the data lets through must be the same, but for the rules in BEYOND_SCHEMAS, which a JSON Schema cannot carry.
 */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { editorSchemas } from "../../src/build/schemas.ts";
import { checkShape } from "../../src/engine/records/check-shape.ts";
import { Complaints } from "../../src/engine/records/complaint.ts";
import { FILE_KINDS, type FileKind, type FileKindName, kindOf } from "../../src/engine/records/file-kinds.ts";
import { plainFiles } from "../helpers/demo-data.ts";
import { judgedBy } from "../helpers/judged-by-ajv.ts";
import { TINY } from "../helpers/tiny-folder.ts";

const schemas = editorSchemas();
const judges = new Map([...schemas].map(([name, schema]) => [name.replace(/\.json$/, ""), judgedBy(schema)]));

/** What Ajv and the check say of the facts of one file; the text below the facts is no matter of a schema. */
function verdicts(kind: FileKindName, facts: unknown): { byAjv: string[]; byCheck: string[] } {
  const { shape, body }: FileKind = FILE_KINDS[kind];
  const complaints = new Complaints("x");
  const isObject = typeof facts === "object" && facts !== null && !Array.isArray(facts);
  checkShape(shape, body === undefined || !isObject ? facts : { ...facts, [body]: "Text." }, complaints);
  return {
    byAjv: judges.get(kind)?.(facts) ?? ["no schema"],
    byCheck: complaints.list.map(({ path, message }) => `${path.join(".")}: ${message}`),
  };
}

/** The tiny folder's facts, one file of each kind and a second of those that leave much out. */
const FACTS = Object.entries(TINY).map(([path, text]): [FileKindName, unknown] => {
  const [, facts = text] = path.endsWith(".md") ? (/^---\n([\s\S]*?)\n---/.exec(text) ?? []) : [];
  return [kindOf(path) as FileKindName, parse(facts)];
});

/** Rules of the check that look at two fields at once, at a calendar, or at what is left without white space. */
// kind of file, where, what is written there, what the check says
const BEYOND_SCHEMAS: [FileKindName, (string | number)[], unknown, RegExp][] = [
  ["maker", ["title"], "   ", /'title' is empty/],
  ["maker", ["site"], "ftp://hollin.example/", /an address that begins with https/],
  ["change", ["issued"], "1959-02-30", /there is no such day/],
  ["change", ["settings", 0, "window"], "..", /at least one limit/],
  ["change", ["stands-in", 1, "why"], undefined, /a refusal must say why/],
  ["change", ["kits", 0, "contents", 0, "name"], "gasket", /either a part number or a name/],
  ["change", ["kits", 0, "contents", 0, "part"], undefined, /either a part number or a name/],
  ["change", ["instead"], ["FR58-01"], /only a withdrawn record/],
  ["change", ["intervals", 0, "none"], true, /months, miles or both/],
  ["change", ["intervals", 0, "months"], undefined, /months, miles or both/],
  [
    "checks",
    ["rules"],
    ["off", "error"].map((as) => ({ check: "nearly-the-same", as, why: "x" })),
    /'nearly-the-same' is set already/,
  ],
];

test("the schemas that are committed are the ones that the code makes", () => {
  const made = new Map([...schemas].map(([name, schema]) => [name, `${JSON.stringify(schema, null, 2)}\n`]));
  const committed = new Map(
    readdirSync("schemas")
      .filter((name) => name.endsWith(".json"))
      .map((name) => [name, readFileSync(`schemas/${name}`, "utf8")] as const),
  );
  expect([...committed].sort()).toEqual([...made].sort());
});

test("every file of the data folder holds for its schema", () => {
  const files = plainFiles().filter(({ path }) => kindOf(path) !== undefined);
  const faults = files.flatMap(({ path, facts }) =>
    (judges.get(kindOf(path) as string)?.(facts) ?? ["no schema"]).map((fault) => `${path} ${fault}`),
  );
  expect(faults).toEqual([]);
  expect(new Set(files.map(({ path }) => kindOf(path)))).toEqual(new Set(Object.keys(FILE_KINDS)));
});

describe("field by field written wrongly", () => {
  test("the tiny folder is right as it stands", () => {
    for (const [kind, facts] of FACTS) expect(verdicts(kind, facts)).toEqual({ byAjv: [], byCheck: [] });
    expect(new Set(FACTS.map(([kind]) => kind))).toEqual(new Set(Object.keys(FILE_KINDS)));
  });

  test("Ajv refuses what the check refuses, and lets pass what it lets pass", () => {
    const refused = new Map<string, number>();
    for (const [kind, facts] of FACTS)
      for (const [how, broken] of variants(facts)) {
        const { byAjv, byCheck } = verdicts(kind, broken);
        const carried = byCheck.filter(
          (said) => !BEYOND_SCHEMAS.some((rule) => rule[0] === kind && rule[3].test(said)),
        );
        // Where both find something, each may say it in its own way.
        if (byAjv.length === 0 || byCheck.length === 0)
          expect([kind, how, byAjv, carried]).toEqual([kind, how, [], []]);
        if (byAjv.length > 0 && byCheck.length > 0) refused.set(kind, (refused.get(kind) ?? 0) + 1);
      }
    for (const kind of Object.keys(FILE_KINDS)) expect([kind, (refused.get(kind) ?? 0) >= 8]).toEqual([kind, true]);
  });
});

describe("rules that a JSON Schema cannot carry", () => {
  test.each(BEYOND_SCHEMAS)("%s %j written as %j", (kind, path, value, said) => {
    const facts = FACTS.findLast(([one, file]) => one === kind && hasAt(file, path.slice(0, -1)))?.[1];
    const { byAjv, byCheck } = verdicts(kind, changedAt(facts, path, value));
    expect([byAjv, byCheck.length]).toEqual([[], 1]);
    expect(byCheck[0]).toMatch(said);
  });
});

/** Every value of the facts, one at a time: left out, emptied, of another type, too long, too small; and a field too many. */
function variants(facts: unknown): [how: string, broken: unknown][] {
  return pathsOf(facts).flatMap((path): [string, unknown][] => {
    const value = at(facts, path);
    const put: [string, unknown][] = [
      ["null", null],
      ["a number", 7],
      ["words", "other words"],
      ["true", true],
      ["a list", [[]]],
      ["fields", { other: 1 }],
      ["an empty list", []],
      ["no fields", {}],
      ["no words", ""],
      ["a fraction", 1.5],
      ["zero", 0],
      ["a number too large", 1e9],
      ["signs", "<&>/.."],
    ];
    if (typeof value === "string") put.push(["very long", "x".repeat(200_000)]);
    if (typeof value === "object" && value !== null && !Array.isArray(value))
      put.push(["a field too many", { ...value, "odd-field": 1 }]);
    if (Array.isArray(value)) put.push(["an entry twice as often", [...value, ...value]]);
    const where = path.join(".");
    const changed = put.map(([how, other]): [string, unknown] => [`${where} ${how}`, changedAt(facts, path, other)]);
    return path.length === 0 ? changed : [[`${where} left out`, changedAt(facts, path, undefined)], ...changed];
  });
}

type Path = readonly (string | number)[];

function pathsOf(value: unknown, path: Path = []): Path[] {
  if (typeof value !== "object" || value === null) return [path];
  return [
    path,
    ...Object.entries(value).flatMap(([key, inner]) =>
      pathsOf(inner, [...path, Array.isArray(value) ? Number(key) : key]),
    ),
  ];
}

function at(value: unknown, path: Path): unknown {
  return path.reduce((inner, step) => (inner as Record<string, unknown>)[step], value);
}

function hasAt(value: unknown, path: Path): boolean {
  return (
    path.reduce<unknown>((inner, step) => (inner as Record<string, unknown> | undefined)?.[step], value) !== undefined
  );
}

/** A copy with another value in one place; with nothing there when the value is undefined. */
function changedAt(value: unknown, [step, ...rest]: Path, put: unknown): unknown {
  if (step === undefined) return put;
  const inner = rest.length === 0 ? put : changedAt((value as Record<string, unknown>)[step], rest, put);
  if (Array.isArray(value))
    return value.flatMap((one, i) => (i === step ? (inner === undefined ? [] : [inner]) : [one]));
  const { [step]: _, ...others } = value as Record<string, unknown>;
  return inner === undefined ? others : { ...others, [step]: inner };
}
