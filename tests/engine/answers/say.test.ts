import { describe, expect, test } from "vitest";
import { anchor, reasonFor, reasonForRecord, say, sayWindow } from "../../../src/engine/answers/say.ts";
import type { Statement } from "../../../src/engine/records/statement.ts";
import { demoKnowledge } from "../../helpers/demo-data.ts";
import { catalogOf, spoiled } from "../../helpers/tiny-folder.ts";
import { SENTENCES } from "./say.cases.ts";

describe("a statement in plain words", () => {
  test.each(SENTENCES)("%s: %s", (field, entry, sentence) => {
    const catalog = catalogOf(
      spoiled({
        "changes/1960/SA60-01.md": `---
id: SA60-01
title: One statement
issued: 1960-01-01
kinds: [part]
components: [pump]
starts: then
scope: all
${field}: [${entry}]
---

Said.
`,
      }),
    );
    const statements = catalog.records.get("SA60-01")?.statements ?? [];
    expect(statements.map((statement) => say(catalog, statement))).toEqual([sentence]);
  });

  test("there is a sentence for every type of statement, and every statement of the data folder has one", async () => {
    const { catalog } = await demoKnowledge();
    const statements = [...catalog.records.values()].flatMap((record) => record.statements);
    const sentences = statements.map((statement) => say(catalog, statement));
    expect(sentences.filter((text) => /undefined|null|NaN|\{\}|\[object| {2}|\(\)/.test(text))).toEqual([]);
    const types = new Set(statements.map((statement) => statement.type));
    expect([...types].filter((type) => !TYPES.includes(type))).toEqual([]);
  });

  const TYPES: Statement["type"][] = [
    "built",
    "mixed",
    "supersedes",
    "stands-in",
    "kit",
    "service-only",
    "setting",
    "interval",
    "procedure",
    "tool",
    "left-alone",
    "cancels",
  ];
});

describe("where a statement stands", () => {
  const catalog = catalogOf();
  const statements = catalog.records.get("HY59-01")?.statements ?? [];

  test("every statement of a record has a place of its own", () => {
    expect(new Set(statements.map(anchor)).size).toBe(statements.length);
    expect(statements.map(anchor).slice(0, 4)).toEqual(["built-1", "built-2", "built-3", "mixed-1"]);
  });

  test("a reason names it as people count", () => {
    expect(reasonFor(catalog, statements[1] as Statement)).toEqual({
      record: "HY59-01",
      statement: "built 2",
      text: "pump: the plant fitted HT-102 (Badger, built at Kelby from number 0412 of 1959 on)",
      address: "/records/HY59-01/#built-2",
    });
    expect(reasonForRecord(catalog, "HY59-01")).toEqual({
      record: "HY59-01",
      statement: "record",
      text: "Longer hydraulic pump",
      address: "/records/HY59-01/",
    });
  });
});

// low, high, words
const WINDOWS: [string | undefined, string | undefined, string][] = [
  ["7", "9", "7 to 9"],
  [undefined, "0.005", "at most 0.005"],
  ["54", undefined, "at least 54"],
  ["20", "20", "exactly 20"],
  ["0", "0", "exactly 0"],
  ["-3", "0", "-3 to 0"],
  ["0.060", "0.060", "exactly 0.060"],
];
test.each(WINDOWS)("%s to %s is said '%s'", (low, high, words) => {
  expect(sayWindow(low, high)).toBe(words);
});
