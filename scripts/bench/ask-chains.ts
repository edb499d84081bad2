/** Runs in a page: opens the records as the site's pages do, and times questions one by one, in milliseconds. */
import { answerMayFit } from "../../src/engine/answers/answer-may-fit.ts";
import { answerRetrofits } from "../../src/engine/answers/answer-retrofits.ts";
import { openCarKnowledge } from "../../src/engine/answers/car-knowledge.ts";
import type { CarInput } from "../../src/engine/answers/shapes/car.ts";
import { type LinesIndex, openLinesIndex } from "../../src/engine/records/lines-index.ts";
import { openSlice, type Slice } from "../../src/engine/records/slice.ts";

export interface ChainTimes {
  readonly open: number;
  /** One part on one car; the first question makes the index of parts. */
  readonly first: number;
  readonly mayFit: readonly number[];
  readonly retrofits: readonly number[];
  /** How often each verdict was given, so that nobody measures one and the same. */
  readonly verdicts: Readonly<Record<string, number>>;
  readonly paths: readonly number[];
}

export interface ChainQuestions {
  readonly mayFit: readonly { readonly part: string; readonly car: CarInput }[];
  readonly retrofits: readonly CarInput[];
}

export function askChains(lines: LinesIndex, slice: Slice, questions: ChainQuestions): ChainTimes {
  const verdicts: Record<string, number> = {};
  const paths: number[] = [];
  const timed = (work: () => void): number => {
    const start = performance.now();
    work();
    return performance.now() - start;
  };
  let knowledge: ReturnType<typeof openCarKnowledge> | undefined;
  const open = timed(() => {
    knowledge = openCarKnowledge(openSlice(openLinesIndex(lines), slice));
  });
  const opened = knowledge as ReturnType<typeof openCarKnowledge>;
  const ask = (question: ChainQuestions["mayFit"][number]): number =>
    timed(() => {
      const { verdict } = answerMayFit(opened, question);
      verdicts[verdict] = (verdicts[verdict] ?? 0) + 1;
    });
  const [begin, ...rest] = questions.mayFit;
  return {
    open,
    first: begin ? ask(begin) : 0,
    mayFit: rest.map(ask),
    retrofits: questions.retrofits.map((car) => timed(() => paths.push(answerRetrofits(opened, { car }).paths.length))),
    verdicts,
    paths,
  };
}
