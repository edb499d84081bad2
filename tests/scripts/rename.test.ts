import { spawnSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { onDisk, TINY } from "../helpers/tiny-folder.ts";

const run = (...args: string[]) => spawnSync(process.execPath, ["scripts/rename.ts", ...args], { encoding: "utf8" });

test("a record gets another id, on the disk, and its file another name", async () => {
  const folder = await onDisk(TINY);
  const { status, stdout } = run("HY59-01", "HY59-02", "--data", folder, "--why", "One series.");
  expect(status).toBe(0);
  expect(stdout).toMatch(/^Renamed the record HY59-01 to HY59-02\./);
  expect(readdirSync(`${folder}/changes/1959`)).toEqual(["HY59-02.md"]);
  expect(readFileSync(`${folder}/moved.yaml`, "utf8")).toContain("why: One series.");
});

test("what is refused is said on stderr", async () => {
  const folder = await onDisk(TINY);
  const refused = run("HY59-01", "FR58-01", "--data", folder);
  expect(refused).toMatchObject({ status: 1, stdout: "", stderr: "a record is called 'FR58-01' already\n" });
});

// words after the command, what is said
test.each([[["A", "B", "C"], "two ids are needed, and 'C' is a third"]])("%j is misuse", (args, said) => {
  const { status, stderr } = run(...args);
  expect(status).toBe(2);
  expect(stderr.split("\n")[0]).toBe(said);
});
