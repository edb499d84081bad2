import { describe, expect, test } from "vitest";
import type { answerSearch } from "../../../src/engine/answers/answer-search.ts";
import { lawfulAnswer } from "../../helpers/answer-laws.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const record = (id: string, issued: string, more: string): string =>
  `---\nid: ${id}\ntitle: Seat ${id}\nissued: ${issued}\nkinds: [part]\nstarts: then\ncomponents: [lift]\n${more}\n---\n\nSprung.\n`;
const TRAP = "stands-in: [{ part: HT-101, for: HT-102, verdict: must-not-be-used, why: dry }]";
const knowledge = tinyKnowledge({
  "changes/1960/SE60-01.md": record("SE60-01", "1960-01-01", "scope: line=B"),
  "changes/1960/SE60-02.md": record("SE60-02", "1960-01-01", `scope: line=H\n${TRAP}`),
  "changes/1960/SE60-03.md": record("SE60-03", "1960-05-01", "scope: line=H"),
  "changes/1960/SE60-04.md": record("SE60-04", "1959-01-01", `scope: my=1960\n${TRAP}`),
});
const ask = (question: string): ReturnType<typeof answerSearch> =>
  lawfulAnswer(knowledge, { question: "search", text: question }) as unknown as ReturnType<typeof answerSearch>;
const found = (question: string): string[] => ask(question).results.map(({ id }) => id);

describe("chips alone", () => {
  test("find every record that fits, traps first, then the newest, then by id", () => {
    expect(found("hydraulics")).toEqual(["SE60-02", "HY59-01", "SE60-04", "SE60-03", "SE60-01"]);
    expect(found("what changed: lift")).toEqual(found("hydraulics")); // words.yaml
  });

  // question, records found
  const CHIPS: [string, string[]][] = [
    ["hydraulics Badger", ["HY59-01", "SE60-04", "SE60-01"]],
    ["hydraulics Heron", ["SE60-02", "SE60-04", "SE60-03"]],
    ["hydraulics Badger Heron", ["SE60-02", "HY59-01", "SE60-04", "SE60-03", "SE60-01"]], // of one kind any will do
    ["Heron 61", ["SE60-02", "SE60-03", "FR58-01"]],
    ["hydraulics 1957", ["SE60-01"]],
    ["part changed 1957", ["SE60-01"]],
    ["running change", ["HY59-01"]],
    ["frame", []], // a system without a record
    ["interval", []],
  ];
  test.each(CHIPS)("%s", (question, ids) => {
    expect(found(question)).toEqual(ids);
  });

  test("traps are marked, and every record found carries the answer", () => {
    const answer = ask("hydraulics");
    expect(answer.results.map(({ trap }) => trap)).toEqual([true, true, true, false, false]);
    expect(answer.because.map((reason) => reason.record)).toEqual(answer.results.map(({ id }) => id));
  });
});

describe("words", () => {
  test("find records, parts, components and bulletins; an id comes first", () => {
    expect(found("HY59-01")[0]).toBe("HY59-01");
    expect(found("HT-102")[0]).toBe("HT-102");
    expect(ask("pumps").results.map(({ kind }) => kind)).toContain("bulletin");
    expect(ask("gasket kit").results[0]).toMatchObject({ kind: "part", id: "HT-290", trap: false });
  });

  test("with chips only what fits the chips is found", () => {
    expect(found("seat Heron")).toEqual(expect.arrayContaining(["SE60-02", "SE60-03", "SE60-04"]));
    expect(found("seat Heron")).not.toContain("SE60-01");
    expect(found("sprung Badger").sort()).toEqual(["SE60-01", "SE60-04"]);
  });

  test("all of them are wanted first, then any of them, then only the chips", () => {
    expect(found("longer pump")).toContain("HY59-01");
    expect(found("longer pump")).not.toContain("HT-101"); // a pump, but nothing says longer of it
    expect(found("sprung zeppelin").sort()).toEqual(["SE60-01", "SE60-02", "SE60-03", "SE60-04"]);
    expect(found("zeppelin hydraulics 1957")).toEqual(["SE60-01"]);
  });

  test("that are found nowhere are said so, and what was understood is offered", () => {
    expect(ask("zeppelin")).toMatchObject({ verdict: "nothing found", results: [], ask: { options: [] } });
    expect(ask("zeppelin frame")).toMatchObject({ verdict: "nothing found", ask: { options: ["Frame"] } });
    expect(ask("what changed")).toMatchObject({ verdict: "nothing found", reading: { chips: [], rest: "" } });
    expect(ask("🚜")).toMatchObject({ verdict: "nothing found" });
  });

  test("the reading is part of the answer", () => {
    expect(ask("what changed on the seat of '59 Badgers").reading).toEqual({
      chips: [
        { kind: "year", ids: ["1959"], label: "1959", said: "'59" },
        { kind: "line", ids: ["B"], label: "Badger", said: "Badgers" },
      ],
      rest: "on the seat of",
    });
  });
});
