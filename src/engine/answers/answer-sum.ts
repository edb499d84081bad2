/**
 * "Do this sum with these figures." Without a sum: which there are. Without figures: what it takes, and what the records fill in
 * for the car. With figures, or with one of the sums on record (a job): the result, or what stands in its way.
 */

import type { SumJob } from "../records/shapes/sums.ts";
import { nearest } from "../scope/nearest.ts";
import { SUMS } from "../settings/sums/all.ts";
import { readFigures } from "../settings/sums/read-figures.ts";
import type { Sum, SumInput } from "../settings/sums/sum.ts";
import { workOut } from "../settings/sums/work-out.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { QuestionError } from "./question-error.ts";
import { uniqueReasons } from "./say.ts";
import type { CarInput } from "./shapes/car.ts";
import type { JobShown, SumAnswer, SumShown } from "./shapes/sum.ts";
import { sumFigures } from "./sum-figures.ts";

export interface SumQuestion {
  readonly sum?: string | undefined;
  /** By the name of an input; or as one text, "teeth=20; threads=16". */
  readonly inputs?: Readonly<Record<string, string>> | string | undefined;
  /** One of the sums on record: its title, or its number in the list, from 1. */
  readonly job?: string | number | undefined;
  readonly car?: CarInput | undefined;
}

export function answerSum(knowledge: CarKnowledge, asked: SumQuestion, jobs: readonly SumJob[]): SumAnswer {
  const car = asked.car ?? {};
  const job = asked.job === undefined ? undefined : findJob(jobs, asked.job);
  const sum = asked.sum === undefined ? job && SUMS[job.sum] : findSum(asked.sum);
  if (job && sum && job.sum !== sum.id)
    throw new QuestionError(`'${job.title}' is a sum of the kind '${job.sum}', not '${sum.id}'.`);
  const about = job ? [job] : jobs.filter((it) => sum === undefined || it.sum === sum.id);
  const shown = about.map((it) => sumFigures(knowledge, it, car));
  const base = { question: "sum" as const, because: [], jobs: shown };
  if (!sum) {
    const sums = Object.values(SUMS).map(({ id, name, about: when }) => ({ id, name, about: when }));
    return { ...base, verdict: "list", sums, words: `There are ${sums.length} sums.` };
  }
  const described = { ...base, sum: sumShown(sum) };
  if (asked.inputs === undefined && !job)
    return { ...described, verdict: "described", words: `${sum.name}: ${sum.formula}` };
  const typed = readInputs(asked.inputs);
  const inputs = { ...filledIn(sum, shown[0], job, typed), ...typed };
  const because = job ? uniqueReasons(shown.flatMap((it) => it.inputs.flatMap((input) => input.because))) : [];
  return { ...described, because, inputs, ...worked(sum, inputs) };
}

type Worked = Pick<SumAnswer, "verdict" | "words"> &
  Partial<Pick<SumAnswer, "results" | "steps" | "missing" | "wrong">>;

function worked(sum: Sum, inputs: Readonly<Record<string, string>>): Worked {
  const out = workOut(sum, inputs);
  switch (out.as) {
    case "worked out": {
      const words = out.results.map((it) => `${it.label} ${it.shown}${it.unit === "" ? "" : ` ${it.unit}`}`).join("; ");
      return {
        verdict: out.as,
        results: out.results.map((it) => ({ ...it })),
        steps: [...out.steps],
        words: `${words}.`,
      };
    }
    case "missing": {
      const missing = out.missing.map((it) => ({ what: it.what, ways: it.ways.map((way) => [...way]) }));
      return { verdict: out.as, missing, words: `Still needed: ${out.missing.map((it) => it.what).join("; and ")}.` };
    }
    case "refused": {
      const wrong = out.wrong.map(({ choices, ...it }) => ({
        ...it,
        ...(choices && { choices: choices.map(({ words, typed }) => ({ words, typed })) }),
      }));
      return { verdict: out.as, wrong, words: out.wrong.map((it) => it.why).join(" ") };
    }
    case "impossible":
      return { verdict: out.as, words: out.why };
  }
}

/** What the job fills in, without what the person gives in another way. */
function filledIn(
  sum: Sum,
  shown: JobShown | undefined,
  job: SumJob | undefined,
  typed: Readonly<Record<string, string>>,
): Record<string, string> {
  if (!job || !shown) return {};
  const otherWay = new Set(
    (sum.ways ?? [])
      .filter((it) => !it.several)
      .flatMap(({ ways }) => {
        const chosen = ways.find((way) => way.some((id) => id in typed));
        return chosen ? ways.flat().filter((id) => !chosen.includes(id)) : [];
      }),
  );
  return Object.fromEntries(
    shown.inputs.flatMap((it) => (it.typed === undefined || otherWay.has(it.input) ? [] : [[it.input, it.typed]])),
  );
}

function findSum(typed: string): Sum {
  const wanted = typed.trim().toLowerCase();
  const all = Object.values(SUMS);
  const found = all.find((sum) => [sum.id, sum.name].some((name) => name.toLowerCase() === wanted));
  if (found) return found;
  const meant = nearest(
    wanted,
    all.map((sum) => sum.id),
  );
  const hint = meant ? `Did you mean '${meant}'?` : `Sums are ${all.map((sum) => sum.id).join(", ")}.`;
  throw new QuestionError(`No sum is called '${typed.trim()}'. ${hint}`);
}

function findJob(jobs: readonly SumJob[], typed: string | number): SumJob {
  const wanted = String(typed).trim().toLowerCase();
  const found = jobs.find((job) => job.title.toLowerCase() === wanted) ?? jobs[Number(wanted) - 1];
  if (found) return found;
  const meant = nearest(
    wanted,
    jobs.map((job) => job.title),
  );
  const hint = meant ? ` Did you mean '${meant}'?` : "";
  throw new QuestionError(`No sum on record is called '${typed}'; there are ${jobs.length}.${hint}`);
}

function readInputs(given: SumQuestion["inputs"]): Readonly<Record<string, string>> {
  if (typeof given !== "string") return given ?? {};
  const read = readFigures(given);
  if (read.as === "refused") throw new QuestionError(read.why);
  return read.figures;
}

function sumShown(sum: Sum): SumShown {
  const inWays = new Set((sum.ways ?? []).flatMap(({ ways }) => ways.flat()));
  const needed = (input: SumInput): SumShown["inputs"][number]["needed"] => {
    if (inWays.has(input.id)) return "one of several";
    return input.optional || input.default !== undefined ? "no" : "always";
  };
  return {
    id: sum.id,
    name: sum.name,
    about: sum.about,
    formula: sum.formula,
    inputs: sum.inputs.map((input) => ({
      id: input.id,
      label: input.label,
      letter: input.letter,
      unit: input.unit,
      needed: needed(input),
      ...(input.default !== undefined && { usual: input.default }),
      ...(input.choices && { choices: [...input.choices] }),
      ...(input.help !== undefined && { help: input.help }),
    })),
    results: sum.results.map(({ id, label, unit, round }) => ({ id, label, unit, rounded: round.words })),
    notes: [...sum.notes],
    ...(sum.caution !== undefined && { caution: sum.caution }),
    source: sum.source,
    example: { inputs: { ...sum.example.inputs }, results: { ...sum.example.results }, source: sum.example.source },
  };
}
