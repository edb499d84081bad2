import { spawnSync } from "node:child_process";
import { resolve } from "node:path";
import { describe, expect, test } from "vitest";

const PROGRAM = `
import { misuse, readOptions } from ${JSON.stringify(resolve("scripts/command-line.ts"))};
const USAGE = "try FILE [--data DIR] [--json]";
process.argv.splice(1, 0, "try.ts"); // What is evaluated has no file, and its words begin one place earlier.
const { values, positionals } = readOptions(USAGE, {
  options: { data: { type: "string", default: "data" }, json: { type: "boolean", default: false } },
  allowPositionals: true,
});
if (positionals.length > 1) misuse(USAGE, "one file only");
console.log(values.data, values.json, ...positionals);
`;

function run(...words: string[]): { status: number | null; stdout: string; stderr: string } {
  return runUnder({}, words);
}

function runUnder(env: NodeJS.ProcessEnv, words: readonly string[], program = PROGRAM) {
  const args = ["--input-type=module-typescript", "--eval", program, "--", ...words];
  const { status, stdout, stderr } = spawnSync(process.execPath, args, {
    encoding: "utf8",
    env: { ...process.env, ...env },
  });
  return { status, stdout, stderr };
}

const USAGE = "try FILE [--data DIR] [--json]\n";

test("what is understood is handed over, with its defaults", () => {
  expect(run("--json", "a.md")).toEqual({
    status: 0,
    stdout: "data true a.md\n",
    stderr: "",
  });
});

test("an option that npm kept for itself is asked for again, for it did nothing", () => {
  expect(runUnder({ npm_config_data: "elsewhere" }, [])).toEqual({
    status: 2,
    stdout: "",
    stderr: `npm kept --data for itself: write '--' in front of the options\n\n${USAGE}`,
  });
});

test("a fault of the system is one line", () => {
  const reads = `${PROGRAM}\nimport { readFileSync } from "node:fs";\nreadFileSync("nowhere/at/all");`;
  const { status, stderr } = runUnder({}, [], reads);
  expect([status, stderr]).toEqual([1, "ENOENT: no such file or directory, open 'nowhere/at/all'\n"]);
});

test("--help prints the usage, whatever else is wrong", () => {
  expect(run("--wrong", "--help")).toEqual({ status: 0, stdout: USAGE, stderr: "" });
});

describe("what is wrong is said in one line above the usage, with exit code 2 and no trace", () => {
  // words, what is said
  test.each([
    [["--wrong"], "Unknown option '--wrong'"],
    [["--data"], "Option '--data <value>' argument missing"],
    [["--data", "--json"], "Option '--data' argument is ambiguous"],
    [["--json=yes"], "Option '--json' does not take an argument"],
    [["a.md", "b.md"], "one file only"],
    [["--", "a.md", "--help"], "one file only"],
  ])("%j: %s", (words, said) => {
    expect(run(...words)).toEqual({ status: 2, stdout: "", stderr: `${said}\n\n${USAGE}` });
  });
});
