import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
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

// words after the command, what is said
test.each([[["--fix"], "name at least one file"]])("%j is misuse", (args, said) => {
  const { status, stderr } = run(...args);
  expect(status).toBe(2);
  expect(stderr.split("\n")[0]).toEqual(said);
});
