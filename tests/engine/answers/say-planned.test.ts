import { describe, expect, test } from "vitest";
import { answerApplies } from "../../../src/engine/answers/answer-applies.ts";
import { answerCurrent } from "../../../src/engine/answers/answer-current.ts";
import { answerMayFit } from "../../../src/engine/answers/answer-may-fit.ts";
import { answerReading } from "../../../src/engine/answers/answer-reading.ts";
import { answerSetting } from "../../../src/engine/answers/answer-setting.ts";
import { answerTellApart } from "../../../src/engine/answers/answer-tell-apart.ts";
import type { Planned } from "../../../src/engine/answers/plan-answers.ts";
import { askPlanned, type Given } from "../../../src/engine/answers/say-planned.ts";
import type { CarInput } from "../../../src/engine/answers/shapes/car.ts";
import { askedKnowledge } from "../../helpers/tiny-asked.ts";

const knowledge = askedKnowledge();
const BADGER_59 = { facts: { line: "B", my: "1959" } };
const HERON_59 = { facts: { line: "H", my: "1959" } };

function one(asked: Planned, sure: CarInput = asked.car): Given {
  const [given] = askPlanned(knowledge, { planned: [asked], sure, lost: false });
  if (!given) throw new Error("it was not answered");
  return given;
}

describe("what the engine says by itself is said as it is", () => {
  const part = { part: "FR-2L", car: BADGER_59 };
  const figure = { setting: "step bolt torque", car: BADGER_59 };
  // what is asked, the answer to that question alone
  const CASES: [Planned, { verdict: string; words: string; because: readonly unknown[] }][] = [
    [{ question: "may-fit", ...part }, answerMayFit(knowledge, part)],
    [{ question: "setting", ...figure }, answerSetting(knowledge, figure)],
    [{ question: "reading", ...figure, value: "25 N·m" }, answerReading(knowledge, { ...figure, value: "25 N·m" })],
    [
      { question: "tell-apart", component: "step", car: BADGER_59 },
      answerTellApart(knowledge, { component: "step", parts: undefined, car: BADGER_59 }),
    ],
    [
      { question: "applies", record: "FR60-01", car: BADGER_59 },
      answerApplies(knowledge, { record: "FR60-01", car: BADGER_59 }),
    ],
  ];
  test.each(CASES)("$question", (asked, alone) => {
    const { verdict, says, because, answer } = one(asked);
    expect({ verdict, because, answer }).toEqual({ verdict: alone.verdict, because: alone.because, answer: alone });
    expect(says).toContain(alone.words);
  });
});

test("a number that is current rests on the record that it was built by", () => {
  const alone = answerCurrent(knowledge, { part: "FR-2L", car: BADGER_59 });
  const { verdict, says, because, answer } = one({ question: "current", part: "FR-2L", car: BADGER_59 });
  expect([verdict, says]).toEqual([alone.verdict, alone.words]);
  expect(answer).toMatchObject({ verdict: alone.verdict });
  expect(because.map(({ record }) => record)).toEqual(["FR60-01"]);
});

test("what cannot be asked of this car is left out, and the rest is answered in its order", () => {
  const planned: Planned[] = [
    { question: "may-fit", part: "ZZ-999", car: BADGER_59 },
    { question: "may-fit", part: "FR-2R", car: BADGER_59 },
    { question: "setting", setting: "weight of the moon", car: BADGER_59 },
    { question: "may-fit", part: "FR-2L", car: BADGER_59 },
    { question: "applies", record: "FR60-01", car: { facts: { wings: "two" } } },
  ];
  expect(
    askPlanned(knowledge, { planned, sure: BADGER_59, lost: false }).map(({ asked }) => "part" in asked && asked.part),
  ).toEqual(["ZZ-999", "FR-2R", "FR-2L"]);
  // A part that no record names is on record for no car.
  expect(askPlanned(knowledge, { planned, sure: BADGER_59, lost: false })[0]).toMatchObject({
    verdict: "not on record",
    because: [],
  });
  expect(askPlanned(knowledge, { planned: [], sure: {}, lost: false })).toEqual([]);
});

