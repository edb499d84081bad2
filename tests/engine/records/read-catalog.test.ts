import fc from "fast-check";
import { expect, test } from "vitest";
import { type DataFile, FILE_KINDS, type FileKindName } from "../../../src/engine/records/file-kinds.ts";
import { readCatalog } from "../../../src/engine/records/read-catalog.ts";
import { SEED } from "../../helpers/seed.ts";
import { catalogOf, inShort, readTexts, sourceOf, spoiled, TINY } from "../../helpers/tiny-folder.ts";

test("the tiny folder has no fault", () => {
  expect(readTexts(TINY).complaints.map(inShort)).toEqual([]);
});

test("the catalog holds everything that the files say", () => {
  const catalog = catalogOf();
  expect(catalog.maker).toEqual({
    name: "Hollin Tractor Works",
    title: "Hollin model changes",
    about: "What changed on Hollin tractors.",
    site: "https://hollin.example/changes/",
    language: "en",
    units: "us",
  });
  expect([...catalog.records.keys(), ...catalog.parts.keys(), ...catalog.components.keys()]).toEqual([
    "FR58-01",
    "HY59-01",
    "HT-201",
    "HT-290",
    "HT-101",
    "HT-102",
    "lift",
    "pump",
    "gasket",
  ]);
  expect([...catalog.bulletins.keys()]).toEqual(["TB-1"]);
  expect(catalog.cautions.map((caution) => caution.id)).toEqual(["pressure"]);
  expect(catalog.moved.map((move) => move.from)).toEqual(["HY-1", "HT-099"]);
  expect(catalog.words.mean).toEqual([{ say: ["lift", "hitch"], mean: "hydraulics" }]);
});

test("maker and words may be left out", () => {
  const catalog = catalogOf(spoiled({ "maker.yaml": undefined, "words.yaml": undefined }));
  expect(catalog.maker.title).toBe("Model changes");
  expect(catalog.words).toEqual({ ignore: [], plain: [], mean: [] });
});

test("without any file only the traits are missed", () => {
  expect(readCatalog([]).complaints.map(inShort)).toEqual([
    "vehicles/traits.yaml: the file is missing → describe there by which traits cars differ; the README shows one",
  ]);
});

test("the order of the files does not matter", () => {
  const files = Object.entries(TINY).map(([path, text]): DataFile => {
    const kind = (Object.keys(FILE_KINDS) as FileKindName[]).find((name) => FILE_KINDS[name].path.test(path));
    return { path, kind: kind as FileKindName, value: sourceOf(path, text).value };
  });
  const seen = (list: readonly DataFile[]): unknown => {
    const { catalog } = readCatalog(list);
    return [catalog?.records, catalog?.bulletins, catalog?.systems, catalog?.lines.map((line) => line.id)];
  };
  expect(seen([...files].reverse())).toEqual(seen(files));
});

const kinds = Object.keys(FILE_KINDS) as FileKindName[];
const junk = fc.anything({
  maxDepth: 4,
  withBigInt: false,
  key: fc.oneof(
    fc.constantFrom("id", "traits", "kind", "values", "scope", "parts", "built", "__proto__", "constructor", "to"),
    fc.string(),
  ),
});

test("whatever value a file has, complaints come back and nothing is thrown", () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(fc.constantFrom(...kinds), junk), { maxLength: 4 }), (values) => {
      const files = values.map(([kind, value], i): DataFile => ({ path: `x/${i}.yaml`, kind, value }));
      const { catalog, complaints } = readCatalog(files);
      expect(catalog === undefined).toBe(complaints.some((complaint) => complaint.severity === "error"));
    }),
    { seed: SEED, numRuns: 1000 },
  );
});

/** Places of the folder's values: each may hold something else. */
const HOSTILE: unknown[] = [
  null,
  "",
  " ",
  "../../../etc/passwd",
  "<script>alert(1)</script>",
  "__proto__",
  "constructor",
  "all",
  "none",
  "||;;||",
  "line=B;at=K59#0412+;eq=PT",
  "at=K59#99999999999999999999+",
  "x".repeat(100_000),
  -1,
  0,
  1e308,
  Number.MAX_SAFE_INTEGER,
  Number.MIN_SAFE_INTEGER,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  true,
  [],
  {},
  [[[[[[]]]]]],
  { __proto__: null, toString: 1 },
  JSON.parse('{"__proto__": {"polluted": true}}'),
];

test("any one value of the tiny folder may be anything: complaints come back and nothing is thrown", () => {
  const files = Object.entries(TINY).map(([path, text]) => {
    const kind = kinds.find((name) => FILE_KINDS[name].path.test(path)) as FileKindName;
    return { path, kind, value: sourceOf(path, text).value };
  });
  fc.assert(
    fc.property(
      fc.nat(files.length - 1),
      fc.array(fc.nat(1000), { minLength: 1, maxLength: 6 }),
      fc.constantFrom(...HOSTILE),
      (which, steps, value) => {
        const list = structuredClone(files);
        putIn(list[which]?.value, steps, value);
        const { catalog, complaints } = readCatalog(list);
        expect(catalog === undefined).toBe(complaints.some((complaint) => complaint.severity === "error"));
      },
    ),
    { seed: SEED, numRuns: 700 },
  );
  expect({}).not.toHaveProperty("polluted");
}, 60_000);

/** Walks into a value, one step a number, and puts something else where the steps end. */
function putIn(value: unknown, steps: readonly number[], other: unknown): void {
  if (typeof value !== "object" || value === null) return;
  const keys = Object.keys(value);
  if (keys.length === 0) return;
  const key = keys[(steps[0] as number) % keys.length] as string;
  const inner = (value as Record<string, unknown>)[key];
  if (steps.length === 1 || typeof inner !== "object" || inner === null)
    (value as Record<string, unknown>)[key] = other;
  else putIn(inner, steps.slice(1), other);
}
