/** What the engine and the build export has a test of the same name: beside it in tests/, or among the outside judges. */
import { existsSync } from "node:fs";
import { basename } from "node:path";
import { expect, test } from "vitest";
import { codeFiles } from "../helpers/code-files.ts";

// source, why it has no test of its own
const EXCEPTIONS: Record<string, string> = {
  "src/build/build-site.ts": "every test of the built site runs it",
  "src/build/bundle.ts": "every test of the built site runs it",
  "src/build/index-search.ts": "every test of the built site runs it",
  "src/build/open-site.ts": "three lines for Eleventy started by itself",
  "src/engine/scope/boxes.ts": "the test of sweep.ts, which alone uses it, compares every verdict",
  "src/engine/scope/clause-table.ts": "the test of sweep.ts, which alone uses it, compares every verdict",
  "src/build/write-pages.ts": "every test of the built site runs it",
};

/** A file of types and tables only has nothing to run. */
const sources = codeFiles(".", ["src/engine", "src/build"], /(?<!\.d)\.ts$/)
  .filter(({ text }) => /^export (async )?(function\*?|class) /m.test(text))
  .map(({ path }) => path);

function testsOf(source: string): string[] {
  return [
    source.replace(/^src/, "tests").replace(/\.ts$/, ".test.ts"),
    `tests/outside/${basename(source, ".ts")}.test.ts`,
  ].filter((path) => existsSync(path));
}

test("every source with a function has a test of its name, or a reason", () => {
  expect(sources.length).toBeGreaterThan(50);
  expect(sources.filter((source) => testsOf(source).length === 0 && !(source in EXCEPTIONS))).toEqual([]);
});

test("no reason outlives its need", () => {
  expect(Object.keys(EXCEPTIONS).filter((source) => !sources.includes(source) || testsOf(source).length > 0)).toEqual(
    [],
  );
});

test("every test beside the engine and the build has a source of its name", () => {
  const tests = codeFiles(".", ["tests/engine", "tests/build"], /\.test\.ts$/).map(({ path }) => path);
  const orphans = tests.filter((path) => !existsSync(path.replace(/^tests/, "src").replace(/\.test\.ts$/, ".ts")));
  expect(orphans).toEqual([]);
});
