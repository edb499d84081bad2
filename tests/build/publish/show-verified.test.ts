import { expect, test } from "vitest";
import { showVerified } from "../../../src/build/publish/show-verified.ts";

const WHOLE = { files: 1200, missing: [], changed: [], foreign: [] };

test("a whole site", () => {
  expect(showVerified(WHOLE, "_site")).toBe("_site holds the site whole: 1,200 files as they were built.");
});

test("what is wrong stands above the verdict", () => {
  const verified = { ...WHOLE, files: 1, changed: ["index.html"], foreign: ["notes.txt"] };
  expect(showVerified(verified, "up").split("\n")).toEqual([
    "changed: index.html",
    "not of the site: notes.txt",
    "up is not the site that was built: of 1 file 0 missing, 1 changed. Upload it again.",
  ]);
});

test("of thousands only some are named", () => {
  const missing = Array.from({ length: 1021 }, (_, i) => `page-${i}`);
  const lines = showVerified({ ...WHOLE, missing }, "up").split("\n");
  expect(lines).toHaveLength(22);
  expect(lines[20]).toBe("missing: 1,001 more");
});
