/** The command as it is started. What it writes is tested beside src/build/tables. */
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync, statSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, test } from "vitest";
import { onDisk, TINY } from "../helpers/tiny-folder.ts";

function run(...args: string[]): { code: number | null; out: string; err: string } {
  const { status, stdout, stderr } = spawnSync(process.execPath, [resolve("scripts/export.ts"), ...args], {
    encoding: "utf8",
  });
  return { code: status, out: stdout, err: stderr };
}

test("without a place it says what is missing", () => {
  const { code, out, err } = run();
  expect([code, out]).toEqual([2, ""]);
  expect(err).toMatch(/^--to is missing: where shall the tables go\?\n\nnpm run export -- --to FOLDER/);
});

test("a CSV file that is there is written over when that was said, and a folder of that name is none", async () => {
  const folder = await onDisk({ ...TINY, "one.csv": "mine", "two.csv/keep": "" });
  const to = (name: string, ...more: string[]) =>
    run("--data", folder, "--to", join(folder, name), "--table", "cancels", ...more);
  expect(to("one.csv").code).toBe(1);
  expect(to("one.csv", "--overwrite")).toMatchObject({ code: 0, err: "" });
  expect(readFileSync(join(folder, "one.csv"), "utf8")).toMatch(/^\uFEFFrecord,cancels,scope/);
  expect(to("two.csv", "--overwrite").err).toMatch(/two\.csv: that is a folder\n/);
});

test("one table of a folder", async () => {
  const folder = await onDisk(TINY);
  const { code, out, err } = run("--data", folder, "--to", join(folder, "out"), "--table", "cancels");
  expect([code, err]).toEqual([0, ""]);
  expect(out.replaceAll(folder, "")).toBe(
    "     1  cancels\n1 file in /out. Back again: npm run import -- /out/*.csv\n",
  );
  expect(readFileSync(join(folder, "out/cancels.csv"), "utf8")).toBe(
    "\uFEFFrecord,cancels,scope\r\nHY59-01,FR58-01,line=B\r\n",
  );
});

test("a CSV file takes one table; several are refused, and so they are without naming one", async () => {
  const folder = await onDisk(TINY);
  const to = (...tables: string[]) =>
    run("--data", folder, "--to", join(folder, "out.csv"), ...tables.flatMap((name) => ["--table", name]));
  expect(to().code).toBe(2);
  expect(to("cancels", "moved").code).toBe(2);
  expect(existsSync(join(folder, "out.csv"))).toBe(false);
  expect(to("cancels").code).toBe(0);
  expect(statSync(join(folder, "out.csv")).isFile()).toBe(true);
});
