/**
 * The questions that "ask" is scored with: a line each, with the records that ought to be found.
 *
 *   half       build: looked at while building; end: looked at only as scores
 *   question   as somebody typed it
 *   records    the first must be one of "A|B"; what stands after a space should follow; "-": nothing is on record
 *   answer     the engine question that ought to stand on top; "-": none, the records stand alone
 *   expected   the verdict, figure or number that it ought to say; "-": nothing is set down
 */
import { readFileSync } from "node:fs";

export const HALVES = ["build", "end"] as const;
export type Half = (typeof HALVES)[number];

export interface AskedQuestion {
  readonly half: Half;
  readonly text: string;
  /** Empty where nothing is on record. */
  readonly records: readonly (readonly string[])[];
  readonly answer?: string;
  readonly expected?: string;
}

export function readQuestions(file: string): AskedQuestion[] {
  const [, ...rows] = readFileSync(file, "utf8")
    .split(/\r?\n/)
    .filter((line) => line !== "" && !line.startsWith("#"));
  return rows.map((line) => {
    const [half = "", text = "", records = "", answer = "", expected = ""] = line.split("\t");
    // The text of a question of the end half is nobody's to see: the complaint names the file only.
    if (!isHalf(half) || [text, records, answer, expected].includes(""))
      throw new Error(`${file}: a line has not the fields half, question, records, answer, expected`);
    return {
      half,
      text,
      records: records === "-" ? [] : records.split(" ").map((either) => either.split("|")),
      ...(answer === "-" ? {} : { answer }),
      ...(expected === "-" ? {} : { expected }),
    };
  });
}

export function isHalf(text: string): text is Half {
  return (HALVES as readonly string[]).includes(text);
}
