import { describe, expect, test } from "vitest";
import type { SearchAnswer } from "../../../src/engine/answers/answer-search.ts";
import { lawfulAnswer } from "../../helpers/answer-laws.ts";
import { ASKED } from "../../helpers/tiny-asked.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const record = (id: string, issued: string, more: string): string =>
  `---\nid: ${id}\ntitle: Seat ${id}\nissued: ${issued}\nkinds: [part]\nstarts: then\ncomponents: [lift]\n${more}\n---\n\nSprung.\n`;
const TRAP = "stands-in: [{ part: HT-101, for: HT-102, verdict: must-not-be-used, why: dry }]";
const knowledge = tinyKnowledge({
  ...ASKED,
  "changes/1960/SE60-01.md": record("SE60-01", "1960-01-01", "scope: line=B"),
  "changes/1960/SE60-02.md": record("SE60-02", "1960-01-01", `scope: line=H\n${TRAP}`),
  "changes/1960/SE60-03.md": record("SE60-03", "1960-05-01", "scope: line=H"),
});
const search = (question: string): SearchAnswer =>
  lawfulAnswer(knowledge, { question: "search", text: question }) as unknown as SearchAnswer;
const found = (question: string): string[] => search(question).results.map(({ id }) => id);

describe("what is found", () => {
  test("are the records that the question is about, a trap before what is otherwise alike", () => {
    const seats = found("seat").filter((id) => id.startsWith("SE"));
    expect(seats).toEqual(["SE60-02", "SE60-03", "SE60-01"]);
    expect(search("seat").results.find(({ id }) => id === "SE60-02")?.trap).toBe(true);
  });

  test("are none that are not about such a car", () => {
    expect(found("seat Badger")).toContain("SE60-01");
    expect(found("seat Badger")).not.toContain("SE60-02");
    expect(found("seat Heron")).not.toContain("SE60-01");
  });

  test("is first what a number names", () => {
    expect(found("HY59-01")[0]).toBe("HY59-01");
    expect(search("HT-102").results[0]).toMatchObject({ kind: "part", id: "HT-102", trap: false });
    expect(search("ht 102").results[0]).toMatchObject({ kind: "part", id: "HT-102" });
  });

  test("is at the end the page of a component", () => {
    expect(search("step").results).toMatchObject([
      { kind: "record", id: "FR60-01" },
      { kind: "component", id: "step" },
    ]);
  });

  test("every record found carries the answer", () => {
    for (const question of ["seat", "step", "pump 59 Badger", "oil"]) {
      const { because, results } = search(question);
      const records = results.filter(({ kind }) => kind === "record").map(({ id }) => id);
      expect([question, because.map((reason) => reason.record)]).toEqual([question, records]);
    }
  });
});

describe("where nothing is found", () => {
  test.each(["zeppelin", "what changed", "🚜", "?"])("%j says so", (question) => {
    expect(search(question)).toMatchObject({
      verdict: "nothing found",
      results: [],
      because: [],
      ask: { what: "Nothing is on record. Try fewer or other words." },
    });
  });
});

test("the reading is part of the answer", () => {
  expect(search("what changed on the seat of '59 Badgers").reading).toMatchObject({
    chips: [
      { kind: "year", ids: ["1959"], label: "1959", said: "'59" },
      { kind: "line", ids: ["B"], label: "Badger", said: "Badgers" },
    ],
    asked: [{ asked: "changed" }],
    rest: "seat",
  });
});
