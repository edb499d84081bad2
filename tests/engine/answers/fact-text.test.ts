import { expect, test } from "vitest";
import { readFactText, readFactValue } from "../../../src/engine/answers/fact-text.ts";
import { QuestionError } from "../../../src/engine/answers/question-error.ts";

// as typed, trait, value
const CASES: [string, string, unknown][] = [
  ["my=1973", "my", "1973"],
  [" my = 1973 ", "my", "1973"],
  ["eng=K,R", "eng", ["K", "R"]],
  ["eng=K , R", "eng", ["K", "R"]],
  ["seq=24000..", "seq", { from: "24000" }],
  ["seq=..24000", "seq", { to: "24000" }],
  ["seq=10001 .. 24000", "seq", { from: "10001", to: "24000" }],
  ["note=a=b", "note", "a=b"],
];
test.each(CASES)("'%s' says %s is %j", (text, trait, value) => {
  expect(readFactText(text)).toEqual([trait, value]);
});

test.each(["", "my", "=1973"])("'%s' is no fact", (text) => {
  expect(() => readFactText(text)).toThrow(QuestionError);
});

test("a value by itself is read the same", () => {
  expect(readFactValue(" K ")).toBe(" K ");
  expect(readFactValue("1..2")).toEqual({ from: "1", to: "2" });
});
