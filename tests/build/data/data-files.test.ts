import { expect, test } from "vitest";
import { dataFilesOf } from "../../../src/build/data/data-files.ts";
import { sourceOf } from "../../helpers/tiny-folder.ts";

test("every file has its kind and what it says; a broken one its text, and what lies where no kind does is left out", () => {
  const sources = ["maker.yaml", "changes/1959/X.md", "elsewhere.yaml"].map(
    (path) => [path, sourceOf(path, path === "maker.yaml" ? "name: a" : "no facts")] as const,
  );
  expect(dataFilesOf(sources)).toEqual([
    { path: "maker.yaml", kind: "maker", value: { name: "a" }, broken: false },
    { path: "changes/1959/X.md", kind: "change", value: "no facts", broken: true },
  ]);
});
