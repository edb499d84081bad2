/**
 * How well a search did on a set of questions.
 *
 *   first right     the first record is one of those that may be first
 *   MRR             mean reciprocal rank: 1 where such a record is first, 1/2 where it is second …, 0 where it is not listed
 *   recall at 5     of all records that are set down, the share among the first five
 *   nothing found   nothing is listed, or it is said that nothing is on record
 *
 * All four are of the questions with a record. Of those without one it is counted how often nothing was found, as it should be.
 */
import type { AskedQuestion } from "./ask-questions.ts";

export interface SearchResult {
  /** Ids of records, the best first. */
  readonly records: readonly string[];
  /** It is said that nothing is on record, whatever is listed. */
  readonly saysNothing?: boolean;
}

export interface Score {
  readonly asked: number;
  readonly firstRight: number;
  readonly meanReciprocalRank: number;
  readonly recallAt5: number;
  readonly nothingFound: number;
  readonly withoutRecord: number;
  readonly rightlyNothing: number;
}

const FIRST = 5;

/** `results` are in the order of the questions. */
export function scoreOf(questions: readonly AskedQuestion[], results: readonly SearchResult[]): Score {
  const pairs = questions.map((question, i) => ({ question, result: results[i] as SearchResult }));
  const withRecord = pairs.filter(({ question }) => question.records.length > 0);
  const without = pairs.filter(({ question }) => question.records.length === 0);
  const ranks = withRecord.map(({ question, result }) => rankOf(question, result));
  return {
    asked: withRecord.length,
    firstRight: mean(ranks.map((rank) => (rank === 1 ? 1 : 0))),
    meanReciprocalRank: mean(ranks.map((rank) => (rank === 0 ? 0 : 1 / rank))),
    recallAt5: mean(withRecord.map(({ question, result }) => recall(question, result))),
    nothingFound: mean(withRecord.map(({ result }) => (isNothing(result) ? 1 : 0))),
    withoutRecord: without.length,
    rightlyNothing: mean(without.map(({ result }) => (isNothing(result) ? 1 : 0))),
  };
}

export function isNothing({ records, saysNothing = false }: SearchResult): boolean {
  return saysNothing || records.length === 0;
}

/** From 1; 0 where none of those that may be first is listed. */
export function rankOf(
  { records: [mayBeFirst = []] }: Pick<AskedQuestion, "records">,
  { records }: SearchResult,
): number {
  return records.findIndex((id) => mayBeFirst.includes(id)) + 1;
}

function recall({ records }: AskedQuestion, result: SearchResult): number {
  const wanted = [...new Set(records.flat())];
  const first = result.records.slice(0, FIRST);
  return wanted.filter((id) => first.includes(id)).length / wanted.length;
}

/** Of nothing it is 0. */
export function mean(numbers: readonly number[]): number {
  return numbers.length === 0 ? 0 : numbers.reduce((sum, number) => sum + number, 0) / numbers.length;
}
