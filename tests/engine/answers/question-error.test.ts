import { expect, test } from "vitest";
import { QuestionError } from "../../../src/engine/answers/question-error.ts";

test("it is an error of its own kind, so that a fault of the program is never taken for a bad question", () => {
  expect(new QuestionError("why")).toMatchObject({ message: "why" });
  expect(new Error("why")).not.toBeInstanceOf(QuestionError);
});
