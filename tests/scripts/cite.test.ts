import { spawnSync } from "node:child_process";
import { readFileSync, readlinkSync, symlinkSync, writeFileSync } from "node:fs";
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
  const env = { ...process.env, CALLS_IN: dirname(a), AT_CALL: "3", SAVE: a };
  const { status, stderr } = spawnSync(process.execPath, args, { encoding: "utf8", env });
  expect([status, stderr]).toEqual([
    1,
    `${a}: ${a} was changed meanwhile: run the command again. Nothing was written.\n`,
  ]);
  expect(readFileSync(a, "utf8")).toBe("[[HY-1]]\n# his\n");
});

test("a code of somebody else is told and no reason to fail, a record that never was is one", async () => {
  const folder = await onDisk({ ...TINY, "elsewhere/a.txt": "Your XY12-34 and our HY59-01.\n" });
  const a = join(folder, "elsewhere/a.txt");
  const { status, stdout } = run(a, "--data", folder);
  expect(status).toBe(0);
  expect(stdout).toBe(
    `${a}:1:6: 'XY12-34' looks like the id of a record and is none: no id here has its letters; leave it where somebody else's code is meant

1 document, 1 citation: nothing to mend; 1 code of somebody else
`,
  );
  expect(JSON.parse(run(a, "--data", folder, "--json").stdout)).toMatchObject({
    citations: 1,
    findings: [],
    strange: [{ rule: "strange", line: 1, column: 6 }],
  });
  writeFileSync(a, "Your XY12-34 and our HY12-34.\n");
  expect(run(a, "--data", folder).status).toBe(1);
});

test("with an error in the data nothing is answered, and that is no finding", async () => {
  const folder = await onDisk({ ...TINY, "vehicles/traits.yaml": "traits: [", "elsewhere/a.txt": "HY59-01" });
  const { status, stdout, stderr } = run(join(folder, "elsewhere/a.txt"), "--data", folder, "--json");
  expect([status, stdout]).toEqual([2, ""]);
  expect(stderr).toBe(`${folder} has errors, so nothing can be compared with it: npm run check shows them.\n`);
});

// words after the command, what is said
test.each([[["--fix"], "name at least one file"]])("%j is misuse", (args, said) => {
  const { status, stderr } = run(...args);
  expect(status).toBe(2);
  expect(stderr.split("\n")[0]).toEqual(said);
});
