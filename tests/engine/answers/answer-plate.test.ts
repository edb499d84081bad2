import { expect, test } from "vitest";
import type { PlateAnswer } from "../../../src/engine/answers/shapes/plate.ts";
import { lawfulAnswer } from "../../helpers/answer-laws.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const knowledge = tinyKnowledge();
const ask = (plate: string): PlateAnswer =>
  lawfulAnswer(knowledge, { question: "plate", plate }) as unknown as PlateAnswer;

test("a plate that reads: facts that can be asked with again", () => {
  expect(ask("b9-k 0412")).toMatchObject({
    verdict: "read",
    plate: "frame plate",
    number: "B9K0412",
    slips: [],
    facts: [
      { trait: "line", values: ["B"], source: "plate" },
      { trait: "my", values: ["1959"] },
      { trait: "plant", values: ["K"] },
      { trait: "number", values: ["0412"] },
    ],
  });
});

test("a misread character, and what it could be", () => {
  expect(ask("B9O0412")).toMatchObject({
    verdict: "misread",
    facts: [],
    slips: [{ place: 3, character: "O", holds: "plant", couldBe: ["D", "K"] }],
    ask: { what: "Read the marked characters again.", options: ["character 3 (plant): D, K in place of O"] },
  });
});

test("a number with which no car was built: which facts do not go together, and what would", () => {
  const answer = ask("B8D0412");
  expect(answer.verdict).toBe("not built");
  expect(answer.conflict?.map(({ text }) => text)).toEqual(["my=1958", "plant=D"]);
  expect(answer.slips.map(({ place, couldBe }) => [place, couldBe])).toEqual([
    [2, ["9"]],
    [3, ["K"]],
  ]);
});

test("a number that is no plate's", () => {
  expect(ask("B9")).toMatchObject({
    verdict: "unknown",
    ask: {
      what: "The number on a plate has 7 characters; this has 2. Read it again.",
      options: ["frame plate, such as B9 K 0412"],
    },
  });
});
