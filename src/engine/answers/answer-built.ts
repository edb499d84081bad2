/** "Which part was this car built with, in this place?" Mixed stretches and gaps in the records are said, never guessed over. */

import { type Built, type Mixed, statementsOf } from "../records/statement.ts";
import { type CarSet, NONE } from "../scope/diagram.ts";
import { carsWith, conflict } from "../scope/facts.ts";
import { readCar } from "./car.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { NOT_ON_RECORD } from "./compare-years.ts";
import { findPlace } from "./find-place.ts";
import { lookAmong, sayFact } from "./look.ts";
import { reasonFor } from "./say.ts";
import type { BuiltAnswer } from "./shapes/built.ts";
import type { CarInput } from "./shapes/car.ts";

export function answerBuilt(
  knowledge: CarKnowledge,
  { place: typed, car: input }: { place: string; car: CarInput },
): BuiltAnswer {
  const { catalog } = knowledge;
  const { space } = catalog;
  const place = findPlace(knowledge, typed);
  const car = readCar(knowledge, input);
  // What was found on the car says nothing about what the plant fitted.
  const asBuilt = car.facts.filter((fact) => fact.source !== "as found");
  const facts = asBuilt.map((fact) => sayFact(space, fact));
  const found = car.facts.filter((fact) => fact.source === "as found").map((fact) => sayFact(space, fact));
  const base = { question: "built" as const, place, facts, notNeeded: found };
  const cars = carsWith(space, catalog.buildable, asBuilt);
  if (cars === NONE) {
    const clash = conflict(space, catalog.buildable, asBuilt).map((fact) => sayFact(space, fact));
    return { ...base, verdict: "no such car", because: [], conflict: clash, parts: [], perhapsNotOnRecord: false };
  }
  const statements = [...catalog.records.values()]
    .flatMap((record) => [...statementsOf(record.statements, "built"), ...statementsOf(record.statements, "mixed")])
    .filter((it) => it.place === place && space.sets.and(cars, it.scope.cars) !== NONE);
  const values = valuesOf(knowledge, cars, statements);
  const parts = [...new Set(statements.flatMap(partsOf))];
  const silent = values.some((value) => value.said === NOT_ON_RECORD);
  const answer = {
    ...base,
    because: statements.map((it) => reasonFor(catalog, it)),
    parts,
    perhapsNotOnRecord: silent,
  };
  const [only] = values;
  if (values.length === 1 && only) {
    if (only.said === NOT_ON_RECORD) return { ...answer, verdict: "not on record" };
    if (parts.length > 1) return { ...answer, verdict: "mixed stretch" };
    return { ...answer, verdict: parts[0] === "none" ? "nothing fitted" : "known" };
  }
  const ask = lookAmong(space, cars, values);
  // Nothing to look at where records contradict each other for the same cars: only the part itself tells.
  return ask ? { ...answer, verdict: "look first", ask } : { ...answer, verdict: "mixed stretch" };
}

interface Value {
  readonly said: string;
  readonly cars: CarSet;
}

function partsOf(statement: Built | Mixed): readonly string[] {
  return statement.type === "mixed" ? statement.parts : [statement.part ?? "none"];
}

/** What may have been fitted, each with the cars that have it; where nobody says so, "not on record". */
function valuesOf({ catalog: { space } }: CarKnowledge, cars: CarSet, statements: readonly (Built | Mixed)[]): Value[] {
  const values = new Map<string, CarSet>();
  let silent = cars;
  for (const statement of statements) {
    const said = [...partsOf(statement)].sort().join(" or ");
    const here = space.sets.and(cars, statement.scope.cars);
    values.set(said, space.sets.or(values.get(said) ?? NONE, here));
    silent = space.sets.minus(silent, here);
  }
  if (silent !== NONE) values.set(NOT_ON_RECORD, silent);
  return [...values].map(([said, its]) => ({ said, cars: its }));
}
