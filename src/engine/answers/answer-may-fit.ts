/** "May this part go on that car?" Place by place, with the argument, what must go along, and what to look at where it is open. */
import { sayBelonging } from "../interchange/belongs.ts";
import { companionsOf } from "../interchange/companions.ts";
import { type Fit, type FitVerdict, fitsAt, mayBeFitted } from "../interchange/fits.ts";
import { type PartIndex, placesOf, placesToAsk } from "../interchange/part-index.ts";
import type { Catalog, Part } from "../records/catalog.ts";
import type { StandsIn } from "../records/statement.ts";
import { type CarSet, NONE } from "../scope/diagram.ts";
import { neededFacts } from "../scope/facts.ts";
import type { Reason } from "./answer.ts";
import { type KnownCar, readCar, withFacts } from "./car.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { cautionsFor } from "./cautions-for.ts";
import { findPlace } from "./find-place.ts";
import { lookAmong, sayFact } from "./look.ts";
import { partIndexOf } from "./part-indexes.ts";
import { partName, requirePart } from "./part-number.ts";
import { QuestionError } from "./question-error.ts";
import { reasonFor, uniqueReasons } from "./say.ts";
import { sayConflict } from "./say-conflict.ts";
import type { CarInput } from "./shapes/car.ts";
import type { MayFitAnswer } from "./shapes/may-fit.ts";

export interface MayFitQuestion {
  readonly part: string;
  readonly place?: string | undefined;
  readonly car: CarInput;
}

type AtPlace = MayFitAnswer["places"][number];
type Verdict = MayFitAnswer["verdict"];

export function answerMayFit(knowledge: CarKnowledge, asked: MayFitQuestion): MayFitAnswer {
  const { catalog } = knowledge;
  const index = partIndexOf(catalog);
  const part = requirePart(catalog, asked.part);
  const wanted = asked.place === undefined ? undefined : findPlace(knowledge, asked.place);
  const car = readCar(knowledge, asked.car);
  const base = { question: "may-fit" as const, part: { number: part.number, name: part.name } };
  if (car.cars === NONE) return noSuchCar(knowledge, car, base);
  const own = placesOf(index, part.number);
  // A part for an empty place is for a place of its own component, not for any place that is empty.
  if (wanted !== undefined && !own.includes(wanted) && catalog.places.get(wanted)?.id !== part.component)
    throw new QuestionError(`No record speaks of ${part.number} in this place: ${wanted}.`);
  const places = wanted === undefined ? placesToAsk(index, part.number) : [wanted];
  const asks = (facts: KnownCar): { place: string | undefined; fits: Fit[] }[] =>
    places.map((place) => ({
      place,
      fits: fitsAt(index, { part: part.number, place, cars: facts.cars, fitted: facts.fitted }),
    }));
  const found = asks(car);
  const verdict = overall(found.map(({ fits }) => verdictOf(fits)));
  const needed = carryingFacts(knowledge, car, verdict, (less) =>
    overall(asks(less).map(({ fits }) => verdictOf(fits))),
  );
  const views = relevant(found).map(({ place, fits }) => viewPlace(index, car.cars, place, fits));
  const because = views.flatMap((view) => view.fits.flatMap(reasonsOf));
  const records = [...new Set(because.map((it) => it.record))].flatMap((id) => catalog.records.get(id) ?? []);
  const ask = views.find((view) => view.ask)?.ask;
  const companions = views.flatMap((view) => view.fits.flatMap((it) => it.ways[0]?.companions ?? []));
  return {
    ...base,
    verdict,
    because: uniqueReasons(because),
    ...(ask ? { ask } : {}),
    facts: needed.map((fact) => sayFact(catalog.space, fact)),
    notNeeded: car.facts.filter((fact) => !needed.includes(fact)).map((fact) => sayFact(catalog.space, fact)),
    places: views,
    order: isFit(verdict) && mayBeFitted(verdict) ? orderOf(part, companions) : [],
    words: sayAnswer(part, verdict, views),
    otherwise: records.flatMap(({ id, facts }) => (facts.otherwise ? [{ record: id, text: facts.otherwise }] : [])),
    cautions: cautionsOf(catalog, [part.number, ...companions.map((it) => it.part)]),
  };
}

function noSuchCar(
  { catalog }: CarKnowledge,
  car: KnownCar,
  base: Pick<MayFitAnswer, "question" | "part">,
): MayFitAnswer {
  const said = sayConflict(catalog, car);
  return {
    ...base,
    verdict: "no such car",
    because: [],
    ...said,
    places: [],
    order: [],
    words: `No such car was built, or it is no longer as built: ${said.conflict.map((fact) => fact.text).join(" and ")} do not go together.`,
    otherwise: [],
    cautions: [],
  };
}

/** One verdict where all pieces have it. */
function verdictOf(fits: readonly Fit[]): FitVerdict | "look first" {
  const [first, ...others] = new Set(fits.map((fit) => fit.verdict));
  return first === undefined || others.length > 0 ? "look first" : first;
}

/** A place of which nothing is on record counts only where no other place says more. */
function overall(verdicts: readonly (FitVerdict | "look first")[]): Verdict {
  const telling = new Set(verdicts.filter((it) => it !== "not on record"));
  const [first, ...others] = telling;
  return first === undefined ? "not on record" : others.length > 0 ? "by place" : first;
}

