import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { fileText } from "../../../src/build/write/file-text.ts";
import { FILE_KINDS, type FileKindName, kindOf } from "../../../src/engine/records/file-kinds.ts";
import { DATA } from "../../helpers/demo-data.ts";
import { sourceOf, TINY } from "../../helpers/tiny-folder.ts";

const valueIn = (path: string, text: string): unknown =>
  FILE_KINDS[kindOf(path) as FileKindName].shape.parse(sourceOf(path, text).value);
const again = (path: string, text: string): string =>
  fileText(kindOf(path) as FileKindName, valueIn(path, text) as Record<string, unknown>);

describe("written and read again, a file says the same", () => {
  test.each(Object.entries(TINY))("%s of the tiny folder", (path, text) => {
    expect(valueIn(path, again(path, text))).toEqual(valueIn(path, text));
  });

  test("every file of the demonstration", () => {
    const paths = readdirSync(DATA, { recursive: true, encoding: "utf8" }).filter((path) => kindOf(path));
    expect(paths.length).toBeGreaterThan(100);
    for (const path of paths) {
      const text = readFileSync(`${DATA}/${path}`, "utf8");
      const written = again(path, text);
      expect(valueIn(path, written), path).toEqual(valueIn(path, text));
      expect(again(path, written), path).toBe(written);
    }
  });
});
