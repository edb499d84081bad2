/** One answer for a new file, from a flag or typed in: what it means, or what is wrong with it. */
import { idMeant, nearestOption } from "./answer-options.ts";
import type { Answers, Desk, Field } from "./field.ts";

export type Read = { readonly value: string | readonly string[] | undefined } | { readonly fault: string };

/** Nothing typed is no answer; that is a fault only where one is needed. */
export function readAnswer(field: Field, typed: readonly string[], desk: Desk, answers: Answers): Read {
  const words = (field.many ? typed.flatMap((text) => text.split(",")) : typed)
    .map((text) => text.trim())
    .filter((text) => text !== "");
  if (words.length === 0) return field.needed ? { fault: "an answer is needed" } : { value: undefined };
  if (!field.many && words.length > 1) return { fault: "it is given more than once" };
  const values: string[] = [];
  for (const word of words) {
    const one = readOne(field, word, desk, answers);
    if ("fault" in one) return one;
    values.push(one.value);
  }
  const value = field.many ? values : (values[0] as string);
  const shape = field.shape?.safeParse(value);
  if (shape?.success === false) return { fault: shape.error.issues[0]?.message ?? "it cannot be so" };
  return { value };
}

function readOne(field: Field, word: string, desk: Desk, answers: Answers): { value: string } | { fault: string } {
  const options = field.options?.(desk, answers);
  // The traits of a scope and the features of a mark only begin an answer.
  if (options && !options.some(({ value }) => value.endsWith("="))) {
    const value = idMeant(word, options, desk);
    if (value === undefined && options.length > 0) {
      const meant = nearestOption(word, options, desk);
      return { fault: `there is no '${word}'${meant ? `: did you mean '${meant}'?` : ""}` };
    }
    return { value: value ?? word };
  }
  const fault = field.fault?.(word, desk, answers);
  return fault === undefined ? { value: word } : { fault };
}
