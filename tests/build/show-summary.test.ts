import { expect, test } from "vitest";
import type { Finding } from "../../src/build/data/read-folder.ts";
import { isBuilt, showSummary } from "../../src/build/show-summary.ts";

const paths = { data: "data", site: "_site" };
const address = "https://hollin.example/changes/";
const counts = [
  [1234, "records"],
  [20, "bulletins"],
] as const;

const finding = (severity: "error" | "warning"): Finding => ({
  severity,
  rule: "shape",
  file: "maker.yaml",
  path: [],
  message: "no field is called 'colour' here",
  hint: "fields are name, title",
  position: { line: 3, column: 1, length: 6 },
  shown: "colour: red",
});

test("a build says what it made", () => {
  expect(isBuilt({ findings: [], counts })).toBe(true);
  expect(showSummary({ findings: [], counts, address }, paths)).toBe("Built _site: 1,234 records, 20 bulletins.");
  expect(showSummary({ findings: [], counts }, paths)).toBe(
    "Built _site: 1,234 records, 20 bulletins.\nNo maker.yaml says where it will be published: its feeds, its sitemap and the links to copy lead to this machine.",
  );
});

test("warnings are counted, and where to read them is told", () => {
  const summary = { findings: [finding("warning")], counts, address };
  expect(isBuilt(summary)).toBe(true);
  expect(showSummary(summary, paths)).toBe(
    "Built _site: 1,234 records, 20 bulletins.\n1 warning: npm run check shows them.",
  );
});

test("with an error nothing is built, and everything that is wrong is shown", () => {
  const summary = { findings: [finding("error"), finding("warning")], counts: [] };
  expect(isBuilt(summary)).toBe(false);
  expect(showSummary(summary, paths).split("\n")).toEqual([
    "data/maker.yaml:3:1: error: no field is called 'colour' here",
    "     3 | colour: red",
    "       | ^^^^^^",
    "    → fields are name, title",
    "",
    "data/maker.yaml:3:1: warning: no field is called 'colour' here",
    "     3 | colour: red",
    "       | ^^^^^^",
    "    → fields are name, title",
    "",
    "1 error, 1 warning: nothing was built, _site stays as it was.",
  ]);
});
