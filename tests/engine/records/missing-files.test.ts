import { describe, expect, test } from "vitest";
import { type Finding, readFolder } from "../../../src/build/data/read-folder.ts";
import { inShort, onDisk, type Spoil, spoiled } from "../../helpers/tiny-folder.ts";
import { ON_PURPOSE, type Put, SAID_ALL_THE_SAME, SLIPS } from "./missing-files.cases.ts";

async function read(put: Put, spoil: Spoil): Promise<readonly Finding[]> {
  const moved = Object.entries(spoiled(spoil)).flatMap(([path, text]): [string, string][] => {
    const place = put(path);
    return place === undefined ? [] : [[place, text]];
  });
  return (await readFolder(await onDisk(Object.fromEntries(moved)))).findings;
}

function said(findings: readonly Finding[]): string[] {
  return findings.flatMap((finding) => [
    `${finding.severity} ${inShort(finding)}`,
    ...(finding.also ?? []).map(
      ({ file, position, message }) => `  also ${file}:${position?.line}:${position?.column} ${message}`,
    ),
  ]);
}

describe("what lies in a wrong place is said once, before all else, and what follows from it is counted", () => {
  test.each(SLIPS)("%s", async (_, put, written, ...all) => {
    expect(said(await read(put, written))).toEqual(all);
  });
});

describe("what does not follow from it is said all the same", () => {
  test.each(SAID_ALL_THE_SAME)("%s", async (_, put, written, ...all) => {
    expect(said(await read(put, written))).toEqual(all);
  });
});

describe("what may lie there on purpose is no error", () => {
  test.each(ON_PURPOSE)("%s", async (_, path, text, ...all) => {
    const folder = await readFolder(await onDisk({ ...spoiled({}), [path]: text }));
    expect(said(folder.findings)).toEqual(all);
    expect(folder.catalog).toBeDefined();
  });
});

test("settings of another program, which could be words by their fields, are not taken for the words", async () => {
  const folder = await onDisk({ ...spoiled({ "words.yaml": undefined }), "mine/spelling.yaml": "ignore: [colour]\n" });
  expect(said((await readFolder(folder)).findings)).toEqual([
    "warning mine/spelling.yaml: no kind of file lies here, so it is not read → did you mean words.yaml?",
  ]);
});

test("the count for programs is that of the message", async () => {
  const [cause] = await read((path) => path.replace(/^parts\//, "part/"), {});
  expect(cause).toMatchObject({ rule: "missing-file", follow: 18, position: { line: 1, column: 1, length: 1 } });
});

test("what is not shown comes back when the cause is mended and it was a mistake", async () => {
  const mistake = { "changes/1959/HY59-01.md": ["place: pump, part: HT-101", "place: pump, part: HT-291"] };
  const hidden = await read((path) => (path.startsWith("parts/") ? undefined : path), mistake);
  expect(hidden.map(({ file }) => file)).toEqual(["parts/"]);
  expect(said(await read((path) => path, mistake))).toEqual([
    "error changes/1959/HY59-01.md built.0.part: no part is called 'HT-291' → did you mean 'HT-201'?",
  ]);
});

test("a copy beside the right file hides no unknown name that stands in it", async () => {
  const folder = await onDisk({
    ...spoiled({ "changes/1959/HY59-01.md": ["service-only: [HT-201]", "service-only: [HT-777]"] }),
    "old/pump.yaml": "component: pump\nparts: [{ number: HT-777, name: pump }]\n",
  });
  expect(said((await readFolder(folder)).findings)).toEqual([
    "error changes/1959/HY59-01.md service-only.0: no part is called 'HT-777' → add it to parts/, or mend the name",
    "warning old/pump.yaml: no kind of file lies here, so it is not read → did you mean parts/pump.yaml?",
  ]);
});
