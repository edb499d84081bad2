/**
 * The engine's answer to a question, in a bundle of its own that is loaded once the records stand on the page. It takes the records
 * of the car's line; which line that is, is asked where neither the question nor the picked car says it.
 */
import { factsOf } from "../../engine/answers/car-of-question.ts";
import { planAnswers } from "../../engine/answers/plan-answers.ts";
import { askPlanned, type Given, PERMITS } from "../../engine/answers/say-planned.ts";
import type { CarInput } from "../../engine/answers/shapes/car.ts";
import { carsSaid, isOfCar } from "../../engine/ask/cars-said.ts";
import { topRecords } from "../../engine/ask/find-records.ts";
import type { Reading } from "../../engine/ask/read-question.ts";
import { Data } from "../car/data.ts";
import { readSteps } from "../car/reading.ts";
import { carOf, type Step } from "../car/state.ts";
import { stepsOf } from "../car/steps-of.ts";
import { stepWords } from "../car/view/words.ts";
import type { Asked } from "./address.ts";
import type { Heard, World } from "./world.ts";

export interface Answered {
  readonly answers: readonly Given[];
  /** Two cars are spoken of, and it is not clear which of them is the one at hand. */
  readonly unclear: boolean;
  /** Where the answer depends on the model line: the lines that it may be, and what the answer would be. */
  readonly lines: readonly { readonly name: string; readonly means: string }[];
  /** Nothing is permitted on the strength of what was said of the car: the words that were not understood; none where what was said is itself in doubt. */
  readonly unread: readonly string[] | undefined;
  /** The car that was picked beside the question, step by step. */
  readonly car: readonly { readonly step: Step; readonly label: string }[];
}

/** For more lines, or of more records than these, the answer is not worked out line by line: megabytes would be loaded. The line is asked. */
const FEW_LINES = 6;
const FEW_RECORDS = 2_000;

let loading: Promise<Data> | undefined;

/**
 * Whether the question may have an answer of its own, by its words alone. One that names only systems, cars or kinds, and asks for no
 * more than what changed without a year, or why, has none: nothing more is loaded for it.
 */
export function mayHaveAnswer({ chips, asked, rest }: Reading): boolean {
  const has = (kind: string): boolean => chips.some((chip) => chip.kind === kind);
  if (rest !== "" || has("part") || has("component") || has("record")) return true;
  return asked.some(({ asked: it }) => (it === "changed" ? has("year") : it !== "why" && it !== "how"));
}

export async function answerHeard(root: URL, { vocabulary }: World, heard: Heard, asked: Asked): Promise<Answered> {
  loading ??= Data.load(root);
  loading.catch(() => {
    loading = undefined;
  });
  const data = await loading;
  const { space, lines } = data.lines;
  const { reading } = heard;
  const said = carsSaid(reading);
  const hasLine = said.car.some(({ kind }) => kind === "line");
  // The line of the car that a part comes from goes for both, where only one is named.
  const own = factsOf(space, [...said.car, ...said.donor.filter(({ kind }) => kind === "line" && !hasLine)]);
  const read = (car: CarInput) => readSteps(data.lines, { steps: stepsOf(car), known: undefined });
  // A step of a mistyped address says nothing.
  const ofPicked = read(carOf(asked.car));
  const picked: CarInput = carOf(ofPicked.steps);
  const both = read({ ...picked, facts: { ...picked.facts, ...own } });
  // What the question says may be of another car than the picked one; the plan sees to that.
  const possible =
    both.conflict.length === 0 ? both.lines : [...new Set([...ofPicked.lines, ...read({ facts: own }).lines])];
  const car = asked.car.map((step) => ({ step, label: stepWords(space, step, ofPicked.facts) }));
  const found = heard.find();
  const none: Answered = { answers: [], unclear: false, lines: [], unread: undefined, car };
  if (possible.length === 0 || !mayHaveAnswer(reading)) return none;
  const named = possible.flatMap((id) => lines.find((line) => line.id === id) ?? []);
  if (named.length > 1 && (named.length > FEW_LINES || vocabulary.records > FEW_RECORDS))
    return { ...none, lines: named.map(({ name }) => ({ name, means: "" })) };
  // What the other car was built with stands in the records of its line.
  const lent = said.donor.flatMap(({ kind, ids }) => (kind === "line" ? ids : []));
  const donors = lent.length === 1 ? (await data.loadLine(lent[0] as string)).knowledge : undefined;
  const answersOf = async (some: typeof named, of: Reading): Promise<LineAnswer[]> =>
    Promise.all(
      some.map(async ({ id, name }) => {
        const { knowledge } = await data.loadLine(id);
        const plan = planAnswers(knowledge, vocabulary, of, picked, topRecords(found), donors);
        return { name, unclear: plan.unclear, answers: askPlanned(knowledge, plan) };
      }),
    );
  const byLine = await answersOf(named, reading);
  const permits = byLine.some(({ answers }) => answers.some(({ verdict }) => PERMITS.has(verdict)));
  if (!said.murky || !permits) return { ...none, ...summedUp(byLine) };
  // The line may not be what is meant either, so a permission has to hold without it.
  const open = { ...reading, chips: reading.chips.filter((chip) => !isOfCar(chip)) };
  const all = ofPicked.lines.flatMap((id) => lines.find((line) => line.id === id) ?? []);
  const summed = summedUp(await answersOf(all, open));
  return summed.answers ? { ...none, ...summed } : { ...none, unread: said.unread };
}

interface LineAnswer {
  readonly name: string;
  readonly unclear: boolean;
  readonly answers: readonly Given[];
}

/** What is so for every line that it may be needs no line to be known. */
function summedUp(byLine: readonly LineAnswer[]): Partial<Answered> {
  const [first, ...others] = byLine;
  if (!first || byLine.some(({ unclear }) => unclear)) return { unclear: byLine.some(({ unclear }) => unclear) };
  if (others.every((other) => inShort(other.answers) === inShort(first.answers))) return { answers: first.answers };
  return { lines: byLine.map(({ name, answers }) => ({ name, means: meaning(answers) })) };
}

function inShort(answers: readonly Given[]): string {
  return JSON.stringify(
    answers.map(({ asked: { question }, says, verdict, because }) => [question, says, verdict, because]),
  );
}

function meaning(answers: readonly Given[]): string {
  const [first] = answers;
  if (!first) return "no answer on record";
  return first.verdict === "look first" || first.verdict === "by place" ? first.verdict : first.says;
}
