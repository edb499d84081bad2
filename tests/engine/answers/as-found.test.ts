/** The parts seen on a car, by place, and what they do to the net change. */
import { expect, test } from "vitest";
import type { answerNetChange } from "../../../src/engine/answers/answer-net-change.ts";
import { asFound } from "../../../src/engine/answers/as-found.ts";
import { readCar } from "../../../src/engine/answers/car.ts";
import { answerQuestion } from "../../../src/engine/answers/questions.ts";
import { knowledgeOf } from "../../helpers/one-record.ts";

const knowledge = knowledgeOf(`built:
  - { place: pump, part: HT-101, scope: my<=1958 }
  - { place: pump, part: HT-102, scope: my>=1959 }
  - { place: lift arms, part: HT-290, scope: line=B }
  - { place: pump gasket, part: HT-290, scope: all }
settings:
  - { name: gap, window: 1..2, unit: mm, scope: my<=1958; fitted!=HT-102 }
  - { name: gap, window: 3..4, unit: mm, scope: my>=1959 || fitted=HT-102; my<=1958 }`);
type Answer = ReturnType<typeof answerNetChange>;
const inShort = (from: number, facts: Record<string, unknown>, fitted: string[]): string[] =>
  (answerQuestion(knowledge, { question: "net-change", from, facts, fitted }) as Answer).changes
    .filter(({ kind }) => kind !== "record")
    .map(({ name, from, to, verdict }) =>
      [
        name,
        from.map((it) => it.value).join(" or "),
        to.map((it) => `${it.value}${it.asFound ? " as found" : ""}`).join(" or "),
        verdict,
      ].join(" | "),
    );

// part, facts of the car, its places
test.each([
  ["HT-102", { line: "B" }, [["pump", true]]],
  ["HT-290", { line: "H" }, [["pump gasket", true]]], // no Heron has it in the lift arms
  [
    "HT-290",
    { line: "B" },
    [
      ["lift arms", false],
      ["pump gasket", false],
    ],
  ],
])("%s on %j: %j", (part, facts, expected) => {
  const found = asFound(knowledge, readCar(knowledge, { facts, fitted: [part] }));
  expect([...found].map(([place, { certain }]) => [place, certain])).toEqual(expected);
});

test("the part on the car is what the year known is compared with", () => {
  const OLD = { line: "B", my: 1958, plant: "K" };
  expect(inShort(1959, OLD, [])).toEqual(["pump | HT-102 | HT-101 | changed", "gap | 3 to 4 mm | 1 to 2 mm | changed"]);
  // The newer part is on the older car, with its figure: as in the year known.
  expect(inShort(1959, OLD, ["HT-102"])).toEqual([]);
  // Who knows the year before knows the part and the figure of then.
  expect(inShort(1957, OLD, ["HT-102"])).toEqual([
    "pump | HT-101 | HT-102 as found | changed",
    "gap | 1 to 2 mm | 3 to 4 mm | changed",
  ]);
});

test("a part that may sit in several places: only the part itself tells", () => {
  const spread = knowledgeOf(`built:
  - { place: pump, part: HT-101, scope: all }
  - { place: lift arms, part: HT-102, scope: my<=1959 }
  - { place: pump gasket, part: HT-102, scope: my<=1959 }
  - { place: lift arms, part: none, scope: my=1960 }
  - { place: pump gasket, part: none, scope: my=1960 }`);
  const answer = answerQuestion(spread, {
    question: "net-change",
    from: 1960,
    facts: { line: "B", my: 1960 },
    fitted: ["HT-102"],
  }) as Answer;
  expect(answer.changes).toEqual([]); // one and the same year is not compared with itself
  const against = answerQuestion(spread, {
    question: "net-change",
    from: 1959,
    facts: { line: "B", my: 1960 },
    fitted: ["HT-102"],
  }) as Answer;
  expect(
    against.changes.map(({ name, to, verdict }) => [name, to.map((it) => it.value).join(" or "), verdict]),
  ).toEqual([
    ["lift arms", "nothing fitted or HT-102", "look first"],
    ["pump gasket", "nothing fitted or HT-102", "look first"],
  ]);
});
