import { mkdir, rename, rm, symlink, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, onTestFinished, test, vi } from "vitest";
import { findingsDocument } from "../../../src/build/data/findings-shape.ts";
import { type ReadFolder, readFolder } from "../../../src/build/data/read-folder.ts";
import { MAX_BYTES } from "../../../src/build/data/source.ts";
import { toSarif } from "../../../src/build/data/to-sarif.ts";
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
    "parst/pump.yaml": "component: pump",
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
    "error 3:12 words.yaml mean.0.say: 'say' is empty → write a list in brackets, with commas between",
    "warning 1:1 NOTES.md: no kind of file lies here, so it is not read → move it to vehicles/, components/, parts/, changes/<year>/ or bulletins/",
    "warning 1:1 makre.yaml: no kind of file lies here, so it is not read → did you mean maker.yaml?",
    "warning 1:1 parst/pump.yaml: no kind of file lies here, so it is not read → did you mean parts/pump.yaml?",
    "warning 1:1 parts/deep/pump.yaml: no kind of file lies here, so it is not read → did you mean parts/pump.yaml?",
  ]);
});

test("a folder under a wrong name comes before all other errors", async () => {
  const parts = Object.fromEntries(Object.entries(TINY).map(([path, text]) => [path.replace("parts/", "part/"), text]));
  const other = (parts["bulletins/TB-1.md"] as string).replace("id: TB-1", "id: TB-2");
  const read = await readFolder(await onDisk({ ...parts, "bulletins/TB-1.md": other }));
  expect(read.catalog).toBeUndefined();
  expect(said(read)).toEqual([
    "error 1:1 part/: the folder is not read, and seems to be parts/: 2 files lie in it, such as part/gasket.yaml. 18 complaints that only follow from this are not shown → call it parts/",
    "error 2:5 bulletins/TB-1.md id: bulletin 'TB-2' lies in bulletins/TB-1.md → call the file bulletins/TB-2.md",
  ]);
  findingsDocument.parse({ files: read.files, findings: read.findings, accepted: [] });
  // A folder has no lines, and a file has.
  expect(toSarif({ findings: read.findings, accepted: [] }, "data")).toMatchObject({
    runs: [
      {
        results: [
          { locations: [{ physicalLocation: expect.not.objectContaining({ region: expect.anything() }) }] },
          { locations: [{ physicalLocation: { region: { startLine: 2 } } }] },
        ],
      },
    ],
  });
  // The same bytes again, and after a reading of the folder before it was renamed.
  const again = await readFolder(
    await onDisk({ ...parts, "bulletins/TB-1.md": other }),
    await readFolder(await onDisk(TINY)),
  );
  expect(JSON.stringify(again.findings)).toBe(JSON.stringify(read.findings));
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
    "error 1:7 maker.yaml: the file is not UTF-8 text → save it with the encoding UTF-8",
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

test("a link is not followed, and that is said: what it stands for would be missed in silence", async () => {
  const outside = await onDisk({ "cautions.yaml": TINY["cautions.yaml"] as string });
  const folder = await onDisk(spoiled({ "cautions.yaml": undefined }));
  await symlink(join(outside, "cautions.yaml"), join(folder, "cautions.yaml"));
  await symlink(outside, join(folder, "changes", "1960"));
  await symlink(join(outside, "nowhere.yaml"), join(folder, "parts", "nowhere.yaml"));
  const link = "this is a link, and links are not followed → put the file itself here";
  expect(said(await readFolder(folder))).toEqual([
    `error 1:1 cautions.yaml: ${link}`,
    `error 1:1 changes/1960: ${link}`,
    `error 1:1 parts/nowhere.yaml: ${link}`,
  ]);
});

test("hidden files and folders are none of the folder's", async () => {
  const text = TINY["changes/1959/HY59-01.md"] as string;
  const folder = await onDisk({ ...TINY, "changes/.history/HY59-01.md": text, ".git/HY59-01.md": text });
  await symlink("nowhere", join(folder, "changes", ".#HY59-01.md"));
  const read = await readFolder(folder);
  expect(said(read)).toEqual([]);
  expect(read.files).toBe(Object.keys(TINY).length);
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
      ["bulletins/TB-1.md: 'id': 'a/b' holds '/'"],
      ["changes/1958/FR58-01.md: 'id': '../../../FR58-01' holds '/'"],
      ["components/frame.yaml: 'id': '/etc' holds '/'"],
      ["moved.yaml: 'from': '../HY-1' holds '/'"],
      ["parts/pump.yaml: 'number': '..\\x' holds '\\'"],
    ].map(
      ([said]) => `${said}; letters, digits and - _ . only, beginning with a letter or digit, no two dots in a row`,
    ),
  );
});

describe("a folder that was read before", () => {
  /** What was written just now may change again within the same tick of the clock; so the files are made to look older. */
  const later = (milliseconds = 60_000): void => {
    vi.setSystemTime(Date.now() + milliseconds);
    onTestFinished(() => void vi.useRealTimers());
  };
  const same = (a: ReadFolder, b: ReadFolder): string[] =>
    [...a.sources].filter(([path, source]) => b.sources.get(path) === source).map(([path]) => path);
  const all = Object.keys(TINY);

  test("is not read again where nothing changed", async () => {
    const folder = await onDisk(TINY);
    later();
    const before = await readFolder(folder);
    expect(same(before, await readFolder(folder, before))).toHaveLength(all.length);
  });

  test("is read again where files were written, put in the place of others, deleted, renamed and added", async () => {
    const folder = await onDisk(TINY);
    later();
    const before = await readFolder(folder);
    const at = (path: string): string => join(folder, path);
    await writeFile(at("maker.yaml"), `${TINY["maker.yaml"]}notice: Ask.\n`);
    // Of the same length, and not written but renamed over the old one, as many editors save.
    await writeFile(at("spare"), (TINY["cautions.yaml"] as string).replace("Lower", "Sink "));
    await rename(at("spare"), at("cautions.yaml"));
    await rm(at("words.yaml"));
    await rename(at("changes/1958"), at("changes/1960"));
    await mkdir(at("changes/1961"));
    await writeFile(at("changes/1961/XX61-01.md"), "---\nid: [\n---\n");
    const again = await readFolder(folder, before);
    const changed = ["maker.yaml", "cautions.yaml", "words.yaml", "changes/1958/FR58-01.md"];
    expect(same(before, again).sort()).toEqual(all.filter((path) => !changed.includes(path)).sort());
    const anew = await readFolder(folder);
    expect([...again.sources.keys()]).toEqual([...anew.sources.keys()]);
    expect(said(again)).toEqual(said(anew));
    expect(said(again)[0]).toContain("error 3:1 changes/1961/XX61-01.md: this is not YAML");
    await rm(at("changes/1961"), { recursive: true });
    expect((await readFolder(folder, again)).catalog?.maker.notice).toBe("Ask.");
  });

  test("is read again where a file was written only just before it was read", async () => {
    later(0); // The clock stands still.
    const folder = await onDisk(TINY);
    expect((await readFolder(folder)).stamps.size).toBe(0);
  });
});