describe("what permits something is asked again of what is certain of the car", () => {
  const said: Planned = { question: "may-fit", part: "FR-2L", car: BADGER_59 };

  test("so that a doubt never leaves a permission", () => {
    expect(one(said)).toMatchObject({ verdict: "yes", asked: { car: BADGER_59 } });
    expect(one(said, { facts: { my: "1959" } })).toMatchObject({
      verdict: "look first",
      asked: { car: { facts: { my: "1959" } } },
    });
    expect(one(said, {})).toMatchObject({ verdict: "look first" });
    expect(one(said, HERON_59)).toMatchObject({ verdict: "not on record" });
  });

  test("the plant's own part and a reading that passes are permissions too", () => {
    expect(one({ ...said, part: "FR-1L" }, {}).verdict).toBe("look first");
    const reading: Planned = { question: "reading", setting: "step bolt torque", value: "25 N·m", car: BADGER_59 };
    expect([one(reading).verdict, one(reading, {}).verdict]).toEqual(["within", "look first"]);
  });

  test("a refusal stands", () => {
    const refused: Planned = { question: "may-fit", part: "FR-1L", car: { facts: { line: "B", my: "1960" } } };
    expect(one(refused, {}).verdict).toBe("goes on but must not be used");
  });

  test("what is on the car stays on it", () => {
    const car = { ...BADGER_59, fitted: ["HT-101"] };
    expect(one({ ...said, car }, BADGER_59).asked.car).toEqual(car);
  });
});

describe("what must go along", () => {
  const car = { facts: { line: "B", my: "1959", plant: "K", number: "0100" }, fitted: ["HT-201"] };
  const pump: Planned = { question: "may-fit", part: "HT-102", car };

  test("is named with the permission", () => {
    expect(one(pump)).toMatchObject({ verdict: "yes, on conditions", says: expect.stringContaining("HT-201") });
  });

  test("leaves no permission where it is to be left out", () => {
    const { verdict, says } = one({ ...pump, leftOut: ["HT-201"] });
    expect(verdict).toBe("not on record");
    expect(says).toContain("HT-201");
    expect(one({ ...pump, leftOut: ["FR-1L"] }).verdict).toBe("yes, on conditions");
  });
});

describe("retrofits in a sentence", () => {
  // component, car, what is said
  const CASES: [string, Planned["car"], string | RegExp][] = [
    ["step", BADGER_59, "FR-2L and FR-2R may be fitted."],
    ["step", { facts: { line: "B", my: "1960" } }, "Nothing may be fitted here: 2 ways are closed."],
    ["step", {}, "FR-2L or FR-2R may go on some cars like this one only: look first."],
    ["step", HERON_59, "No record says that anything may be fitted here. Silence is not permission."],
    ["step", { facts: { line: "H", my: "1957" } }, "No such car was built, or it is no longer as built."],
  ];
  test.each(CASES)("%s on %j", (component, car, says) => {
    expect(one({ question: "retrofits", component, car }).says).toBe(says);
  });

  test("a condition is never left unsaid", () => {
    const car = { facts: { line: "B", my: "1959", plant: "K", number: "0100" }, fitted: ["HT-201"] };
    const { says } = one({ question: "retrofits", component: "pump", car });
    expect(says).toBe("HT-102 may be fitted on conditions only.");
  });
});

describe("what is due in a sentence", () => {
  const due = (about: string[], names?: string[]): Given =>
    one({ question: "schedule", car: BADGER_59, about, ...(names ? { names } : {}) });

  test("is what the question names, with its records", () => {
    const { says, because, answer } = due(["pump"], ["oil change"]);
    expect(says).toBe("oil change: every 12 months.");
    expect(because.map(({ record }) => record)).toEqual(["HY59-01"]);
    expect(answer).toMatchObject({ items: [{ name: "oil change" }] });
  });

  test("is the whole schedule where it names nothing of it", () => {
    expect(due([]).says).toMatch(/interval.* on record/);
    expect(due([])).toEqual({ ...due(["frame"]), asked: due([]).asked });
  });
});

describe("changes in a sentence", () => {
  const changed = (from: number, to: number, about: string[] = [], line = "B"): Given =>
    one({ question: "net-change", from, to, about, car: { facts: { line, my: String(to) } } });

  test("are counted, and named where they are sure and few", () => {
    expect(changed(1959, 1960, ["step"]).says).toBe(
      "Between 1959 and 1960 3 changes are on record: step, left; step, right; step bolt torque.",
    );
  });

  test("only those of what is asked about count, and their records", () => {
    const { answer, because } = changed(1959, 1960, ["frame"]);
    expect(answer).toMatchObject({
      changes: [{ name: "step, left" }, { name: "step, right" }, { name: "step bolt torque" }],
    });
    expect([...new Set(because.map(({ record }) => record))]).toEqual(["FR60-01"]);
    expect(changed(1959, 1960, ["hydraulics"]).because.map(({ record }) => record)).not.toContain("FR60-01");
  });

  test("that are not on record are not said not to be", () => {
    expect(changed(1960, 1961, ["step"], "H").says).toBe(
      "No change is on record between 1960 and 1961. That is not the same as no change.",
    );
    expect(changed(1957, 1958, [], "H").says).toBe("No such car was built.");
  });
});
