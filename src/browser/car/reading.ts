/** From what was said to what is shown: which line the car is of, what conflicts, and the verdict on every record. */
import { answerNetChange } from "../../engine/answers/answer-net-change.ts";
import { answerPlate } from "../../engine/answers/answer-plate.ts";
import { type KnownCar, readCar } from "../../engine/answers/car.ts";
import type { CarKnowledge } from "../../engine/answers/car-knowledge.ts";
import type { Listed } from "../../engine/answers/car-list.ts";
import { QuestionError } from "../../engine/answers/question-error.ts";
import type { NetChangeAnswer } from "../../engine/answers/shapes/net-change.ts";
import type { PlateAnswer } from "../../engine/answers/shapes/plate.ts";
import { yearsOf } from "../../engine/records/concerned.ts";
import type { Lines } from "../../engine/records/lines-index.ts";
import { type CarSet, NONE } from "../../engine/scope/diagram.ts";
import { carsWith, conflict, type Fact, FactError, readFacts } from "../../engine/scope/facts.ts";
import { includes } from "../../engine/scope/ranges.ts";
import { numberOf } from "../../engine/scope/trait.ts";
import type { OpenLine } from "./data.ts";
import { type Has, partsOf } from "./on-this-car.ts";
import { carOf, plateOf, type State, type Step } from "./state.ts";

export interface Reading {
  /** What the plate says, if one was given. */
  readonly plate: PlateAnswer | undefined;
  /** Steps that are not understood, such as those of a mistyped address, each with what was expected. */
  readonly refused: readonly { readonly step: Step; readonly why: string }[];
  /** The steps that were understood. */
  readonly steps: readonly Step[];
  /** Ids of the lines that the car may be of. */
  readonly lines: readonly string[];
  readonly facts: readonly Fact[];
  /** The cars that this can be, as far as the index of lines tells. */
  readonly cars: CarSet;
  /** A smallest set of facts that do not go together. */
  readonly conflict: readonly Fact[];
}

/** Reads the steps against all lines. The records of a line are not needed for this. */
export function readSteps(lines: Lines, state: State): Reading {
  const { space, buildable } = lines;
  const number = plateOf(state.steps);
  const plate = number === undefined ? undefined : answerPlate({ catalog: lines }, number);
  const refused: { step: Step; why: string }[] = [];
  const steps = state.steps.filter((step) => {
    const why = step.kind === "fact" || step.kind === "found" ? whyRefused(lines, step) : undefined;
    if (why !== undefined) refused.push({ step, why });
    return why === undefined && !(step.kind === "plate" && plate?.verdict !== "read" && plate?.verdict !== "not built");
  });
  const input = carOf(steps);
  const facts = [
    ...(plate ? readFacts(space, Object.fromEntries(plate.facts.map((it) => [it.trait, it.values])), "plate") : []),
    ...readFacts(space, input.facts ?? {}, "said"),
    ...readFacts(space, input.found ?? {}, "as found"),
  ];
  const cars = carsWith(space, buildable, facts);
  return {
    plate,
    refused,
    steps,
    facts,
    cars,
    lines: linesOf(lines, cars),
    conflict: cars === NONE ? conflict(space, buildable, facts) : [],
  };
}

/** Not by what was built of each line: a car that was changed since is still of its line. */
function linesOf({ space, lines }: Lines, cars: CarSet): string[] {
  const index = space.role("line") as number;
  const possible = space.sets.valuesOf(cars, index);
  return lines
    .filter((line) => {
      const value = numberOf(space.trait(index), line.id);
      return value !== undefined && includes(possible, value);
    })
    .map((line) => line.id);
}

function whyRefused({ space }: Lines, step: Extract<Step, { kind: "fact" | "found" }>): string | undefined {
  try {
    readFacts(space, carOf([{ ...step, kind: "fact" }]).facts ?? {}, "said");
    return undefined;
  } catch (error) {
    if (error instanceof FactError) return error.message;
    throw error;
  }
}

export type Judged = Listed;

/** The car with the records of its line, in reading order. */
export interface Verdicts {
  readonly car: KnownCar;
  readonly yes: readonly Judged[];
  readonly open: readonly Judged[];
  readonly no: readonly Judged[];
  /** Of these the running changes that the car is on the other side of, with what it has instead. */
  readonly beside: readonly Beside[];
}

export interface Beside {
  readonly item: Judged;
  readonly has: readonly Has[];
}

/** The car against the records of its line; a text where a step is not understood, such as a part that nobody knows. */
export function judge({ knowledge, list, order }: OpenLine, steps: readonly Step[]): Verdicts | string {
  let car: KnownCar;
  try {
    car = readCar(knowledge, carOf(steps));
  } catch (error) {
    // The page has the parts that records of the line name; nothing hangs on any other.
    if (error instanceof QuestionError) return `${error.message} Records of this line name no such part.`;
    throw error;
  }
  const verdicts = list.verdicts(car.cars);
  const sorted: Record<"yes" | "no" | "look first", Judged[]> = { yes: [], no: [], "look first": [] };
  for (const place of order) {
    const verdict = verdicts[place];
    if (verdict !== undefined && verdict !== "no such car") sorted[verdict].push(list.listed[place] as Judged);
  }
  return {
    car,
    yes: sorted.yes,
    open: sorted["look first"],
    no: sorted.no,
    beside: otherSide(knowledge, car, sorted.no),
  };
}

/** Running changes that hold for a car like this one with another number: being before the point is an answer too. */
function otherSide(knowledge: CarKnowledge, car: KnownCar, no: readonly Judged[]): Beside[] {
  const { declared, sets } = knowledge.catalog.space;
  const numbers = new Set(
    car.facts.flatMap(({ trait: index }) => {
      const trait = declared[index];
      return trait && (trait.role === "sequence" || trait.role === "date" || trait.kind === "serial") ? [index] : [];
    }),
  );
  const alike = sets.forget(car.cars, numbers);
  return no
    .filter(({ record }) => record.facts.kinds.includes("running") && sets.meet(alike, record.scope.cars))
    .map((item) => ({ item, has: partsOf(knowledge, car, item.record) }));
}

/** The one model year that the car can be of, if there is one. */
export function yearOfCar({ space }: Lines, cars: CarSet): number | undefined {
  const years = yearsOf(space, cars);
  return years.length === 1 ? years[0] : undefined;
}

/** What changed against the year that the reader knows; a text where that cannot be said. */
export function netChangeOf({ knowledge }: OpenLine, steps: readonly Step[], known: number): NetChangeAnswer | string {
  try {
    return answerNetChange(knowledge, { car: carOf(steps), from: known });
  } catch (error) {
    if (error instanceof QuestionError) return error.message;
    throw error;
  }
}
