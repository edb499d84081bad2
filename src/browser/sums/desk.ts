/** One sum as it lies on the desk: what is typed into its fields, which job filled them, and what came of it. */
import type { JobShown, Prefilled } from "../../engine/answers/shapes/sum.ts";
import type { Sum } from "../../engine/settings/sums/sum.ts";
import { type WorkedOut, workOut } from "../../engine/settings/sums/work-out.ts";

export interface Desk {
  readonly sum: Sum;
  /** By the id of an input. */
  typed: Readonly<Record<string, string>>;
  /** The job that is asked for, and the car that its figures are of. */
  wanted: JobShown | undefined;
  filledFor: string | undefined;
  /** The job with the figures that were filled in. */
  job: JobShown | undefined;
  /** Nothing until it is asked, and nothing again once a field was changed: a result never stands beside other figures. */
  out: WorkedOut | undefined;
}

export function emptyDesk(sum: Sum): Desk {
  return { sum, typed: {}, wanted: undefined, filledFor: undefined, job: undefined, out: undefined };
}

export function type(desk: Desk, input: string, text: string): void {
  desk.typed = { ...desk.typed, [input]: text };
  desk.out = undefined;
}

export function work(desk: Desk): void {
  desk.out = workOut(desk.sum, desk.typed);
}

/** The figures of a job take the place of those of another car, not of what was typed by hand, and are worked with at once. */
export function fillIn(desk: Desk, job: JobShown): void {
  const figures = job.inputs.flatMap(({ input, typed }) => (typed === undefined ? [] : [[input, typed]]));
  desk.typed = { ...Object.fromEntries(figures), ...byHand(desk) };
  desk.job = job;
  work(desk);
}

/** The figures of a car that is no longer the one at hand go, before those of the other are there. */
export function withdraw(desk: Desk): void {
  desk.typed = byHand(desk);
  desk.job = undefined;
  desk.out = undefined;
}

function byHand({ typed, job }: Desk): Desk["typed"] {
  const filled = new Map(job?.inputs.map((it) => [it.input, it.typed]));
  return Object.fromEntries(Object.entries(typed).filter(([input, text]) => filled.get(input) !== text));
}

export function clear(desk: Desk): void {
  Object.assign(desk, emptyDesk(desk.sum));
}

/** Where the figure in a field comes from, as long as it is the one that the job filled in; or why the job has none. */
export function originOf({ job, typed }: Desk, input: string): Prefilled | undefined {
  const filled = job?.inputs.find((it) => it.input === input);
  return (filled?.typed ?? "") === (typed[input] ?? "") ? filled : undefined;
}

/** What came of it, as it is spoken. */
export function wordsOf({ sum, out }: Desk): string {
  switch (out?.as) {
    case undefined:
      return "";
    case "worked out":
      return `${sum.name}: ${out.results.map(({ label, shown, unit }) => `${label} ${shown} ${unit}`.trim()).join("; ")}.`;
    case "missing":
      return `${sum.name}: still needed: ${out.missing.map(({ what }) => what).join("; and ")}.`;
    case "refused":
      return out.wrong.map(({ why }) => why).join(" ");
    case "impossible":
      return out.why;
  }
}
