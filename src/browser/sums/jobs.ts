/** The sums on record. The page carries them with the figures that hold for every car, so that they are there at once. */
import { QuestionError } from "../../engine/answers/question-error.ts";
import type { JobShown } from "../../engine/answers/shapes/sum.ts";
import { sumFigures } from "../../engine/answers/sum-figures.ts";
import type { AtHand } from "../at-hand/page.ts";
import { carOf } from "../car/state.ts";

export function jobsOnPage(): readonly JobShown[] {
  return [...document.querySelectorAll<HTMLElement>("[data-job]")].map(
    (it) => JSON.parse(it.dataset.job as string) as JobShown,
  );
}

/** The figures for the car at hand; those for every car, as long as its line is not known or no record of its line has the job. */
export function figuresFor({ line, reading }: AtHand, job: JobShown): JobShown {
  const own = line?.knowledge.catalog.sums.find((it) => it.title === job.title);
  if (!line || !own) return job;
  try {
    return sumFigures(line.knowledge, own, carOf(reading.steps));
  } catch (error) {
    if (!(error instanceof QuestionError)) throw error;
    const why = error.message;
    return { ...job, inputs: job.inputs.map(({ input }) => ({ input, why, because: [] })) };
  }
}

export function isOfOtherLines({ line }: AtHand, job: JobShown): boolean {
  return line !== undefined && !line.knowledge.catalog.sums.some((it) => it.title === job.title);
}
