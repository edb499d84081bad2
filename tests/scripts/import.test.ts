/** The command as a person in an office starts it. What it does is tested beside src/build/tables. */
import { spawnSync } from "node:child_process";
import { join, resolve } from "node:path";
import { expect, test } from "vitest";
import { onDisk, TINY } from "../helpers/tiny-folder.ts";

function run(args: readonly string[], cwd: string): { code: number | null; out: string; err: string } {
  const { status, stdout, stderr } = spawnSync(process.execPath, [resolve("scripts/import.ts"), ...args], {
    cwd,
    encoding: "utf8",
  });
  return { code: status, out: stdout, err: stderr };
}

test.each([
  [[], "a file is missing: which spreadsheet is to be brought in?"],
  [["none.csv", "--data", "."], "none.csv: there is no such file"],
])("%j is no way to call it", async (args, said) => {
  const { code, out, err } = run(args, await onDisk({ "data/maker.yaml": "" }));
  expect([code, out]).toEqual([2, ""]);
  expect(err.split("\n\n")[0]).toBe(said);
  expect(err).toContain("npm run import -- FILE…");
});

test("a sheet of a folder is tried, and the exit code tells of rejected rows", async () => {
  const folder = await onDisk({ ...TINY, "list.csv": "id;customer\nFR58-01;Come in.\nFR58-02;Come in.\n" });
  const { code, out, err } = run([join(folder, "list.csv"), "--data", folder, "--delimiter", ";"], folder);
  expect([code, err]).toEqual([1, ""]);
  expect(out).toContain("changed  changes/1958/FR58-01.md\n           + customer: Come in.\n");
  expect(out).toContain("\n2 rows: 1 written, 0 unchanged, 1 rejected\n");
});
