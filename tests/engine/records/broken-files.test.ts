import { describe, expect, test } from "vitest";
import { echoOf } from "../../../src/engine/records/broken-files.ts";
import type { Complaint, Naming } from "../../../src/engine/records/complaint.ts";
import type { DataFile } from "../../../src/engine/records/file-kinds.ts";
import { inShort, readTexts, spoiled } from "../../helpers/tiny-folder.ts";
import { ECHOES } from "./broken-files.cases.ts";

describe("a fault is said once and not echoed by the files that name what it hides", () => {
  test.each(ECHOES)("%s", (_, spoil, ...said) => {
    const { catalog, complaints } = readTexts(spoiled(spoil));
    expect(complaints.map(inShort)).toEqual(said);
    expect(catalog).toBeUndefined();
  });
});

const unknown = (name: string, ...as: Naming[]): Complaint => ({
  severity: "error",
  rule: "unknown-name",
  file: "x.md",
  path: [],
  message: "",
  hint: "",
  unknown: { name, as },
});
const parts = (value: unknown): DataFile => ({ path: "parts/pump.yaml", kind: "parts", value, broken: true });

// text of a broken file of parts, a number, whether the file may define it
const NUMBERS: [string, string, boolean][] = [
  ["number: HT-1", "HT-1", true],
  ["number: 'HT-1'", "HT-1", true],
  ["{number:HT-1,name:x}", "HT-1", true],
  ["HT-1", "HT-1", true],
  ["number: HT-10", "HT-1", false],
  ["number: XHT-1", "HT-1", false],
  ["number: HT-1-A", "HT-1", false],
  ["number: HT-10\n number: HT-1", "HT-1", true],
  ["", "HT-1", false],
];
test.each(NUMBERS)("%j may define %s: %s", (text, name, may) => {
  expect(echoOf([parts(text)])(unknown(name, "part"))).toBe(may);
  expect(echoOf([parts({ parts: [[{ number: text }]] })])(unknown(name, "part"))).toBe(may);
});

test("a file of which nothing could be read may define anything of its kind", () => {
  const isEcho = echoOf([parts(undefined)]);
  expect(isEcho(unknown("HT-1", "part"))).toBe(true);
  expect(isEcho(unknown("HT-1", "record", "part", "component"))).toBe(true);
  expect(isEcho(unknown("HT-1", "component"))).toBe(false);
});

test("a complaint about anything else is no echo", () => {
  const { unknown: _, ...other } = unknown("HT-1", "part");
  expect(echoOf([parts(undefined)])(other)).toBe(false);
});

test("a value nested without end is looked through", () => {
  let deep: unknown = "HT-1";
  for (let i = 0; i < 100_000; i++) deep = [deep];
  expect(echoOf([parts(deep)])(unknown("HT-1", "part"))).toBe(true);
});
