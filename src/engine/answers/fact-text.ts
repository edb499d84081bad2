/** A fact as people type it, on the command line and in addresses. */
import { QuestionError } from "./question-error.ts";

export type FactValue = string | string[] | { from?: string; to?: string };

/** trait=value, trait=a,b for several values that are still possible, trait=from..to for a range. Throws a QuestionError. */
export function readFactText(text: string): [trait: string, value: FactValue] {
  const at = text.indexOf("=");
  if (at < 1) throw new QuestionError(`'${text}' is no fact. Write trait=value.`);
  return [text.slice(0, at).trim(), readFactValue(text.slice(at + 1).trim())];
}

export function readFactValue(text: string): FactValue {
  const run = /^(.*?)\.\.(.*)$/.exec(text);
  if (run) return { ...(run[1] ? { from: run[1].trim() } : {}), ...(run[2] ? { to: run[2].trim() } : {}) };
  return text.includes(",") ? text.split(",").map((one) => one.trim()) : text;
}
