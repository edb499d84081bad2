import { spawnSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync, utimesSync, writeFileSync } from "node:fs";
import { hostname } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { beginWriting, endWriting, finishWriting, hashOf, type Step } from "../../../src/build/write/unfinished.ts";
import { onDisk } from "../../helpers/tiny-folder.ts";

const JOURNAL = ".yearmark-writing";
/** A process that has ended. */
const DEAD = spawnSync(process.execPath, ["-e", ""]).pid;

const STEPS: Step[] = [
  { place: "a", next: ".a.next", before: hashOf("a"), after: hashOf("A") },
  { place: "b", next: ".b.next", after: hashOf("B") },
  { place: "c", before: hashOf("c") },
];
const journal = (pid: number, host = hostname()): string => JSON.stringify({ pid, host, steps: STEPS });
const filesIn = (folder: string): Record<string, string> =>
  Object.fromEntries(readdirSync(folder).map((path) => [path, readFileSync(join(folder, path), "utf8")]));

// what a command that was killed left, whether it was finished, and what lies there then
const LEFT: [string, Record<string, string>, boolean, Record<string, string>][] = [
  ["nothing made ready", { a: "a", c: "c" }, false, { a: "a", c: "c" }],
  ["half made ready", { a: "a", ".a.next": "", c: "c" }, false, { a: "a", c: "c" }],
  ["all made ready", { a: "a", ".a.next": "A", ".b.next": "B", c: "c" }, false, { a: "a", c: "c" }],
  ["a name taken first of all", { a: "a", ".a.next": "A", b: "", ".b.next": "B", c: "c" }, false, { a: "a", c: "c" }],
  ["one changed", { a: "A", ".b.next": "B", c: "c" }, true, { a: "A", b: "B" }],
  ["one changed and a name taken", { a: "A", b: "", ".b.next": "B", c: "c" }, true, { a: "A", b: "B" }],
  ["all but the last", { a: "A", b: "B", c: "c" }, true, { a: "A", b: "B" }],
  ["all", { a: "A", b: "B" }, true, { a: "A", b: "B" }],
  ["one changed, and again by somebody", { a: "his", b: "B", c: "c" }, true, { a: "his", b: "B" }],
  ["nothing, and somebody wrote", { a: "his", ".a.next": "A", ".b.next": "B", c: "c" }, false, { a: "his", c: "c" }],
];

test.each(LEFT)("%s", async (_, left, finished, after) => {
  const folder = await onDisk({ ...left, [JOURNAL]: journal(DEAD) });
  expect(finishWriting(folder)).toBe(finished);
  expect(filesIn(folder)).toEqual(after);
  expect(finishWriting(folder)).toBe(false);
});

// what somebody wrote after the kill where something was still to be done
test.each([
  ["a", { a: "his", ".a.next": "A", b: "B", c: "c" }, /a was changed since: bring what .*\.a\.next says into it/],
  ["b", { a: "A", b: "his", ".b.next": "B", c: "c" }, /b was changed since: bring what .*\.b\.next says into it/],
  ["c", { a: "A", b: "B", c: "his" }, /c should have gone, and was changed since/],
])("somebody wrote %s: he is told, and nothing is touched", async (_, left, said) => {
  const files = { ...left, [JOURNAL]: journal(DEAD) };
  const folder = await onDisk(files);
  expect(() => finishWriting(folder)).toThrow(said);
  expect(filesIn(folder)).toEqual(files);
});

test("of a command that is alive, or on another machine, nothing is touched until it must be dead", async () => {
  const left = { a: "A", ".b.next": "B", c: "c" };
  for (const text of [journal(process.pid), journal(DEAD, "elsewhere"), "{"]) {
    const folder = await onDisk({ ...left, [JOURNAL]: text });
    expect(finishWriting(folder)).toBe(false);
    expect(filesIn(folder)).toEqual({ ...left, [JOURNAL]: text });
    utimesSync(join(folder, JOURNAL), 0, 0);
    expect(finishWriting(folder)).toBe(text !== "{");
    expect(existsSync(join(folder, JOURNAL))).toBe(false);
  }
});

test("two do not write at the same time", async () => {
  const folder = await onDisk({ a: "a" });
  const place = join(folder, "a");
  beginWriting(folder, [{ place, next: `${place}.next`, before: "x" }]);
  expect(JSON.parse(filesIn(folder)[JOURNAL] as string).steps).toEqual([{ place: "a", next: "a.next", before: "x" }]);
  expect(() => beginWriting(folder, [], 0)).toThrow("another command is writing into");
  endWriting(folder);
  // What a dead one left is no hindrance.
  writeFileSync(join(folder, JOURNAL), journal(DEAD));
  beginWriting(folder, []);
  endWriting(folder);
  expect(filesIn(folder)).toEqual({ a: "a" });
});
