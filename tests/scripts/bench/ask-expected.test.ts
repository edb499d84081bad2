import { describe, expect, test } from "vitest";
import { type Given, plainWords, standsIn } from "../../../scripts/bench/ask-expected.ts";

const given = (verdict: string, says: string, more: object = {}, record = "HY59-01"): Given => ({
  asked: { question: "may-fit" },
  says,
  verdict,
  because: [{ record, statement: "record", text: "", address: "" }],
  answer: { ...more },
});

// what is written, what the answer says, whether it stands there
const WORDS: [expected: string, says: string, stands: boolean][] = [
  ["7 to 9 notches", "shoe back-off: 7–9 notches.", true],
  ["7 to 9 notches", "shoe back-off: 7..9 notches (cold)", true],
  ["7 to 9 notches", "shoe back-off: 17 to 9 notches", false],
  ["24000 miles", "oil change: every 24,000 miles, whichever comes first", true],
  ["24000 miles", "oil change: every 4,000 miles", false],
  ["6 months", "fluid: every 36 months", false],
  ["6 months", "fluid: every 6 months or 6,000 miles", true],
  ["0.25 in", "rod: exactly 0.250 in", false], // the figure as written, zeros and all
  ["0.070 in", "play: at most 0.070 in (unloaded)", true],
  ["4 to 6 deg BTDC", "timing: 4 to 6 deg btdc (hose off)", true],
  ["HT-101", "It may be HT-101, HT-102 or HT-103.", true],
  ["HT-103", "It may be HT-101, HT-102 or HT-103.", true],
  ["HT-10", "It may be HT-101 or HT-102.", false],
  ["HT-101", "It may be HT-101L.", false],
];

test.each(WORDS)("'%s' in '%s': %s", (expected, says, stands) => {
  expect(standsIn(expected, [given("in force", says)], ["HY59-01"])).toBe(stands);
});

// what is written, the verdict of the answer, whether they agree
const VERDICTS: [expected: string, verdict: string, agree: boolean][] = [
  ["yes", "yes", true],
  ["yes", "as built", true],
  ["yes", "yes, on conditions", false],
  ["on conditions", "yes, on conditions", true],
  ["on conditions", "yes", false],
  ["must not", "goes on but must not be used", true],
  ["must not", "does not go on", false],
  ["no", "does not go on", true],
  ["no", "no", true],
  ["no", "not on record", false], // silence is not a no
  ["look first", "look first", true],
  ["look first", "yes", false],
];

test.each(VERDICTS)("'%s' is the verdict '%s': %s", (expected, verdict, agree) => {
  // The words of the sentence do not count: "no" stands in many.
  expect(standsIn(expected, [given(verdict, "yes no look first must not on conditions")], ["HY59-01"])).toBe(agree);
});

describe("of ways to improve a car", () => {
  const ways = (...verdicts: string[]) =>
    given("on record", "", { paths: verdicts.map((verdict) => ({ verdict })), blocked: [] });

  test("the best counts", () => {
    expect(standsIn("yes", [ways("yes, on conditions", "yes")], ["HY59-01"])).toBe(true);
    expect(standsIn("on conditions", [ways("yes, on conditions", "yes")], ["HY59-01"])).toBe(false);
    expect(standsIn("on conditions", [ways("yes, on conditions")], ["HY59-01"])).toBe(true);
  });

  test("none that is open is a no, but where nothing is on record that is all that is said", () => {
    expect(standsIn("no", [ways()], ["HY59-01"])).toBe(true);
    expect(standsIn("no", [given("not on record", "", { paths: [] })], ["HY59-01"])).toBe(false);
  });
});

test("the number of a part may come from any record", () => {
  expect(standsIn("HT-101", [given("still open", "It may be HT-101.", {}, "FR58-01")], ["HY59-01"])).toBe(true);
});

test("a figure from another record does not count, and one of several answers is enough", () => {
  const other = given("in force", "oil: every 6 months", {}, "FR58-01");
  expect(standsIn("6 months", [other], ["HY59-01"])).toBe(false);
  expect(standsIn("6 months", [other, given("in force", "fluid: every 6 months")], ["HY59-01"])).toBe(true);
  expect(standsIn("6 months", [], ["HY59-01"])).toBe(false);
});

test("words are compared without the signs of a sentence", () => {
  expect(plainWords("It is “7 – 9” (cold); 1,200 rpm.")).toBe("it is 7 to 9 cold 1200 rpm");
});
