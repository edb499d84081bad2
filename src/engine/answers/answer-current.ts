/** "Which number is current for this car?" From the number asked, or from what the car was built with. */
import { belongsAt } from "../interchange/belongs.ts";
import { askedFor, type Current, currentOf, orderedAlong } from "../interchange/current.ts";
import type { PartIndex } from "../interchange/part-index.ts";
import type { Reported } from "../interchange/reported.ts";
import { seeParts } from "../interchange/see-parts.ts";
import type { Built, Mixed } from "../records/statement.ts";
import { list } from "../scope/describe.ts";
import { type CarSet, NONE } from "../scope/diagram.ts";
import { neededFacts } from "../scope/facts.ts";
import { answerMayFit } from "./answer-may-fit.ts";
import { type KnownCar, readCar, withFacts } from "./car.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { findPlace } from "./find-place.ts";
import { lookAmong, sayFact } from "./look.ts";
import { partIndexOf } from "./part-indexes.ts";
import { partName, requirePart } from "./part-number.ts";
import { QuestionError } from "./question-error.ts";
import { reasonFor } from "./say.ts";
import { sayConflict } from "./say-conflict.ts";
import type { CarInput } from "./shapes/car.ts";
import type { CurrentAnswer } from "./shapes/current.ts";

export interface CurrentQuestion {
  readonly part?: string | undefined;
  readonly place?: string | undefined;
  readonly car: CarInput;
}

/** A number to follow, for which cars, and who says that these have it. */
interface Start {
  readonly part: string;
  readonly cars: CarSet;
  readonly because: readonly (Built | Mixed)[];
}

export function answerCurrent(knowledge: CarKnowledge, asked: CurrentQuestion): CurrentAnswer {
  const { catalog } = knowledge;
  const { space } = catalog;
  const index = partIndexOf(catalog);
  const part = asked.part === undefined ? undefined : requirePart(catalog, asked.part).number;
  const place = asked.place === undefined ? undefined : findPlace(knowledge, asked.place);
  if ((part === undefined) === (place === undefined)) throw new QuestionError("It takes either a part or a place.");
  const car = readCar(knowledge, asked.car);
  const say = (facts: KnownCar["facts"]) => facts.map((fact) => sayFact(space, fact));
  if (car.cars === NONE) {
    return {
      ...{ question: "current", verdict: "no such car", because: [], asked: part === undefined ? [] : [part] },
      ...sayConflict(catalog, car),
      ...{ currents: [], order: [], words: "No such car was built, or it is no longer as built." },
    };
  }
  const starts = (cars: CarSet): Start[] =>
    part !== undefined
      ? [{ part, cars: askedFor(index, part, cars), because: [] }]
      : belongsAt(index, place as string, cars).flatMap(({ belonging, cars: here, because }) =>
          belonging.what === "part" ? [{ part: belonging.part, cars: here, because }] : [],
        );
  const on = seeParts(index, car.cars, car.fitted);
  const begun = starts(car.cars);
  if (begun.length === 0) throw new QuestionError(`No record says what this car was built with: ${place}.`);
  const found = begun.flatMap((start) => currentOf(index, start.part, start.cars));
  const said = (it: Current): string => list([it.part, ...toOrder(index, it, on)], "and");
  const outcomes = [...new Set(found.map(said))];
  const verdict = verdictOf(begun, found, outcomes);
  const isSame = (facts: KnownCar["facts"]): boolean => {
    const less = starts(withFacts(knowledge, facts).cars).flatMap((start) => currentOf(index, start.part, start.cars));
    return less.length > 0 && less.every((it) => said(it) === outcomes[0] && !it.circle);
  };
  const isDecided = verdict === "current" || verdict === "superseded";
  const needed = isDecided ? neededFacts(car.facts, isSame) : car.facts;
  const cars = space.any(found.map((it) => it.cars));
  const values = outcomes.map((outcome) => ({
    said: outcome,
    cars: space.any(found.filter((it) => said(it) === outcome).map((it) => it.cars)),
  }));
  const ask = verdict === "look first" ? lookAmong(space, cars, values) : undefined;
  const currents = found.map((it) => view(knowledge, index, it, on, asked.car));
  const because = [...begun.flatMap((start) => start.because), ...new Set(found.flatMap((it) => it.steps))].map((it) =>
    reasonFor(catalog, it),
  );
  const [only] = found;
  return {
    question: "current",
    verdict,
    because,
    ...(ask ? { ask } : {}),
    facts: say(needed),
    notNeeded: say(car.facts.filter((fact) => !needed.includes(fact))),
    asked: [...new Set(begun.map((start) => start.part))],
    currents,
    order: isDecided && only ? [only.part, ...toOrder(index, only, on)] : [],
    words: sayVerdict(verdict, begun, outcomes, ask?.what),
  };
}

/** What must be ordered along: not what all these cars were built with. */
function toOrder(index: PartIndex, current: Current, on: Reported): string[] {
  return orderedAlong(index, current, on).flatMap(({ part, onTheCar }) => (onTheCar ? [] : [part]));
}

function verdictOf(
  begun: readonly Start[],
  found: readonly Current[],
  outcomes: readonly string[],
): CurrentAnswer["verdict"] {
  if (found.some((it) => it.circle)) return "circle";
  if (outcomes.length > 1) return "look first";
  return begun.every((start) => start.part === found[0]?.part) ? "current" : "superseded";
}

function view(
  knowledge: CarKnowledge,
  index: PartIndex,
  current: Current,
  on: Reported,
  car: CarInput,
): CurrentAnswer["currents"][number] {
  const { catalog } = knowledge;
  return {
    part: current.part,
    name: partName(catalog, current.part),
    steps: current.steps.map((it) => reasonFor(catalog, it)),
    along: orderedAlong(index, current, on).map(({ part, because, onTheCar }) => ({
      ...{ part, name: partName(catalog, part), onTheCar },
      because: reasonFor(catalog, because),
    })),
    circle: current.circle,
    fits: answerMayFit(knowledge, { part: current.part, car }).verdict,
  };
}

function sayVerdict(
  verdict: CurrentAnswer["verdict"],
  begun: readonly Start[],
  outcomes: readonly string[],
  look: string | undefined,
): string {
  const from = [...new Set(begun.map((start) => start.part))].join(" or ");
  if (verdict === "current") return `${from} is current: no record has another number delivered for it.`;
  if (verdict === "superseded") return `Who orders ${from} for this car gets ${outcomes[0]}.`;
  if (verdict === "circle") return `The records lead from ${from} round in a circle; they are in error.`;
  return `It is ${outcomes.join(" or ")}, depending on the car. ${look ?? "Only the part on the car tells."}`;
}
