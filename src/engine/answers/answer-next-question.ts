/** "What should I look at next on this car?" For one record, or over all that are open; see `nextLook` and `nextTrait` for the rules. */

import { applies } from "../scope/applies.ts";
import { NONE } from "../scope/diagram.ts";
import { conflict } from "../scope/facts.ts";
import { nextTrait } from "../scope/next-trait.ts";
import { readCar } from "./car.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { findRecord } from "./find-record.ts";
import { look, lookAt, sayFact } from "./look.ts";
import { QuestionError } from "./question-error.ts";
import { reasonForRecord } from "./say.ts";
import type { CarInput } from "./shapes/car.ts";
import type { NextQuestionAnswer } from "./shapes/next-question.ts";

export function answerNextQuestion(
  knowledge: CarKnowledge,
  { car: input, record }: { car: CarInput; record?: string | undefined },
): NextQuestionAnswer {
  const { catalog } = knowledge;
  const { space } = catalog;
  const car = readCar(knowledge, input);
  const facts = car.facts.map((fact) => sayFact(space, fact));
  const base = { question: "next-question" as const, facts, notNeeded: [] };
  if (car.cars === NONE) {
    const clash = conflict(space, catalog.buildable, car.facts).map((fact) => sayFact(space, fact));
    return { ...base, verdict: "no such car", because: [], conflict: clash, open: [] };
  }
  const one = record === undefined ? undefined : findRecord(catalog, record);
  if (record !== undefined && !one) throw new QuestionError(`No change record is called '${record}'.`);
  const open = (one ? [one] : [...catalog.records.values()]).filter(
    (it) => applies(space.sets, car.cars, it.scope.cars) === "look first",
  );
  const next = nextTrait(
    space,
    car.cars,
    open.map((it) => it.scope.cars),
  );
  if (!next) return { ...base, verdict: "nothing to ask", because: [], open: [] };
  const opens = one ? [one.id] : next.scopes.map((i) => open[i]?.id ?? "");
  const ask = (one && look(space, car.cars, one.scope.cars)) ?? lookAt(space, car.cars, next.trait);
  return {
    ...base,
    verdict: "look first",
    because: opens.map((id) => reasonForRecord(catalog, id)),
    ask: { ...ask, opens },
    open: open.map((it) => it.id),
  };
}
