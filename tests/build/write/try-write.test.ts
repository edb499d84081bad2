import { spawnSync } from "node:child_process";
import { mkdirSync, readdirSync, readFileSync } from "node:fs";
import { hostname } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { finishFirst, tryWrite } from "../../../src/build/write/try-write.ts";
import { hashOf } from "../../../src/build/write/unfinished.ts";
import { onDisk } from "../../helpers/tiny-folder.ts";

test("what the disk refuses is said in one line", async () => {
  const folder = await onDisk({ "a.yaml": "a" });
  expect(tryWrite(folder, new Map([["a.yaml", "A"]]))).toBeUndefined();
  expect(readFileSync(join(folder, "a.yaml"), "utf8")).toBe("A");
  mkdirSync(join(folder, "b.yaml"));
  expect(tryWrite(folder, new Map([["b.yaml", "B"]]))).toMatch(/^EISDIR: .*\. Nothing was written\.$/);
});

test("a fault of the program is no matter of the disk", () => {
  expect(() => tryWrite("x", undefined as never)).toThrow(TypeError);
});

test("what a killed command left is finished, and said; where a person has to look, that is said", async () => {
  const said: string[] = [];
  const say = (line: string): void => void said.push(line);
  const journal = JSON.stringify({
    pid: spawnSync(process.execPath, ["-e", ""]).pid,
    host: hostname(),
    steps: [
      { place: "a", after: hashOf("A") },
      { place: "b", before: hashOf("b") },
    ],
  });
  const folder = await onDisk({ a: "A", b: "b", ".yearmark-writing": journal });
  expect(finishFirst(folder, say)).toBe("finished");
  expect(readdirSync(folder)).toEqual(["a"]);
  expect(finishFirst(folder, say)).toBe("nothing");
  const torn = await onDisk({ a: "A", b: "his", ".yearmark-writing": journal });
  expect(finishFirst(torn, say)).toBe("fault");
  expect(tryWrite(torn, new Map([["c", "C"]]))).toBe(said[1]);
  expect(said).toEqual([
    `A command was killed while it wrote into ${folder}: what it had begun is finished now.`,
    expect.stringMatching(/b should have gone, and was changed since: .*\. Nothing was written\.$/),
  ]);
});
