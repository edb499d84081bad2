/** The check as an editor starts it. What it finds is tested beside src/build/data. */
import { execFile } from "node:child_process";
import { cp, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterAll, expect, onTestFinished, test } from "vitest";
import { answerSchemas } from "../../src/build/schemas.ts";
import { judgedBy } from "../helpers/judged-by-ajv.ts";
import { onDisk, spoiled, TINY } from "../helpers/tiny-folder.ts";

interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Node keeps here what it made of the sources, and starts the command in half the time from the second time on. */
const compiled = await mkdtemp(join(tmpdir(), "check-compiled-"));
afterAll(() => rm(compiled, { recursive: true }));

function check(args: readonly string[], cwd = "."): Promise<Ran> {
  const env = { ...process.env, NODE_COMPILE_CACHE: compiled };
  return new Promise((done) => {
    execFile(process.execPath, [resolve("scripts/check.ts"), ...args], { cwd, env }, (error, out, err) =>
      done({ code: Number(error?.code ?? 0), out, err }),
    );
  });
}

const SLIPPED = spoiled({ "changes/1959/HY59-01.md": ["after a pump was fitted", "after the hydraulcis were fitted"] });

test("a slip is a warning among the findings, and no reason to fail", async () => {
  const folder = await onDisk(SLIPPED);
  const { code, out } = await check(["--data", folder]);
  expect(code).toBe(0);
  expect(out).toContain("HY59-01.md:30:23: warning: 'hydraulcis' looks like a slip");
  expect(out).toMatch(/: 1 warning\n$/);
  const json = await check(["--data", folder, "--json"]);
  const { findings } = JSON.parse(json.out) as { findings: object[] };
  expect(findings).toMatchObject([
    { severity: "warning", file: "changes/1959/HY59-01.md", position: { line: 30, column: 23, length: 10 } },
  ]);
});

test("a contradiction fails, in words, as JSON of the published shape, and as SARIF", async () => {
  const folder = await onDisk(spoiled({ "changes/1959/HY59-01.md": ["nominal: 130,", "nominal: 140,"] }));
  const { code, out } = await check(["--data", folder]);
  expect(code).toBe(1);
  expect(out).toContain("\n    check: aim-outside-window (HY59-01)\n");
  const json = await check(["--data", folder, "--json"]);
  expect(json.code).toBe(1);
  expect(judgedBy(answerSchemas().get("findings.json") as object)(JSON.parse(json.out))).toEqual([]);
  const sarif = await check(["--data", folder, "--sarif"]);
  expect(sarif.code).toBe(1);
  expect(JSON.parse(sarif.out)).toMatchObject({
    version: "2.1.0",
    runs: [{ results: [{ ruleId: "aim-outside-window" }] }],
  });
});

test("--rules tells one, or says which is meant; what is no option is said with the usage", async () => {
  expect((await check(["--rules", "delivery-circle"])).out).toContain("wrong, in changes/1959/HY59-01.md:");
  expect((await check(["--rules", "delivery-circles"])).code).toBe(2);
  expect((await check(["--colour"])).code).toBe(2);
  expect((await check(["--against", "nowhere"])).code).toBe(2);
});

test("--words lists what the vocabulary lacks, as text and as JSON", async () => {
  const folder = await onDisk(TINY);
  const { code, out } = await check(["--data", folder, "--words"]);
  expect(code).toBe(0);
  const [first = ""] = out.split("\n");
  expect(first.trim().split(/\s+/)).toEqual(["4", "oil", `${folder}/changes/1959/HY59-01.md:25:13`]);
  expect(out).toMatch(/\n\d+ words that no name, alias or saying of the data holds\n$/);
  const json = await check(["--data", folder, "--words", "--json"]);
  const { words, more } = JSON.parse(json.out) as { words: object[]; more: number };
  expect(words).toHaveLength(out.trim().split("\n").length - 1);
  expect(words[0]).toEqual({ word: "oil", count: 4, file: "changes/1959/HY59-01.md", line: 25, column: 13 });
  expect(more).toBe(0);
});

test("--words of the demonstration are a hundred, and it says how many more there are", async () => {
  const { out } = await check(["--words"]);
  expect(out.trim().split("\n")).toHaveLength(101);
  expect(out).toMatch(/\n100 of \d+ words that no name, alias or saying of the data holds\n$/);
});

test.each([["--words"], ["--accepted"], []])(
  "with an error in the data the errors come, whatever was asked: %s",
  async (...asked) => {
    const folder = await onDisk({ ...SLIPPED, "vehicles/traits.yaml": "traits: [" });
    const { code, out } = await check(["--data", folder, ...asked]);
    expect(code).toBe(1);
    expect(out).toContain("vehicles/traits.yaml:1:10: error: this is not YAML");
    expect(out).not.toContain("hydraulcis");
  },
);

test("a program that asks for words gets nothing of another shape", async () => {
  const folder = await onDisk({ ...SLIPPED, "vehicles/traits.yaml": "traits: [" });
  const { code, out, err } = await check(["--data", folder, "--words", "--json"]);
  expect([code, out]).toEqual([1, ""]);
  expect(err).toContain("vehicles/traits.yaml:1:10: error: this is not YAML");
});

test("what does not go together is refused", async () => {
  const { code, err } = await check(["--json", "--sarif"]);
  expect([code, err.split("\n")[0]]).toEqual([2, "--json and --sarif do not go together"]);
});

test("the README shows what is said of a slip in its first record", async () => {
  const readme = await readFile("README.md", "utf8");
  const record = /^```markdown\n([\s\S]*?)^```$/m.exec(readme)?.[1] as string;
  const warning = [...readme.matchAll(/^```.*\n([\s\S]*?)^```$/gm)]
    .map(([, text]) => text as string)
    .find((text) => text.includes(" looks like a slip")) as string;
  const [, line, shown] = /^ *(\d+) \| (.*)$/m.exec(warning) as RegExpExecArray;
  const lines = record.split("\n");
  lines[Number(line) - 1] = shown as string;
  const folder = await mkdtemp(join(tmpdir(), "check-"));
  onTestFinished(() => rm(folder, { recursive: true }));
  await cp("data", join(folder, "data"), { recursive: true });
  await writeFile(join(folder, warning.slice(0, warning.indexOf(":"))), lines.join("\n"));
  const { code, out } = await check([], folder);
  expect(out).toContain(warning.trim());
  expect(out).toMatch(/: 1 warning, \d+ accepted/);
  expect(code).toBe(0);
});
