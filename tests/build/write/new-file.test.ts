import { describe, expect, test } from "vitest";
import { type ReadFolder, readFolder } from "../../../src/build/data/read-folder.ts";
import type { Answers } from "../../../src/build/write/field.ts";
import { folderTexts } from "../../../src/build/write/folder-texts.ts";
import type { NewKind } from "../../../src/build/write/new-fields.ts";
import { newFile } from "../../../src/build/write/new-file.ts";
import type { Catalog } from "../../../src/engine/records/catalog.ts";
import { type Folder, onDisk, spoiled, TINY } from "../../helpers/tiny-folder.ts";

const made = async (kind: NewKind, answers: Answers, more = {}, files: Folder = TINY) => {
  const folder = await onDisk(files);
  const read = (await readFolder(folder)) as ReadFolder & { catalog: Catalog };
  return newFile(folder, read, folderTexts(folder, read), kind, answers, more);
};
const RECORD = {
  title: "Longer",
  kinds: ["part"],
  components: ["pump"],
  starts: "1960",
  scope: "all",
  issued: "1960-03-01",
  year: "1960",
  id: "HY60-01",
  story: "It grew.",
};

describe("a record", () => {
  test("lies in the folder of its year, valid, with the address of its schema", async () => {
    const { path, text, findings, grown } = await made("record", RECORD, { links: ["HY59-01"] });
    expect({ path, findings, grown }).toEqual({ path: "changes/1960/HY60-01.md", findings: [], grown: false });
    expect(text).toBe(`---
# yaml-language-server: $schema=https://hollin.example/changes/data/schemas/change.json
id: HY60-01
title: Longer
issued: 1960-03-01
kinds: [part]
components: [pump]
starts: "1960"
scope: all
links: [HY59-01]
---

It grew.
`);
  });

  test("lies beside the others where these have no folder of a year", async () => {
    const { "changes/1959/HY59-01.md": a, "changes/1958/FR58-01.md": b, ...rest } = TINY;
    const files = { ...rest, "changes/all/HY59-01.md": a as string, "changes/all/FR58-01.md": b as string };
    expect((await made("record", RECORD, {}, files)).path).toBe("changes/all/HY60-01.md");
  });

  test("what would be wrong is found, with its place", async () => {
    const { findings } = await made("record", RECORD, { built: [{ place: "pomp", part: "HT-9", scope: "all" }] });
    expect(findings.map(({ file, position, message }) => `${file}:${position.line} ${message}`)).toEqual([
      "changes/1960/HY60-01.md:11 no place is called 'pomp'",
      "changes/1960/HY60-01.md:12 no part is called 'HT-9'",
    ]);
  });
});

describe("a part", () => {
  test("is added to the file of its component, and all else stays", async () => {
    const { path, text, grown, findings } = await made("part", {
      component: "pump",
      number: "4412",
      name: "pump",
      marks: ["ribs=two", "bore=18.5"],
    });
    expect({ path, grown }).toEqual({ path: "parts/pump.yaml", grown: true });
    expect(findings.map(({ rule }) => rule)).toEqual(["part-nowhere"]);
    expect(text).toBe(
      `${TINY["parts/pump.yaml"]}  - number: "4412"\n    name: pump\n    marks: { ribs: two, bore: 18.5 }\n`,
    );
  });

  test("makes the file of a component that had no part", async () => {
    const { path, text, grown } = await made("part", { component: "lift", number: "HT-301", name: "arm" });
    expect({ path, grown }).toEqual({ path: "parts/lift.yaml", grown: false });
    expect(text).toContain("component: lift\nparts:\n  - number: HT-301\n");
  });
});

test("a bulletin is a file of its own", async () => {
  const { path, text, findings } = await made("bulletin", {
    id: "TB-2",
    title: "T",
    issued: "1960-01-01",
    about: "A.",
    text: "See [[pump]].",
  });
  expect({ path, findings }).toEqual({ path: "bulletins/TB-2.md", findings: [] });
  expect(text.endsWith("---\n\nSee [[pump]].\n")).toBe(true);
});

test("what was wrong or odd before does not stand in the way", async () => {
  const files = { ...spoiled({}), "NOTES.md": "for ourselves" };
  expect((await made("record", RECORD, {}, files)).findings).toEqual([]);
});

test("a comment that would not stand there any more is named, with what to write by hand", async () => {
  const folder = await onDisk(TINY);
  const read = (await readFolder(folder)) as ReadFolder & { catalog: Catalog };
  const add = (text: string) =>
    newFile(folder, read, new Map([["parts/pump.yaml", text]]), "part", {
      component: "pump",
      number: "HT-9",
      name: "p",
    });
  expect(add("component: pump\nparts: [ # none yet\n]\n")).toMatchObject({
    lost: ["# none yet"],
    byHand: "{number: HT-9, name: p}",
  });
  expect(add(`${TINY["parts/pump.yaml"]}# end\n`).lost).toEqual([]);
});
