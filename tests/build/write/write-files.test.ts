import { chmodSync, existsSync, mkdirSync, readdirSync, readFileSync, statSync } from "node:fs";
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
    ["parts/b.yaml", "a.yaml"],
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

test("a file keeps its rights", async () => {
  const folder = await onDisk({ "a.yaml": "a" });
  chmodSync(join(folder, "a.yaml"), 0o640);
  writeFiles(folder, new Map([["a.yaml", "A"]]));
  expect(statSync(join(folder, "a.yaml")).mode & 0o777).toBe(0o640);
});

// what stands in the way; what should go, of which 'twice' can go only once: then all the others have changed already
test.each([
  ["a text cannot be written", ".z.yaml.next", ["a.yaml"]],
  ["a folder lies in the place of a file", "z.yaml/inside", ["a.yaml"]],
  ["a file that should go is none", "gone.yaml/inside", ["a.yaml", "gone.yaml"]],
  ["the last step fails", "other", ["a.yaml", "twice.yaml", "twice.yaml"]],
])("when %s, everything is as it was", async (_, obstacle, gone) => {
  const folder = await onDisk({ "a.yaml": "a", "b.yaml": "b", "twice.yaml": "t" });
  mkdirSync(join(folder, obstacle), { recursive: true });
  const before = filesIn(folder);
  const files = new Map([
    ["b.yaml", "B"],
    ["new/c.yaml", "C"],
    ["z.yaml", "Z"],
  ]);
  expect(() => writeFiles(folder, files, gone)).toThrow();
  expect(filesIn(folder)).toEqual(before);
  expect(existsSync(join(folder, "new"))).toBe(false);
});
