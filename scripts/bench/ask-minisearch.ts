/**
 * A general search library, MiniSearch, with its best settings: all combinations of those below are tried on the questions of the
 * half for building, and the one with the most first results right is kept; of equals the one with the better reciprocal rank, then
 * the first.
 */
import MiniSearch from "minisearch";
import snowball from "snowball-stemmers";
import type { AskedQuestion } from "./ask-questions.ts";
import { type Score, type SearchResult, scoreOf } from "./ask-score.ts";
import type { RecordText } from "./ask-texts.ts";

export interface Settings {
  /** Words are taken by their stems, as our own search takes them. */
  readonly stems: boolean;
  /** By how many letters a word may differ, as a share of its length. */
  readonly fuzzy: number;
  /** A word may be the beginning of another. */
  readonly prefix: boolean;
  readonly combine: "OR" | "AND";
  /** How much more a word of the title counts. */
  readonly title: number;
}

export interface Tried {
  readonly settings: Settings;
  readonly score: Score;
}

const ALL: readonly Settings[] = [false, true].flatMap((stems) =>
  [0, 0.1, 0.2].flatMap((fuzzy) =>
    [false, true].flatMap((prefix) =>
      (["OR", "AND"] as const).flatMap((combine) =>
        [1, 2, 4].map((title): Settings => ({ stems, fuzzy, prefix, combine, title })),
      ),
    ),
  ),
);

export function tuneMiniSearch(texts: readonly RecordText[], questions: readonly AskedQuestion[]): Tried[] {
  const open = openMiniSearch(texts);
  return ALL.map((settings) => {
    const search = open(settings);
    return {
      settings,
      score: scoreOf(
        questions,
        questions.map(({ text }) => search(text)),
      ),
    };
  }).sort((a, b) => b.score.firstRight - a.score.firstRight || b.score.meanReciprocalRank - a.score.meanReciprocalRank);
}

export function openMiniSearch(texts: readonly RecordText[]): (settings: Settings) => (text: string) => SearchResult {
  const stemmer = snowball.newStemmer("english");
  const indexOf = (stems: boolean): MiniSearch<RecordText> => {
    const index = new MiniSearch<RecordText>({
      fields: ["title", "text"],
      ...(stems ? { processTerm: (term: string) => stemmer.stem(term.toLowerCase()) } : {}),
    });
    index.addAll(texts);
    return index;
  };
  const [plain, stemmed] = [indexOf(false), indexOf(true)];
  return ({ stems, fuzzy, prefix, combine, title }) =>
    (text) => ({
      records: (stems ? stemmed : plain)
        .search(text, { fuzzy, prefix, combineWith: combine, boost: { title } })
        .map(({ id }) => String(id)),
    });
}
