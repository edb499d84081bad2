/**
 * The engine's answer to a question, in a bundle of its own that is loaded once the records stand on the page. It takes the records
 * of the car's line; which line that is, is asked where neither the question nor the picked car says it.
 */
import { carsAsked } from "../../engine/answers/car-of-question.ts";
import { planAnswers } from "../../engine/answers/plan-answers.ts";
import { askPlanned, type Given } from "../../engine/answers/say-planned.ts";
import type { CarInput } from "../../engine/answers/shapes/car.ts";
import { topRecords } from "../../engine/ask/find-records.ts";
import { Data } from "../car/data.ts";
import { readSteps } from "../car/reading.ts";
import { carOf, type Step } from "../car/state.ts";
import { stepsOf } from "../car/steps-of.ts";
import { stepWords } from "../car/view/words.ts";
import type { Asked } from "./address.ts";
import type { Heard, World } from "./world.ts";

export interface Answered {
  readonly answers: readonly Given[];
  /** The lines that the car may be of, by name, where more than one is left. */
  readonly lines: readonly string[];
  /** The car that was picked beside the question, step by step. */
  readonly car: readonly { readonly step: Step; readonly label: string }[];
}

let loading: Promise<Data> | undefined;

export async function answerHeard(root: URL, { vocabulary }: World, heard: Heard, asked: Asked): Promise<Answered> {
  loading ??= Data.load(root);
  loading.catch(() => {
    loading = undefined;
  });
  const data = await loading;
  const { space, lines } = data.lines;
  const picked: CarInput = carOf(asked.car);
  const { car } = carsAsked(
    space,
    heard.reading,
    picked,
    heard.reading.asked.some(({ asked: it }) => it !== "changed"),
  );
  const known = readSteps(data.lines, { steps: stepsOf(car), known: undefined });
  const told = { car: asked.car.map((step) => ({ step, label: stepWords(space, step, known.facts) })) };
  const found = heard.find();
  if (!found.onRecord) return { answers: [], lines: [], ...told };
  const [only, ...more] = known.lines;
  if (only === undefined || more.length > 0) {
    const names = known.lines.flatMap((id) => lines.find((line) => line.id === id)?.name ?? []);
    return { answers: [], lines: names, ...told };
  }
  const { knowledge } = await data.loadLine(only);
  const planned = planAnswers(knowledge, vocabulary, heard.reading, picked, topRecords(found));
  return { answers: askPlanned(knowledge, planned), lines: [], ...told };
}
