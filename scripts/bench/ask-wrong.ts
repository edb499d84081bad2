/** Single questions that went wrong, for whoever builds. Those of the half for the end are never listed: who reads them builds for them. */
import type { AskAnswer } from "../../src/engine/answers/shapes/ask.ts";
import { standsIn } from "./ask-expected.ts";
import { resultOf } from "./ask-ours.ts";
import type { AskedQuestion } from "./ask-questions.ts";
import { isNothing, rankOf } from "./ask-score.ts";

export interface Wrong {
  readonly question: string;
  readonly what: "first record" | "question on top" | "words";
  readonly wanted: string;
  readonly got: string;
}

export function wrongOf({ half, text, records, answer, expected }: AskedQuestion, given: AskAnswer): Wrong[] {
  if (half === "end") return [];
  const wrong = (what: Wrong["what"], wanted: string, got: string): Wrong => ({ question: text, what, wanted, got });
  const result = resultOf(given);
  const isRight = records.length === 0 ? isNothing(result) : rankOf({ records }, result) === 1;
  const first = wrong(
    "first record",
    records.map((either) => either.join("|")).join(" ") || "nothing on record",
    `${result.records.slice(0, 3).join(" ")}${result.saysNothing ? " (nothing on record)" : ""}`,
  );
  if (answer === undefined) return isRight ? [] : [first];
  const [top] = given.answers;
  const isWorded = expected === undefined || standsIn(expected, given.answers, records.flat());
  return [
    ...(isRight ? [] : [first]),
    ...(top?.asked.question === answer ? [] : [wrong("question on top", answer, top?.asked.question ?? "none")]),
    ...(isWorded ? [] : [wrong("words", expected, given.answers.map((it) => `${it.verdict}: ${it.says}`).join(" / "))]),
  ];
}
