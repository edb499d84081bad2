import { symlink } from "node:fs/promises";
import { join } from "node:path";
import { expect, test } from "vitest";
import { type ReadFolder, readFolder } from "../../../src/build/data/read-folder.ts";
import { MAX_BYTES } from "../../../src/build/data/source.ts";
import { inShort, onDisk, spoiled, TINY } from "../../helpers/tiny-folder.ts";

const said = ({ findings }: ReadFolder): string[] =>
  findings.map(
    (finding) => `${finding.severity} ${finding.position.line}:${finding.position.column} ${inShort(finding)}`,
  );

test("a faultless folder gives its catalog", async () => {
  const read = await readFolder(await onDisk(TINY));
  expect(said(read)).toEqual([]);
  expect(read.files).toBe(Object.keys(TINY).length);
  expect([...(read.catalog?.records.keys() ?? [])]).toEqual(["FR58-01", "HY59-01"]);
});

test("all complaints come at once: errors before warnings, by file, by place", async () => {
  const folder = await onDisk({
    ...spoiled({
      "words.yaml": ["say: [lift, hitch]", "say: []"],
      "changes/1959/HY59-01.md": ["part: HT-101, scope: line=B; at=K59#0412-", "part: XX-999, scope: line=Q; mi=1"],
      "bulletins/TB-1.md": ["title: Pumps\n", ""],
    }),
    "NOTES.md": "for ourselves",
    "makre.yaml": "name: x",
    "parts/deep/pump.yaml": "component: pump",
    "parts/pump.csv": "not read at all",
    ".hidden.yaml": "not read at all",
  });
  const read = await readFolder(folder);
  expect(read.catalog).toBeUndefined();
  expect(said(read)).toEqual([
    "error 2:1 bulletins/TB-1.md title: 'title' is missing → Plain words, one line.",
    "error 10:26 changes/1959/HY59-01.md built.0.part: no part is called 'XX-999' → add it to parts/, or mend the name",
    "error 10:46 changes/1959/HY59-01.md built.0.scope: model line has no value 'Q' → values are B, H",
    "error 10:49 changes/1959/HY59-01.md built.0.scope: no trait is called 'mi' → did you mean 'my'?",
    "error 3:12 words.yaml mean.0.say: 'say' is empty → mend the field",
    "warning 1:1 NOTES.md: no kind of file lies here, so it is not read → move it to vehicles/, components/, parts/, changes/<year>/ or bulletins/",
    "warning 1:1 makre.yaml: no kind of file lies here, so it is not read → did you mean maker.yaml?",
    "warning 1:1 parts/deep/pump.yaml: no kind of file lies here, so it is not read → move it to vehicles/, components/, parts/, changes/<year>/ or bulletins/",
  ]);
});

test("warnings alone do not stand in the way of the catalog", async () => {
  const read = await readFolder(await onDisk({ ...TINY, "NOTES.md": "for ourselves" }));
  expect(read.findings).toHaveLength(1);
  expect(read.catalog).toBeDefined();
});

test("a file that is too large is refused before it is read", async () => {
  const read = await readFolder(await onDisk({ ...TINY, "parts/gasket.yaml": "#".repeat(MAX_BYTES + 1) }));
  expect(read.catalog).toBeUndefined();
  // Nobody knows what stands in it, so its numbers are not called unknown elsewhere.
  expect(said(read)).toEqual([
    "error 1:1 parts/gasket.yaml: the file is too large (1000001 bytes) → keep it under 1000000 bytes; split it into several files",
  ]);
});

test("a file that is not UTF-8 is refused", async () => {
  const bytes = new Uint8Array([0x6e, 0x61, 0x6d, 0x65, 0x3a, 0x20, 0xff, 0xfe]);
  expect(said(await readFolder(await onDisk({ ...TINY, "maker.yaml": bytes })))).toEqual([
    "error 1:1 maker.yaml: the file is not UTF-8 text → save it with the encoding UTF-8",
  ]);
});

test("a file with a byte order mark and the line ends of Windows is read like any other", async () => {
  const windows = Object.fromEntries(
    Object.entries(TINY).map(([path, text]) => [path, `\uFEFF${text.replaceAll("\n", "\r\n")}`]),
  );
  const read = await readFolder(await onDisk(windows));
  expect(said(read)).toEqual([]);
  expect(read.catalog?.bulletins.get("TB-1")?.facts.text).toBe(
    "See [[HY59-01]], [[HT-102|the long pump]] and [[pump]].",
  );
});

test("an empty folder misses its traits", async () => {
  expect(said(await readFolder(await onDisk({})))).toEqual([
    "error 1:1 vehicles/traits.yaml: the file is missing → describe there by which traits cars differ; the README shows one",
  ]);
});

test("traits that are no YAML are broken, not missing", async () => {
  expect(said(await readFolder(await onDisk(spoiled({ "vehicles/traits.yaml": "traits: [\n" }))))).toEqual([
    "error 2:1 vehicles/traits.yaml: this is not YAML: Flow sequence in block collection must be sufficiently indented and end with a ] → check quotes and indentation",
  ]);
});

test("a link that leads out of the folder is not followed", async () => {
  const outside = await onDisk({ "secret.yaml": "component: secret" });
  const folder = await onDisk(TINY);
  await symlink(join(outside, "secret.yaml"), join(folder, "parts", "secret.yaml"));
  await symlink(outside, join(folder, "changes", "1960"));
  expect(said(await readFolder(folder))).toEqual([]);
});

test("an id that leads out of the folder is refused wherever it stands", async () => {
  const folder = await onDisk(
    spoiled({
      "changes/1958/FR58-01.md": ["id: FR58-01", "id: ../../../FR58-01"],
      "bulletins/TB-1.md": ["id: TB-1", "id: a/b"],
      "parts/pump.yaml": ["parts:", "parts:\n  - { number: ..\\x, name: x }"],
      "components/frame.yaml": ["id: frame", "id: /etc"],
      "moved.yaml": ["from: HY-1", "from: ../HY-1"],
    }),
  );
  const read = await readFolder(folder);
  expect(read.catalog).toBeUndefined();
  expect(read.findings.map((finding) => `${finding.file}: ${finding.message}`)).toEqual(
    [
      ["bulletins/TB-1.md", "id"],
      ["changes/1958/FR58-01.md", "id"],
      ["components/frame.yaml", "id"],
      ["moved.yaml", "from"],
      ["parts/pump.yaml", "number"],
    ].map(([file, field]) => `${file}: '${field}': letters, digits, - and _ only, beginning with a letter or digit`),
  );
});
