import { spawnSync } from "node:child_process";
import { readFileSync, readlinkSync, symlinkSync } from "node:fs";
import { dirname, join } from "node:path";
import { expect, test } from "vitest";
import { onDisk, TINY } from "../helpers/tiny-folder.ts";

const run = (...args: string[]) => spawnSync(process.execPath, ["scripts/cite.ts", ...args], { encoding: "utf8" });

test("documents elsewhere are looked through, and what is certain is mended where that is wanted", async () => {
  const folder = await onDisk({
    ...TINY,
    "elsewhere/a.txt": "[[HY-1]] and [[HY59-01]]\n",
    "elsewhere/b.txt": "[[HT-999]]",
  });
  const [a, b] = [join(folder, "elsewhere/a.txt"), join(folder, "elsewhere/b.txt")];
  const { status, stdout } = run(a, b, "--data", folder, "--fix", "--json");
  expect(status).toBe(1);
  expect(JSON.parse(stdout)).toMatchObject({
    documents: 2,
    citations: 3,
    mended: [{ rule: "moved", file: a, line: 1, column: 1 }],
    findings: [{ rule: "unknown", file: b }],
  });
  expect(readFileSync(a, "utf8")).toBe("[[HY59-01]] and [[HY59-01]]\n");
});

test("a document that is named twice, once by a link, is mended once, and the link stays", async () => {
  const folder = await onDisk(TINY);
  // A link inside a data folder is a finding of its own.
  const elsewhere = await onDisk({ "a.txt": "[[HY-1]]\n" });
  const [a, link] = [join(elsewhere, "a.txt"), join(elsewhere, "b.txt")];
  symlinkSync("a.txt", link);
  const { status, stderr } = run(link, a, link, "--data", folder, "--fix");
  expect([status, stderr]).toEqual([0, ""]);
  expect(readFileSync(a, "utf8")).toBe("[[HY59-01]]\n");
  expect(readlinkSync(link)).toBe("a.txt");
});

test("what somebody saves meanwhile is not written over", async () => {
  const folder = await onDisk(TINY);
  const a = join(await onDisk({ "a.txt": "[[HY-1]]\n" }), "a.txt");
  const args = [
    "--import",
    join(import.meta.dirname, "kill-at-call.ts"),
    "scripts/cite.ts",
    a,
    "--fix",
    "--data",
    folder,
  ];
  const env = { ...process.env, CALLS_IN: dirname(a), AT_CALL: "2", SAVE: a };
  const { status, stderr } = spawnSync(process.execPath, args, { encoding: "utf8", env });
  expect([status, stderr]).toEqual([
    1,
    `${a}: ${a} was changed meanwhile: run the command again. Nothing was written.\n`,
  ]);
  expect(readFileSync(a, "utf8")).toBe("[[HY-1]]\n# his\n");
});

// words after the command, what is said
test.each([[["--fix"], "name at least one file"]])("%j is misuse", (args, said) => {
  const { status, stderr } = run(...args);
  expect(status).toBe(2);
  expect(stderr.split("\n")[0]).toEqual(said);
});
