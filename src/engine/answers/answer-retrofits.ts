/** "What may this car be improved with?" Every permitted way forward with all that goes along, and the closed ways with their reasons. */
import { sayBelonging } from "../interchange/belongs.ts";
import type { Way } from "../interchange/companions.ts";
import type { Fit } from "../interchange/fits.ts";
import { retrofitsFor } from "../interchange/retrofits.ts";
import { seeParts } from "../interchange/see-parts.ts";
import type { Catalog } from "../records/catalog.ts";
import { isUnder } from "../records/is-under.ts";
import type { StandsIn } from "../records/statement.ts";
import { NONE } from "../scope/diagram.ts";
import { readCar } from "./car.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { findComponent } from "./find-component.ts";
import { sayFact } from "./look.ts";
import { partIndexOf } from "./part-indexes.ts";
import { partName } from "./part-number.ts";
import { QuestionError } from "./question-error.ts";
import { reasonFor, uniqueReasons } from "./say.ts";
import { sayConflict } from "./say-conflict.ts";
import type { CarInput } from "./shapes/car.ts";
import type { RetrofitsAnswer } from "./shapes/retrofits.ts";
import { saySetting, workOf } from "./view-fit.ts";

export function answerRetrofits(
  knowledge: CarKnowledge,
  { component: typed, car: input }: { component?: string | undefined; car: CarInput },
): RetrofitsAnswer {
  const { catalog } = knowledge;
  const { space } = catalog;
  const component = typed === undefined ? undefined : requireComponent(catalog, typed);
  const car = readCar(knowledge, input);
  const facts = car.facts.map((fact) => sayFact(space, fact));
  const base = { question: "retrofits" as const, ...(component === undefined ? {} : { component }), notNeeded: [] };
  if (car.cars === NONE) {
    const { facts: clash, conflict } = sayConflict(catalog, car);
    return { ...base, verdict: "no such car", because: [], facts: clash, conflict, paths: [], blocked: [] };
  }
  const wanted = (part: string): boolean =>
    component === undefined || isUnder(catalog.components, catalog.parts.get(part)?.component, component);
  const index = partIndexOf(catalog);
  const { open, blocked } = retrofitsFor(index, car.cars, seeParts(index, car.cars, car.fitted, car.foreign), wanted);
  const path = ({ part, place, fit }: { part: string; place: string | undefined; fit: Fit }) => ({
    ...{ part, name: partName(catalog, part), ...(place === undefined ? {} : { place }), verdict: fit.verdict },
    instead: sayBelonging(fit.belonging),
    certain: space.sets.within(car.cars, fit.cars),
  });
  const paths = open.map((it) => ({
    ...path(it),
    set: it.set.map((part) => ({ part, name: partName(catalog, part) })),
    do: it.fit.ways.slice(0, 1).flatMap(workOf),
    reset: it.reset.map(saySetting),
    because: it.fit.ways
      .slice(0, 1)
      .flatMap(statementsOf)
      .map((step) => reasonFor(catalog, step)),
  }));
  const closed = blocked.map((it) => ({
    ...path(it),
    because: it.fit.refusals.map((step) => reasonFor(catalog, step)),
  }));
  return {
    ...base,
    verdict: paths.length + closed.length > 0 ? "on record" : "not on record",
    because: uniqueReasons([...paths, ...closed].flatMap((it) => it.because)),
    facts,
    paths,
    blocked: closed,
  };
}

/** The statements that permit the part and what goes along with it, each once. */
function statementsOf({ steps, companions }: Way): StandsIn[] {
  return [...new Set([...steps, ...companions.flatMap((it) => it.steps)])];
}

function requireComponent(catalog: Catalog, typed: string): string {
  const found = findComponent(catalog, typed);
  if (!found) throw new QuestionError(`No component is called '${typed.trim()}'.`);
  return found.id;
}
