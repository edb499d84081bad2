/** "Which records apply to the car at hand?" Every record: yes, no, or look first with what to look at. */

import { isTrap } from "../records/is-trap.ts";
import { applies } from "../scope/applies.ts";
import { NONE } from "../scope/diagram.ts";
import { conflict } from "../scope/facts.ts";
import { nextTrait } from "../scope/next-trait.ts";
import { cancelledFor } from "./cancelled-for.ts";
import { readCar } from "./car.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { look, lookAt, sayFact } from "./look.ts";
import { reasonForRecord } from "./say.ts";
import type { CarInput } from "./shapes/car.ts";
import type { CarAnswer } from "./shapes/car-answer.ts";

export function answerCar(knowledge: CarKnowledge, { car: input }: { car: CarInput }): CarAnswer {
  const { catalog } = knowledge;
  const { space } = catalog;
  const car = readCar(knowledge, input);
  const facts = car.facts.map((fact) => sayFact(space, fact));
  const records = [...catalog.records.values()].map((record) => {
    const ask = look(space, car.cars, record.scope.cars);
    return {
      record: record.id,
      title: record.facts.title,
      trap: isTrap(record),
      systems: [...record.systems],
      verdict: applies(space.sets, car.cars, record.scope.cars),
      ...cancelledFor(knowledge, car.cars, record),
      ...(ask ? { ask } : {}),
    };
  });
  const clash = conflict(space, catalog.buildable, car.facts).map((fact) => sayFact(space, fact));
  const open = records.filter((record) => record.verdict === "look first");
  const next = nextTrait(
    space,
    car.cars,
    open.map((it) => catalog.records.get(it.record)?.scope.cars ?? NONE),
  );
  return {
    question: "car",
    verdict: clash.length > 0 ? "no such car" : next ? "look first" : "known",
    because: records
      .filter((record) => record.verdict === "yes")
      .map((record) => reasonForRecord(catalog, record.record)),
    facts,
    notNeeded: [],
    ...(next ? { ask: lookAt(space, car.cars, next.trait) } : {}),
    ...(clash.length > 0 ? { conflict: clash } : {}),
    records,
  };
}