function relevant<T extends { readonly fits: readonly Fit[] }>(found: readonly T[]): readonly T[] {
  const telling = found.filter(({ fits }) => verdictOf(fits) !== "not on record");
  return telling.length > 0 ? telling : found;
}

function isFit(verdict: Verdict): verdict is FitVerdict {
  return verdict !== "look first" && verdict !== "by place" && verdict !== "no such car";
}

/** The facts without which the verdict would not be the same; all of them while it is open. */
function carryingFacts(
  knowledge: CarKnowledge,
  car: KnownCar,
  verdict: Verdict,
  again: (car: KnownCar) => Verdict,
): KnownCar["facts"] {
  if (!isFit(verdict)) return car.facts;
  return neededFacts(car.facts, (facts) => again(withFacts(knowledge, car, facts)) === verdict);
}

function viewPlace(index: PartIndex, cars: CarSet, place: string | undefined, fits: readonly Fit[]): AtPlace {
  const { space } = index;
  const verdict = verdictOf(fits);
  const sets = new Map<FitVerdict, CarSet>();
  for (const fit of fits) sets.set(fit.verdict, space.sets.or(sets.get(fit.verdict) ?? NONE, fit.cars));
  const values = [...sets].map(([said, its]) => ({ said, cars: its }));
  const ask = verdict === "look first" ? lookAmong(space, cars, values) : undefined;
  const unclear = fits.filter((fit) =>
    fits.some((other) => other.verdict !== fit.verdict && space.sets.meet(other.cars, fit.cars)),
  );
  return {
    ...(place === undefined ? {} : { place }),
    verdict,
    fits: fits.map((fit) => viewFit(index, fit)),
    ...(ask ? { ask } : {}),
    lookAtPart: [...new Set(unclear.map((fit) => sayBelonging(fit.belonging)))],
  };
}

function viewFit(index: PartIndex, fit: Fit): AtPlace["fits"][number] {
  const { catalog } = index;
  const may = mayBeFitted(fit.verdict);
  return {
    verdict: fit.verdict,
    belongs: sayBelonging(fit.belonging),
    because: fit.because.map((it) => reasonFor(catalog, it)),
    ways: may ? fit.ways.map((way) => viewWay(index, way, fit.cars)) : [],
    refusals: may ? [] : fit.ways.flat().map((it) => reasonFor(catalog, it)),
  };
}

function viewWay(index: PartIndex, way: readonly StandsIn[], cars: CarSet): AtPlace["fits"][number]["ways"][number] {
  const { catalog } = index;
  const companions = companionsOf(index, way, cars);
  const work = [...way, ...companions.flatMap((it) => it.do)].flatMap((it) => (it.do === undefined ? [] : [it.do]));
  return {
    steps: way.map((it) => reasonFor(catalog, it)),
    companions: companions.map(({ part, onTheCar, because }) => ({
      part,
      name: partName(catalog, part),
      onTheCar,
      contents: (index.contentsOf.get(part) ?? []).map((content) => ({ ...content })),
      because: reasonFor(catalog, because),
    })),
    do: [...new Set(work)],
  };
}

/** The statements that carry a piece of the answer, in the order of the argument. */
function reasonsOf(fit: AtPlace["fits"][number]): Reason[] {
  const ways = fit.ways.flatMap((way) => [...way.steps, ...way.companions.map((it) => it.because)]);
  return [...fit.because, ...ways, ...fit.refusals];
}

function orderOf(part: Part, companions: readonly { readonly part: string; readonly onTheCar: boolean }[]): string[] {
  return [...new Set([part.number, ...companions.filter((it) => !it.onTheCar).map((it) => it.part)])];
}

function cautionsOf(catalog: Catalog, numbers: readonly string[]): MayFitAnswer["cautions"] {
  const components = numbers.flatMap((number) => {
    const part = catalog.parts.get(number);
    return part ? [catalog.components.get(part.component)].filter((it) => it !== undefined) : [];
  });
  return cautionsFor(
    catalog,
    components.map((it) => it.system),
    components.map((it) => it.id),
  ).map(({ title, text, source }) => ({ title, text, source }));
}

const WORDS: Readonly<Record<FitVerdict, string>> = {
  "as built": "is what the plant fitted",
  yes: "may be fitted",
  "yes, on conditions": "may be fitted, on conditions",
  "does not go on": "does not go on",
  "goes on but must not be used": "goes on, but must not be used",
  "not on record": "is not on record for this car: no record says that it may be fitted, and so it may not",
};

function sayAnswer(part: Part, verdict: Verdict, places: readonly AtPlace[]): string {
  if (isFit(verdict)) return `${part.number} ${WORDS[verdict]}.`;
  if (verdict === "by place")
    return `It depends on the place: ${places.map((it) => `${it.place ?? "elsewhere"}: ${it.verdict}`).join("; ")}.`;
  const [open] = places.filter((it) => it.verdict === "look first");
  if (open?.ask) return `It depends on what is not known yet. ${open.ask.what}`;
  return `Only the part on the car tells: it may be ${(open?.lookAtPart ?? []).join(" or ")}.`;
}
