import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { onDisk, TINY } from "../helpers/tiny-folder.ts";

const run = (...args: string[]) =>
  spawnSync(process.execPath, ["scripts/new.ts", ...args], { encoding: "utf8", input: "" });
const RECORD = [
  "record",
  "--title",
  "Longer",
  "--kinds",
  "part",
  "--components",
  "pump",
  "--starts",
  "1960",
  "--scope",
  "my=1960",
  "--issued",
  "1960-03-01",
  "--story",
  "It grew.",
];

test("a record is written, with the address of its schema in front", async () => {
  const folder = await onDisk(TINY);
  const { status, stdout } = run(...RECORD, "--data", folder);
  expect(status).toBe(0);
  expect(stdout).toMatch(`Wrote ${folder}/changes/1960/HY60-01.md\nNext: `);
  const text = readFileSync(`${folder}/changes/1960/HY60-01.md`, "utf8");
  expect(text.startsWith("---\n# yaml-language-server: $schema=")).toBe(true);
});

// words after the command, what is said
test.each([
  [["settings", "x"], "'x' is one word too many: put quotes round words that belong together"],
  [["part", "--wrong"], "Unknown option '--wrong'"],
])("%j is misuse", (args, said) => {
  const { status, stderr } = run(...args);
  expect(status).toBe(2);
  expect(stderr.split("\n")[0]).toEqual(said);
});
