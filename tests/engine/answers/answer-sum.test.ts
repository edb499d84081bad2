/** The answer to "do this sum": what there is, what it takes, what comes out, and what stands in the way. */
import { expect, test } from "vitest";
import { answerSum, type SumQuestion } from "../../../src/engine/answers/answer-sum.ts";
import { QuestionError } from "../../../src/engine/answers/question-error.ts";
import { type SumAnswer, sumAnswer } from "../../../src/engine/answers/shapes/sum.ts";
import { SUM_INPUTS, type SumJob } from "../../../src/engine/records/shapes/sums.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const knowledge = tinyKnowledge();
const JOBS: SumJob[] = [
  {
    sum: "pulley",
    title: "Pump speed",
    record: "HY59-01",
    component: "pump",
    inputs: { engine: "900 rpm", crank: "36 mm", driven: { mark: "bore", component: "pump" } },
  },
  {
    sum: "speedometer",
    title: "Hour meter",
    record: "HY59-01",
    component: "pump",
    inputs: { driveTeeth: "8", ratio: "3.08", turns: "760" },
  },
];
const CAR = { plate: "B9K0411" };

function ask(asked: SumQuestion): SumAnswer {
  const answer = answerSum(knowledge, asked, JOBS);
  // What is said has the shape that is published, and is plain data.
  expect(sumAnswer.parse(answer)).toEqual(answer);
  expect(JSON.parse(JSON.stringify(answer))).toEqual(answer);
  return answer;
}

test("without a sum all are listed, and those that changes bring about", () => {
  const answer = ask({});
  expect(answer.verdict).toBe("list");
  expect(answer.sums?.map((sum) => sum.id)).toEqual(Object.keys(SUM_INPUTS));
  expect(answer.jobs.map((job) => job.title)).toEqual(["Pump speed", "Hour meter"]);
});

test("without figures a sum is described, with what the records fill in for the car", () => {
  const answer = ask({ sum: "Pulley", car: CAR });
  expect(answer.verdict).toBe("described");
  expect(answer.sum?.formula).toBe("n = N x D / d;   N2 = N x d2 / d");
  expect(answer.jobs).toHaveLength(1);
  expect(answer.jobs[0]?.inputs.map((it) => [it.input, it.typed])).toEqual([
    ["engine", "900 rpm"],
    ["crank", "36 mm"],
    ["driven", "18 mm"],
  ]);
  expect(ask({ sum: "Pulleys and test speed" }).verdict).toBe("described");
});

// what is asked, verdict, words
const CASES: [SumQuestion, SumAnswer["verdict"], RegExp][] = [
  [
    { sum: "pulley", inputs: { engine: "900", crank: "2 in", driven: "1 in" } },
    "worked out",
    /^speed of the driven pulley 1800 rpm; /,
  ],
  [{ sum: "pulley", inputs: "engine=900; crank=2 in; driven=1 in" }, "worked out", /1800 rpm/],
  [{ job: "pump speed", car: CAR }, "worked out", /1800 rpm/],
  [{ job: 1, car: CAR, inputs: { crank: "72 mm" } }, "worked out", /3600 rpm/],
  [{ job: 1 }, "missing", /^Still needed: diameter of the driven pulley\.$/],
  [{ job: "2" }, "worked out", /driven pinion to take 19 teeth/],
  [{ job: 2, inputs: { ringTeeth: "41", pinionTeeth: "12" } }, "worked out", /driven pinion to take 21 teeth/],
  [{ sum: "pulley", inputs: {} }, "missing", /^Still needed: what is compared with the driven pulley/],
  [{ sum: "pulley", inputs: { engine: "900", crank: "-2 in", driven: "1 in" } }, "refused", /above 0 in/],
  [{ sum: "dwell-angle", inputs: { cylinders: "8", dwell: "50" } }, "impossible", /never open/],
];
test.each(CASES)("%j: %s", (asked, verdict, words) => {
  const answer = ask(asked);
  expect(answer.verdict).toBe(verdict);
  expect(answer.words).toMatch(words);
});

test("a sum on record names the records that its figures come from", () => {
  expect(ask({ job: 1, car: CAR }).because.map((it) => it.record)).toContain("HY59-01");
});

test("a sum or a job that nobody knows is refused, with the nearest name", () => {
  const said: [SumQuestion, string][] = [
    [{ sum: "pully" }, "No sum is called 'pully'. Did you mean 'pulley'?"],
    [{ sum: "toString" }, "No sum is called 'toString'."],
    [{ job: "pump sped" }, "No sum on record is called 'pump sped'; there are 2. Did you mean 'Pump speed'?"],
    [{ job: 3 }, "No sum on record is called '3'; there are 2."],
    [{ sum: "displacement", job: 1 }, "'Pump speed' is a sum of the kind 'pulley', not 'displacement'."],
    [{ sum: "pulley", inputs: "engine 900" }, "'engine 900' is no figure"],
  ];
  for (const [asked, message] of said) {
    expect(() => ask(asked)).toThrow(QuestionError);
    expect(() => ask(asked)).toThrow(message);
  }
});
