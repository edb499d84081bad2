/** "Which part was this car built with, in this place?" Mixed stretches and gaps in the records are said, never guessed over. */

import { statementsOf } from "../records/statement.ts";
import { type CarSet, NONE } from "../scope/diagram.ts";
import { conflict } from "../scope/facts.ts";
import { nearest } from "../scope/nearest.ts";
import { readCar } from "./car.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { look, sayFact } from "./look.ts";
import { QuestionError } from "./question-error.ts";
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
  const facts = car.facts.map((fact) => sayFact(space, fact));
  const base = { question: "built" as const, place, facts, notNeeded: [] };
  if (car.cars === NONE) {
    const clash = conflict(space, catalog.buildable, car.facts).map((fact) => sayFact(space, fact));
    return { ...base, verdict: "no such car", because: [], conflict: clash, parts: [], perhapsNotOnRecord: false };
  }
  const statements = [...catalog.records.values()]
    .flatMap((record) => [...statementsOf(record.statements, "built"), ...statementsOf(record.statements, "mixed")])
    .filter((it) => it.place === place && space.sets.and(car.cars, it.scope.cars) !== NONE);
  const because = statements.map((it) => reasonFor(catalog, it));
  const covered = space.any(statements.map((it) => it.scope.cars));
  const silent = space.sets.minus(car.cars, covered) !== NONE;
  const parts = [...new Set(statements.flatMap((it) => (it.type === "mixed" ? it.parts : [it.part ?? "none"])))];
  const found = { ...base, because, parts, perhapsNotOnRecord: silent };
  if (statements.length === 0) return { ...found, verdict: "not on record" };
  const [first] = statements;
  if (statements.length === 1 && first && !silent) {
    if (first.type === "mixed") return { ...found, verdict: "mixed stretch" };
    return { ...found, verdict: first.part === undefined ? "nothing fitted" : "known" };
  }
  const ask = firstLook(
    knowledge,
    car.cars,
    statements.map((it) => it.scope.cars),
  );
  if (parts.length === 1 && !silent) return { ...found, verdict: parts[0] === "none" ? "nothing fitted" : "known" };
  return { ...found, verdict: "look first", ...(ask ? { ask } : {}) };
}

/** The look that settles the first statement that is still open. */
function firstLook(knowledge: CarKnowledge, cars: CarSet, scopes: readonly CarSet[]): ReturnType<typeof look> {
  for (const scope of scopes) {
    const found = look(knowledge.catalog.space, cars, scope);
    if (found) return found;
  }
  return undefined;
}

function findPlace({ catalog }: CarKnowledge, typed: string): string {
  const wanted = typed.trim().toLowerCase();
  const exact = [...catalog.places.keys()].find((place) => place.toLowerCase() === wanted);
  if (exact !== undefined) return exact;
  const component = [...catalog.components.values()].find((one) =>
    [one.id, one.name, ...one.aliases].some((name) => name.toLowerCase() === wanted),
  );
  if (component?.places.length === 1) return component.places[0] as string;
  const near = nearest(wanted, [...catalog.places.keys()]);
  const options = component && component.places.length > 1 ? component.places : near ? [near] : [];
  throw new QuestionError(
    `No place is called '${typed.trim()}'. ${options.length > 0 ? `Did you mean ${options.map((one) => `'${one}'`).join(" or ")}?` : ""}`.trim(),
  );
}
