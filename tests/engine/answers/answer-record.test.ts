import { describe, expect, test } from "vitest";
import { answerRecord, viewRecord } from "../../../src/engine/answers/answer-record.ts";
import type { Knowledge } from "../../../src/engine/answers/knowledge.ts";
import { lawfulAnswer } from "../../helpers/answer-laws.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const knowledge = tinyKnowledge();
const view = (from: Knowledge, id: string): ReturnType<typeof viewRecord> => {
  const record = from.catalog.records.get(id);
  if (!record) throw new Error(`no record ${id}`);
  return viewRecord(from, record);
};

// typed, record that is meant
const SPELLINGS: [string, string][] = [
  ["HY59-01", "HY59-01"],
  ["  HY59-01 ", "HY59-01"],
  ["hy59-01", "HY59-01"],
  ["HY 59 01", "HY59-01"],
  ["HY59–01", "HY59-01"],
  ["hy5901", "HY59-01"],
];
test.each(SPELLINGS)("'%s' is record %s", (typed, id) => {
  expect(lawfulAnswer(knowledge, { question: "record", record: typed })).toMatchObject({ record: { id } });
});

// typed, what is asked back, what may be meant
const UNKNOWN: [string, string, string[]][] = [
  ["HY59-02", "Which record is meant? None is called 'HY59-02'.", ["HY59-01"]],
  [" HY59-02\n", "Which record is meant? None is called 'HY59-02'.", ["HY59-01"]],
  ["brakes", "Which record is meant? None is called 'brakes'.", []],
  ["HY-1", "'HY-1' is no longer used: renamed", ["HY59-01"]],
  ["HT-101", "Which record is meant? None is called 'HT-101'.", []],
];
test.each(UNKNOWN)("'%s' is no record, and more is asked", (typed, what, options) => {
  expect(answerRecord(knowledge, typed)).toEqual({
    question: "record",
    verdict: "not on record",
    because: [],
    ask: { what, options },
  });
});

describe("whether a record still counts", () => {
  const FRAME = "changes/1958/FR58-01.md";
  const PUMP = "changes/1959/HY59-01.md";
  const CANCEL = "cancels:\n  - { record: FR58-01, scope: line=B }\n";
  const also = (id: string, cancels: string): string =>
    `---\nid: ${id}\ntitle: End\nissued: 1960-01-01\nkinds: [cancellation]\nstarts: at once\nscope: all\ncancels: [${cancels}]\n---\n\nEnded.\n`;
  // what ends the record about frames, which is about every car from 1958
  const ENDINGS: [what: string, verdict: string, spoil: Parameters<typeof tinyKnowledge>[0]][] = [
    ["nothing", "on record", { [PUMP]: [CANCEL, ""] }],
    ["a record for Badgers", "cancelled in part", {}],
    ["a record, whole", "cancelled", { [PUMP]: ["{ record: FR58-01, scope: line=B }", "{ record: FR58-01 }"] }],
    ["a record for every car", "cancelled", { [PUMP]: ["FR58-01, scope: line=B", "FR58-01, scope: all"] }],
    [
      "two records that leave no car between them",
      "cancelled",
      { "changes/1960/FR60-01.md": also("FR60-01", "{ record: FR58-01, scope: line=H }") },
    ],
    [
      "two records that leave the Herons of 1961",
      "cancelled in part",
      { "changes/1960/FR60-01.md": also("FR60-01", "{ record: FR58-01, scope: line=H; my<=1960 }") },
    ],
    ["its own withdrawal", "withdrawn", { [FRAME]: ["issued:", "withdrawn: A slip.\nissued:"] }],
  ];
  test.each(ENDINGS)("ended by %s it is %s", (_, verdict, spoil) => {
    const answer = lawfulAnswer(tinyKnowledge(spoil), { question: "record", record: "FR58-01" });
    expect(answer.verdict).toBe(verdict);
  });

  test("a withdrawn record names what holds instead, or that nothing does", () => {
    const withdrawn = (more: string): Knowledge =>
      tinyKnowledge({ [FRAME]: ["issued:", `withdrawn: A slip.\n${more}issued:`] });
    expect(view(withdrawn("instead: [HY59-01]\n"), "FR58-01").instead).toEqual([
      { id: "HY59-01", title: "Longer hydraulic pump", address: "/records/HY59-01/" },
    ]);
    expect(view(withdrawn(""), "FR58-01").instead).toEqual([]);
    expect(view(knowledge, "FR58-01").instead).toBeUndefined();
  });

  test("what ended it carries the answer, and is named with its scope", () => {
    const answer = lawfulAnswer(knowledge, { question: "record", record: "FR58-01" });
    expect(answer.because.map(({ record }) => record)).toEqual(["FR58-01", "HY59-01"]);
    expect(view(knowledge, "FR58-01").cancelledBy).toEqual([
      {
        id: "HY59-01",
        title: "Longer hydraulic pump",
        address: "/records/HY59-01/",
        scope: { text: "line=B", words: "Badger" },
      },
    ]);
    expect(view(knowledge, "HY59-01").cancels.map(({ id }) => id)).toEqual(["FR58-01"]);
  });
});

describe("a record as pages show it", () => {
  test("before and after stand place by place: after is what cars of the change were built with", () => {
    const shown = view(knowledge, "HY59-01").places.map(({ place, before, after }) => [
      place,
      before.map(({ anchor, parts }) => [anchor, ...parts]),
      after.map(({ anchor, parts }) => [anchor, ...parts]),
    ]);
    expect(shown).toEqual([
      [
        "pump",
        [
          ["built-1", "HT-101"],
          ["mixed-1", "HT-101", "HT-102"],
        ],
        [["built-2", "HT-102"]],
      ],
      ["lift arms", [["built-3"]], []],
    ]);
  });

  test("figures stay as written beside the other unit, and a unit without one stands alone", () => {
    const written = view(
      tinyKnowledge({ "changes/1959/HY59-01.md": ["window: 120..135", 'window: "0.60..0.650"'] }),
      "HY59-01",
    ).settings;
    expect(written[0]).toMatchObject({
      low: "0.60",
      high: "0.650",
      unit: "bar",
      nominal: 130,
      converted: { low: "8.71", high: "9.42", unit: "psi" }, // 8.702 to 9.427
    });
    expect(written[1]).toMatchObject({ low: undefined, high: "90", component: "lift" });
    const rpm = tinyKnowledge({ "changes/1959/HY59-01.md": ["unit: bar, conditions", "unit: rpm, conditions"] });
    expect(view(rpm, "HY59-01").settings[0]?.converted).toBeUndefined();
  });

  test("it is shown with the cautions of its systems and components, its citations and the records that name it", () => {
    const shown = view(knowledge, "HY59-01");
    expect(shown.cautions.map(({ title }) => title)).toEqual(["Oil under pressure"]);
    expect(shown.citedBy).toEqual([{ id: "TB-1", title: "Pumps", address: "/bulletins/TB-1/" }]);
    expect(shown.links.map(({ id }) => id)).toEqual(["FR58-01"]);
    expect(view(knowledge, "FR58-01").linkedFrom.map(({ id }) => id)).toEqual(["HY59-01"]);
    expect(view(knowledge, "FR58-01").cautions).toEqual([]);
    expect(shown.parts).toEqual(["HT-101", "HT-102", "HT-201", "HT-290"]);
  });
});
