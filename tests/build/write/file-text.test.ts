import { readdirSync, readFileSync } from "node:fs";
import { isDeepStrictEqual } from "node:util";
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
    const texts = paths.map((path) => [path, readFileSync(`${DATA}/${path}`, "utf8")] as const);
    const isOtherwise = ([path, text]: readonly [string, string]): boolean =>
      !isDeepStrictEqual(valueIn(path, again(path, text)), valueIn(path, text));
    expect(texts.filter(isOtherwise).map(([path]) => path)).toEqual([]);
  });
});

test("the address of its schema stands in the first line that an editor reads as YAML", () => {
  const of = (path: string): string =>
    fileText(kindOf(path) as FileKindName, valueIn(path, TINY[path] as string) as Record<string, unknown>, "../a.json");
  expect(of("moved.yaml").split("\n")[0]).toBe("# yaml-language-server: $schema=../a.json");
  expect(of("bulletins/TB-1.md").split("\n").slice(0, 3)).toEqual([
    "---",
    "# yaml-language-server: $schema=../a.json",
    "id: TB-1",
  ]);
  expect(valueIn("moved.yaml", of("moved.yaml"))).toEqual(valueIn("moved.yaml", TINY["moved.yaml"] as string));
});
