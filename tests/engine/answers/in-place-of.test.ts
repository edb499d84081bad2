/** What is on record in one of two years only, and the records that took its place. */
import { describe, expect, test } from "vitest";
import type { answerNetChange } from "../../../src/engine/answers/answer-net-change.ts";
import { inPlaceOf } from "../../../src/engine/answers/in-place-of.ts";
import { mattersOf, valuesIn } from "../../../src/engine/answers/net-change.ts";
import { lawfulAnswer } from "../../helpers/answer-laws.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

type Answer = ReturnType<typeof answerNetChange>;

function recordOf(id: string, year: number, lines: string): Record<string, string> {
  return {
    [`changes/${year}/${id}.md`]: `---
id: ${id}
title: Title of ${id}
issued: ${year}-02-01
starts: start of ${year}
${lines}
---

Story.
`,
  };
}

/** A gap of the pump is on record until 1958; the record in question is of 1959. */
function world(lines: string) {
  return tinyKnowledge({
    "changes/1958/FR58-01.md": undefined,
    ...recordOf(
      "HY59-01",
      1959,
      `kinds: [setting]
components: [pump]
scope: my<=1958
settings:
  - { name: gap, window: 1..2, unit: mm, component: pump, scope: my<=1958 }`,
    ),
    ...recordOf("HY59-02", 1959, lines),
  });
}

function asked(lines: string, from: number, my: number) {
  const answer = lawfulAnswer(world(lines), {
    question: "net-change",
    from,
    facts: { line: "B", my, plant: "K" },
  }) as unknown as Answer;
  return {
    changes: answer.changes.map(({ name, to, inPlaceOf }) => [name, to[0]?.value, inPlaceOf]),
    apart: answer.notOnRecord.map(({ name, year, see }) => [name, year, see.map((it) => it.words)]),
  };
}

const LOOK = "kinds: [procedure]\ncomponents: [pump]\nscope: my>=1959\nprocedures: [{ steps: Look at it. }]";

describe("a figure that is no longer on record", () => {
  test("where a record tells what to do about the same component: that record is the change", () => {
    expect(asked(LOOK, 1958, 1959)).toEqual({
      changes: [["Title of HY59-02", "holds", ["gap: 1 to 2 mm in 1958; not on record in 1959."]]],
      apart: [["gap", 1959, ["HY59-02 gives a procedure: Title of HY59-02."]]],
    });
  });

  test("backwards", () => {
    expect(asked(LOOK, 1959, 1958)).toEqual({
      changes: [["Title of HY59-02", "does not hold", ["gap: 1 to 2 mm in 1958; not on record in 1959."]]],
      apart: [["gap", 1959, ["HY59-02 gives a procedure: Title of HY59-02."]]],
    });
  });

  // what the record of 1959 says, what is shown as a change
  test.each([
    ["of another component", LOOK.replace("[pump]", "[gasket]"), ["Title of HY59-02"]],
    ["that held before, too", LOOK.replace("my>=1959", "all"), []],
    ["for other tractors", LOOK.replace("my>=1959", "line=H"), []],
  ])("a procedure %s did not take its place", (_, lines, changes) => {
    const found = asked(lines, 1958, 1959);
    expect(found.changes.map(([name]) => name)).toEqual(changes);
    expect(found.apart).toEqual([["gap", 1959, []]]);
  });

  test("a record that ends it stands among the changes, whatever years it is about", () => {
    const lines = "kinds: [cancellation]\nin-force-from: 1960\nscope: my<=1958\ncancels: [{ record: HY59-01 }]";
    // The tractor of 1958 is read today.
    expect(asked(lines, 1957, 1958)).toEqual({
      changes: [["Title of HY59-02", "holds", ["gap: 1 to 2 mm in 1957; not on record in 1958."]]],
      apart: [["gap", 1958, ["HY59-02 ends HY59-01: Title of HY59-02."]]],
    });
  });

  test("nothing at all: no change, but nothing is lost", () => {
    expect(asked("kinds: [part]\nscope: line=H\nservice-only: [HT-201]", 1958, 1959)).toEqual({
      changes: [],
      apart: [["gap", 1959, []]],
    });
  });
});

test("a part in a place where nothing was fitted is new", () => {
  const lines = `kinds: [part]
components: [pump]
scope: all
built:
  - { place: pump, part: none, scope: my<=1958 }
  - { place: pump, part: HT-102, scope: my>=1959 }
  - { place: lift arms, part: HT-290, scope: my>=1959 }`;
  const { changes, apart } = asked(lines, 1958, 1959);
  expect(changes).toEqual([["pump", "HT-102", undefined]]);
  expect(apart.map(([name, year]) => [name, year])).toEqual([
    ["gap", 1959],
    ["lift arms", 1958],
  ]);
});

test("is asked of the cars on both sides", () => {
  const knowledge = world(LOOK);
  const { space, buildable } = knowledge.catalog;
  const of = (year: number) => {
    const cars = space.sets.and(buildable, space.where(space.role("year") as number, [[year, year]]));
    return { year: { year, cars }, cars };
  };
  const matter = mattersOf(knowledge.catalog).find((it) => it.name === "gap");
  if (!matter) throw new Error("no gap");
  const values = valuesIn(knowledge, matter, of(1958).year);
  const ids = (silent: number, other: number): string[] =>
    inPlaceOf(knowledge, matter, { values, silent: of(silent), other: of(other) }).map((it) => it.record.id);
  expect([ids(1959, 1958), ids(1958, 1959), ids(1960, 1959)]).toEqual([["HY59-02"], [], []]);
});
