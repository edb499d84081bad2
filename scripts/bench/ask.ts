/**
 * "Ask" on the set of questions, beside plain full text searches of the same texts. The half for building and the half for the end
 * are scored each by itself.
 */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { readFolder } from "../../src/build/data/read-folder.ts";
import { openCarKnowledge } from "../../src/engine/answers/car-knowledge.ts";
import type { AskAnswer } from "../../src/engine/answers/shapes/ask.ts";
import { type AnswerScore, scoreAnswers } from "./ask-answers.ts";
import { openFts5 } from "./ask-fts5.ts";
import { openMiniSearch, type Tried, tuneMiniSearch } from "./ask-minisearch.ts";
import { askWhole, openWordsAlone, resultOf } from "./ask-ours.ts";
import { askPagefind } from "./ask-pagefind.ts";
import { type Half, readQuestions } from "./ask-questions.ts";
import { type Score, type SearchResult, scoreOf } from "./ask-score.ts";
import { textsOf } from "./ask-texts.ts";
import { type Wrong, wrongOf } from "./ask-wrong.ts";

export const SEARCHES = ["Yearmark", "its words alone", "Pagefind", "MiniSearch", "FTS5"] as const;
export type Search = (typeof SEARCHES)[number];

export interface HalfScores {
  readonly half: Half;
  readonly searches: Readonly<Record<Search, Score>>;
  readonly answers: AnswerScore;
}

export interface AskResult {
  readonly records: number;
  readonly halves: readonly HalfScores[];
  /** The settings of MiniSearch that were tried, the best first. */
  readonly tried: readonly Tried[];
  /** Single questions of the half for building that went wrong, where that half alone was asked. */
  readonly wrong: readonly Wrong[];
}

export const ASK_FILES = { data: "data", questions: "tests/fixtures/questions.tsv" };

export async function benchAsk(
  halves: readonly Half[],
  say: (line: string) => void,
  { data, questions: file } = ASK_FILES,
): Promise<AskResult> {
  const { catalog } = await readFolder(data);
  if (!catalog) throw new Error(`${data} has errors`);
  const all = readQuestions(file);
  const strange = all.flatMap(({ records }) => records.flat()).filter((id) => !catalog.records.has(id));
  if (strange.length > 0) throw new Error(`${file} names records that there are not: ${strange.join(", ")}`);
  const questions = all.filter(({ half }) => halves.includes(half));
  const typed = questions.map(({ text }) => text);
  const texts = textsOf(catalog);

  say(`asking ${questions.length} questions`);
  const knowledge = openCarKnowledge(catalog);
  const answers = typed.map((text) => askWhole(knowledge, text));
  say("trying settings of MiniSearch");
  const tried = tuneMiniSearch(
    texts,
    all.filter(({ half }) => half === "build"),
  );
  const [best] = tried as [Tried, ...Tried[]];
  say("asking the others");
  const results: Record<Search, readonly SearchResult[]> = {
    Yearmark: answers.map(resultOf),
    "its words alone": typed.map(openWordsAlone(catalog)),
    Pagefind: await inFolder((folder) => askPagefind(texts, typed, folder)),
    MiniSearch: typed.map(openMiniSearch(texts)(best.settings)),
    FTS5: typed.map(openFts5(texts)),
  };
  return {
    records: texts.length,
    tried,
    wrong: halves.includes("end") ? [] : questions.flatMap((question, i) => wrongOf(question, answers[i] as AskAnswer)),
    halves: halves.map((half) => {
      const own = <T>(list: readonly T[]): T[] => list.filter((_, i) => questions[i]?.half === half);
      const scores = SEARCHES.map((name) => [name, scoreOf(own(questions), own(results[name]))] as const);
      return {
        half,
        searches: Object.fromEntries(scores) as Record<Search, Score>,
        answers: scoreAnswers(own(questions), own(answers)),
      };
    }),
  };
}

async function inFolder<T>(work: (folder: string) => Promise<T>): Promise<T> {
  const folder = await mkdtemp(join(tmpdir(), "yearmark-ask-"));
  try {
    return await work(folder);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
