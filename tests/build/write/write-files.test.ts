import {
  chmodSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { writeFiles } from "../../../src/build/write/write-files.ts";
import { onDisk } from "../../helpers/tiny-folder.ts";

const filesIn = (folder: string): Record<string, string> =>
  Object.fromEntries(
    readdirSync(folder, { recursive: true, encoding: "utf8" })
      .sort()
      .map((path) => [
        path,
        statSync(join(folder, path)).isFile() ? readFileSync(join(folder, path), "utf8") : "(folder)",
      ]),
  );

test("new files with their folders, changed ones, and those that go", async () => {
  const folder = await onDisk({ "a.yaml": "a", "parts/b.yaml": "b", "parts/c.yaml": "c" });
  writeFiles(
    folder,
    new Map([
      ["a.yaml", "A"],
      ["deep/er/d.yaml", "D"],
      ["parts/e.yaml", "b"],
    ]),
    new Map([
      ["parts/b.yaml", "parts/e.yaml"],
      ["a.yaml", "a.yaml"],
    ]),
  );
  expect(filesIn(folder)).toEqual({
    "a.yaml": "A",
    deep: "(folder)",
    "deep/er": "(folder)",
    "deep/er/d.yaml": "D",
    parts: "(folder)",
    "parts/c.yaml": "c",
    "parts/e.yaml": "b",
  });
});

test("a file keeps its rights, under another name too", async () => {
  const folder = await onDisk({ "a.yaml": "a", "b.yaml": "b" });
  chmodSync(join(folder, "a.yaml"), 0o640);
  chmodSync(join(folder, "b.yaml"), 0o600);
  const files = new Map([
    ["a.yaml", "A"],
    ["c.yaml", "B"],
  ]);
  writeFiles(folder, files, new Map([["b.yaml", "c.yaml"]]));
  expect(statSync(join(folder, "a.yaml")).mode & 0o777).toBe(0o640);
  expect(statSync(join(folder, "c.yaml")).mode & 0o777).toBe(0o600);
});

test.each([
  ["changed", "a.yaml"],
  ["made to go", "b.yaml"],
])("a file that may only be read is not %s", async (_, path) => {
  const folder = await onDisk({ "a.yaml": "a", "b.yaml": "b" });
  chmodSync(join(folder, path), 0o444);
  const write = () => writeFiles(folder, new Map([["a.yaml", "A"]]), new Map([["b.yaml", "a.yaml"]]));
  expect(write).toThrow(`${folder}/${path} is read-only: allow writing it, and run the command again`);
  expect(filesIn(folder)).toEqual({ "a.yaml": "a", "b.yaml": "b" });
});

// what somebody did since the files were read, and what is said
test.each([
  ["changed one", "a.yaml", "his", "a.yaml was changed meanwhile: run the command again"],
  ["removed one", "a.yaml", undefined, "a.yaml was changed meanwhile: run the command again"],
  ["changed one that should go", "b.yaml", "his", "b.yaml was changed meanwhile: run the command again"],
  ["made one", "new/c.yaml", "his", "new/c.yaml is there already: "],
])("when somebody %s meanwhile, nothing is written", async (_, path, text, said) => {
  const read = new Map([
    ["a.yaml", "a"],
    ["b.yaml", "b"],
  ]);
  const folder = await onDisk(Object.fromEntries(read));
  mkdirSync(join(folder, "new"));
  if (text === undefined) rmSync(join(folder, path));
  else writeFileSync(join(folder, path), text);
  const before = filesIn(folder);
  const files = new Map([
    ["a.yaml", "A"],
    ["new/c.yaml", "C"],
  ]);
  expect(() => writeFiles(folder, files, new Map([["b.yaml", "new/c.yaml"]]), read)).toThrow(`${folder}/${said}`);
  expect(filesIn(folder)).toEqual(before);
});

test("a link is written through, and one that leads nowhere keeps its place", async () => {
  const folder = await onDisk({ "elsewhere/a.yaml": "a", "data/b.yaml": "b" });
  const data = join(folder, "data");
  symlinkSync("../elsewhere/a.yaml", join(data, "a.yaml"));
  symlinkSync("../elsewhere/none.yaml", join(data, "c.yaml"));
  writeFiles(data, new Map([["a.yaml", "A"]]), new Map(), new Map([["a.yaml", "a"]]));
  expect(readlinkSync(join(data, "a.yaml"))).toBe("../elsewhere/a.yaml");
  expect(readFileSync(join(folder, "elsewhere/a.yaml"), "utf8")).toBe("A");
  expect(() => writeFiles(data, new Map([["c.yaml", "C"]]), new Map(), new Map())).toThrow("c.yaml is there already");
  // Nor where nobody says what was read.
  expect(() => writeFiles(data, new Map([["c.yaml", "C"]]))).toThrow("c.yaml is there already");
  expect(readlinkSync(join(data, "c.yaml"))).toBe("../elsewhere/none.yaml");
  expect(readdirSync(join(folder, "elsewhere"))).toEqual(["a.yaml"]);
});

test("many writings in one go do not pile up listeners", async () => {
  const folder = await onDisk({ "a.yaml": "0" });
  const before = process.listenerCount("SIGINT");
  for (let i = 0; i < 3; i++) writeFiles(folder, new Map([["a.yaml", String(i)]]));
  expect(process.listenerCount("SIGINT")).toBe(before + 1);
  await new Promise((resolve) => setImmediate(() => setImmediate(resolve)));
  expect(process.listenerCount("SIGINT")).toBe(before);
});

// what stands in the way; what should go, of which 'twice' can go only once: then all the others have changed already
test.each([
  ["a text cannot be written", `.z.yaml.${process.pid}.next`, ["a.yaml"]],
  ["a folder lies in the place of a file", "z.yaml/inside", ["a.yaml"]],
  ["a file that should go is none", "gone.yaml/inside", ["a.yaml", "gone.yaml"]],
  ["the last step fails", "other", ["a.yaml", "twice.yaml", "./twice.yaml"]],
])("when %s, everything is as it was", async (_, obstacle, gone) => {
  const folder = await onDisk({ "a.yaml": "a", "b.yaml": "b", "twice.yaml": "t" });
  mkdirSync(join(folder, obstacle), { recursive: true });
  const before = filesIn(folder);
  const files = new Map([
    ["b.yaml", "B"],
    ["new/c.yaml", "C"],
    ["z.yaml", "Z"],
  ]);
  expect(() => writeFiles(folder, files, new Map(gone.map((path) => [path, "z.yaml"])))).toThrow();
  expect(filesIn(folder)).toEqual(before);
  expect(existsSync(join(folder, "new"))).toBe(false);
});
