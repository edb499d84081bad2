/** A folder that is read again after a change gives what it gives when it is read for the first time. */
import { describe, expect, test } from "vitest";
import { answerPart } from "../../../src/engine/answers/answer-part.ts";
import { answerRecord } from "../../../src/engine/answers/answer-record.ts";
import { openKnowledge } from "../../../src/engine/answers/knowledge.ts";
import type { Catalog } from "../../../src/engine/records/catalog.ts";
import { type DataFile, kindOf } from "../../../src/engine/records/file-kinds.ts";
import { asksWhatIsFitted, type Kept } from "../../../src/engine/records/kept.ts";
import { type ReadCatalog, readCatalog } from "../../../src/engine/records/read-catalog.ts";
import { packSet } from "../../../src/engine/scope/pack.ts";
import { type Folder, type Spoil, sourceOf, spoiled } from "../../helpers/tiny-folder.ts";

const RECORD = "changes/1959/HY59-01.md";
const FRAME = "changes/1958/FR58-01.md";

// what an editor does, one after the other; each is done to the faultless folder
const STATES: [what: string, spoil: Spoil][] = [
  ["nothing yet", {}],
  ["another title", { [FRAME]: ["title: Frame", "title: The frame"] }],
  ["another scope", { [FRAME]: ["scope: my>=1958", "scope: my>=1959; eq=WN"] }],
  [
    "a part that is fitted today is asked for by one more record",
    { [FRAME]: ["scope: my>=1958", "scope: fitted = HT-290"] },
  ],
  ["and by another one before it", { [FRAME]: ["scope: my>=1958", "scope: fitted=HT-102,HT-290"] }],
  ["by none any more", { [RECORD]: ["scope: fitted=HT-201", "scope: all"] }],
  ["a record names a part that is not there", { [RECORD]: ["part: HT-101, scope", "part: HT-11, scope"] }],
  ["the part is taken away instead", { "parts/gasket.yaml": ["HT-201", "HT-202"] }],
  ["a part is added", { "parts/gasket.yaml": ["parts:\n", "parts:\n  - { number: HT-203, name: flat gasket }\n"] }],
  [
    "a component gets another name",
    { "components/hydraulics.yaml": ["name: pump gasket", "name: gasket of the pump"] },
  ],
  ["a line was built longer", { "vehicles/badger.yaml": ["my=1957-1960", "my=1957-1961"] }],
  [
    "a trait gets one more value",
    { "vehicles/traits.yaml": ["{ id: D, label: Dunmoor }", "{ id: D, label: Dunmoor }, { id: E, label: Elm }"] },
  ],
  ["a trait is taken away", { "vehicles/traits.yaml": ["  - { id: WN,", "  # - { id: WN,"] }],
  ["a file that is no YAML", { [FRAME]: "---\nid: [\n---\n" }],
  ["a record is gone", { [FRAME]: undefined }],
  [
    "a record is withdrawn",
    { [RECORD]: ["issued: 1959-02-01", "issued: 1959-02-01\nwithdrawn: 1960-01-01, was wrong"] },
  ],
  [
    "two records with one number",
    {
      "changes/1957/HY59-01.md": `---\nid: HY59-01\ntitle: Twin\nissued: 1957-01-01\nkinds: [part]\nstarts: early\nscope: all\n---\n\nTwin.\n`,
    },
  ],
  ["a bulletin that cites nothing known", { "bulletins/TB-1.md": ["[[pump]]", "[[pomp]]"] }],
  ["all as it was", {}],
];

const texts = new Map<string, DataFile>();

/** A file that did not change is the same object, as it is when a folder is read again. */
function filesOf(folder: Folder): DataFile[] {
  return Object.entries(folder)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([path, text]): DataFile[] => {
      const kind = kindOf(path);
      if (!kind) return [];
      const key = `${path} ${text}`;
      const source = sourceOf(path, text);
      const file = texts.get(key) ?? { path, kind, value: source.value, broken: source.faults.length > 0 };
      texts.set(key, file);
      return [file];
    });
}

/** The same, with objects of its own. */
function anew(files: readonly DataFile[]): DataFile[] {
  return files.map((file) => ({ ...file, value: structuredClone(file.value) }));
}

/** All of a catalog that pages are made from, as plain data. */
function plain(catalog: Catalog): unknown {
  const knowledge = openKnowledge(catalog, { layout: false });
  return {
    traits: catalog.space.traits,
    lines: catalog.lines.map(({ cars, ...line }) => ({ ...line, cars: packSet(cars) })),
    sets: [...catalog.records.values()].map(({ scope, stated }) => [
      packSet(scope.cars),
      ...stated.map((it) => ("scope" in it && it.scope ? packSet(it.scope.cars) : undefined)),
    ]),
    records: [...catalog.records.keys()].map((id) => answerRecord(knowledge, id)),
    parts: [...catalog.parts.keys()].map((number) => answerPart(knowledge, number)),
    components: [...catalog.components.values()],
    graph: knowledge.graph.export(),
  };
}

function expectSame(again: ReadCatalog, fresh: ReadCatalog): void {
  expect(again.complaints).toEqual(fresh.complaints);
  expect(again.catalog && plain(again.catalog)).toEqual(fresh.catalog && plain(fresh.catalog));
}

describe("read again with what was kept", () => {
  let kept: Kept | undefined;
  test.each(STATES)("%s", (_, spoil) => {
    const files = filesOf(spoiled(spoil));
    const again = readCatalog(files, kept);
    expectSame(again, readCatalog(anew(files)));
    kept = again.kept ?? kept;
  });

  test("from any of these states to any other", () => {
    const all = STATES.map(([, spoil]) => filesOf(spoiled(spoil)));
    for (const from of all) {
      const { kept: left } = readCatalog(from);
      for (const to of all) {
        const [again, fresh] = [readCatalog(to, left), readCatalog(anew(to))];
        expect(again.complaints).toEqual(fresh.complaints);
        expect(again.catalog?.space.traits).toEqual(fresh.catalog?.space.traits);
      }
    }
  });

  test("a record whose file is the same is taken over, as long as what it names is the same", () => {
    const first = readCatalog(filesOf(spoiled({})));
    const record = (read: ReadCatalog): unknown => read.catalog?.records.get("HY59-01");
    const title = readCatalog(filesOf(spoiled({ [FRAME]: ["title: Frame", "title: The frame"] })), first.kept);
    expect(record(title)).toBe(record(first));
    const parts = readCatalog(filesOf(spoiled({ "parts/gasket.yaml": ["round gasket", "flat gasket"] })), first.kept);
    expect(record(parts)).not.toBe(record(first));
  });
});

// what a file says, whether it may ask what is fitted today
test.each([
  [{ scope: "my=1959; fitted=HT-201" }, true],
  [{ built: [{ scope: "fitted != HT-201" }] }, true],
  [{ scope: "fitted\n  =HT-201" }, true],
  [{ story: "A longer pump was fitted." }, false],
  ["fitted=HT-201", false],
  [undefined, false],
])("%j asks what is fitted: %s", (value, asks) => {
  expect(asksWhatIsFitted({ value })).toBe(asks);
});
