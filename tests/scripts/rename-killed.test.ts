/** npm run rename is cut off between its calls that change files: the same command, run again, leaves what one run leaves. */
import { spawnSync } from "node:child_process";
import { readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, test } from "vitest";
import { finishWriting } from "../../src/build/write/unfinished.ts";
import { onDisk, TINY } from "../helpers/tiny-folder.ts";

const KILLER = join(import.meta.dirname, "kill-at-call.ts");

function run(folder: string, args: readonly string[], env: Record<string, string>) {
  return spawnSync(process.execPath, ["--import", KILLER, ...args], {
    encoding: "utf8",
    env: { ...process.env, CALLS_IN: folder, ...env },
  });
}

const rename = (folder: string, env: Record<string, string> = {}) =>
  run(folder, ["scripts/rename.ts", "HY59-01", "HY59-02", "--data", folder], env);

const filesIn = (folder: string): Record<string, string> =>
  Object.fromEntries(
    readdirSync(folder, { recursive: true, encoding: "utf8" })
      .filter((path) => statSync(join(folder, path)).isFile())
      .sort()
      .map((path) => [path, readFileSync(join(folder, path), "utf8")]),
  );

/** A renaming of two files that another one names, without all that is read and judged before it. */
const BEFORE = { a: "of old", "b/old": "old" };
const AFTER = { a: "of new", "b/new": "new", c: "old is new" };
const WRITE = `import { writeFiles } from ${JSON.stringify(resolve("src/build/write/write-files.ts"))};
writeFiles(process.argv[1], new Map(Object.entries(${JSON.stringify(AFTER)})), new Map([["b/old", "b/new"]]),
  new Map(Object.entries(${JSON.stringify(BEFORE)})));`;
const write = (folder: string, env: Record<string, string>) =>
  run(folder, ["--input-type=module", "-e", WRITE, folder], env);

/** The signal, before each of its calls in turn, until it comes to its end. */
async function cutOff(name: string, look: (folder: string, call: number) => void): Promise<number> {
  for (let call = 1; call < 50; call++) {
    const folder = await onDisk(BEFORE);
    const { signal, status, stderr } = write(folder, { AT_CALL: String(call), SIGNAL: name });
    if (signal === null) {
      expect([status, stderr]).toEqual([0, ""]);
      return call;
    }
    expect(signal).toBe(name);
    look(folder, call);
  }
  throw new Error("it comes to no end");
}

test("wherever it is killed, the next command finishes it or begins anew, and nothing is left over", async () => {
  const states: string[] = [];
  const calls = await cutOff("SIGKILL", (folder, call) => {
    const finished = finishWriting(folder);
    states.push(finished ? "finished" : "undone");
    expect(filesIn(folder), `call ${call}`).toEqual(finished ? AFTER : BEFORE);
  });
  expect(calls).toBeGreaterThan(10);
  // Once the first name is changed all is finished; only the very last call has nothing left to do.
  expect(states.lastIndexOf("undone")).toBeLessThan(states.indexOf("finished"));
  expect(states.filter((state) => state === "finished").length).toBeGreaterThan(4);
});

test.each(["SIGINT", "SIGTERM"])("at %s it ends when all is written", async (name) => {
  const calls = await cutOff(name, (folder, call) => expect(filesIn(folder), `call ${call}`).toEqual(AFTER));
  expect(calls).toBeGreaterThan(10);
});

/** Each file is opened and read. */
const ONLY_READ = 2 * Object.keys(TINY).length;

/** A folder in which the new record lies beside the old one, and moved.yaml does not know it yet. */
async function renamedByHalf(): Promise<string> {
  // Before that each file is looked at once more, texts are made ready, and all is compared.
  for (let call = 2 * ONLY_READ; call < 4 * ONLY_READ; call++) {
    const folder = await onDisk(TINY);
    rename(folder, { AT_CALL: String(call), SIGNAL: "SIGKILL" });
    const files = filesIn(folder);
    if (files["changes/1959/HY59-02.md"] && files["moved.yaml"] === TINY["moved.yaml"]) return folder;
  }
  throw new Error("it is never there by half");
}

test("the same command again finishes the renaming, and says so", async () => {
  const whole = await onDisk(TINY);
  expect(rename(whole).status).toBe(0);
  const folder = await renamedByHalf();
  expect(rename(folder)).toMatchObject({
    status: 0,
    stdout: "'HY59-01' leads to 'HY59-02'. Next: npm run check\n",
    stderr: `A command was killed while it wrote into ${folder}: what it had begun is finished now.\n`,
  });
  expect(filesIn(folder)).toEqual(filesIn(whole));
});

test("what somebody wrote after the kill is not lost: the command says what to do, and then finishes", async () => {
  const folder = await renamedByHalf();
  const moved = join(folder, "moved.yaml");
  const his = `${readFileSync(moved, "utf8")}# his\n`;
  writeFileSync(moved, his);
  const { status, stderr } = rename(folder);
  expect(status).toBe(1);
  expect(stderr).toContain(`${moved} was changed since: bring what ${folder}/.moved.yaml.`);
  expect(readFileSync(moved, "utf8")).toBe(his);
  const next = /bring what (\S+) says/.exec(stderr)?.[1] as string;
  const both = `${readFileSync(next, "utf8")}# his\n`;
  writeFileSync(moved, both);
  rmSync(next);
  expect(rename(folder).status).toBe(0);
  expect(Object.keys(filesIn(folder)).filter((path) => path.startsWith("changes/1959"))).toEqual([
    "changes/1959/HY59-02.md",
  ]);
  expect(readFileSync(moved, "utf8")).toBe(both);
});

test("what somebody saves after it was read is not lost", async () => {
  const folder = await onDisk(TINY);
  const path = "changes/1958/FR58-01.md";
  const file = join(folder, path);
  writeFileSync(file, `${readFileSync(file, "utf8")}\nSee HY59-01.\n`);
  const his = { ...filesIn(folder), [path]: `${readFileSync(file, "utf8")}# his\n` };
  const { status, stderr } = rename(folder, { AT_CALL: String(ONLY_READ), SAVE: file });
  expect([status, stderr]).toEqual([1, `${file} was changed meanwhile: run the command again. Nothing was written.\n`]);
  expect(filesIn(folder)).toEqual(his);
  expect(rename(folder).status).toBe(0);
});
