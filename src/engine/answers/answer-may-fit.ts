/** "May this part go on that car?" Place by place, with the argument, what must go along, and what to look at where it is open. */
import { sayBelonging } from "../interchange/belongs.ts";
import { type Fit, type FitVerdict, fitsAt, mayBeFitted, toBuy } from "../interchange/fits.ts";
import type { PartIndex } from "../interchange/part-index.ts";
import { placesOf, placesToAsk } from "../interchange/places.ts";
import type { Reported } from "../interchange/reported.ts";
import { seeParts } from "../interchange/see-parts.ts";
import type { Catalog, Part } from "../records/catalog.ts";
import { type CarSet, NONE } from "../scope/diagram.ts";
import { neededFacts } from "../scope/facts.ts";
import { type KnownCar, readCar, withFacts } from "./car.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { cautionViews } from "./cautions-for.ts";
import { differingMarks } from "./differing-marks.ts";
import { findPlace } from "./find-place.ts";
import { lookAmong, sayFact } from "./look.ts";
import { partIndexOf } from "./part-indexes.ts";
import { partName, requirePart } from "./part-number.ts";
import { QuestionError } from "./question-error.ts";
import { reasonFor, uniqueReasons } from "./say.ts";
import { sayConflict } from "./say-conflict.ts";
import type { CarInput } from "./shapes/car.ts";
import type { MayFitAnswer } from "./shapes/may-fit.ts";
import { reasonsOf, viewFit } from "./view-fit.ts";
import { viewMarks } from "./view-marks.ts";

export interface MayFitQuestion {
  readonly part: string;
  readonly place?: string | undefined;
  readonly car: CarInput;
}

type AtPlace = MayFitAnswer["places"][number];
type Verdict = MayFitAnswer["verdict"];
interface FitsAtPlace {
  readonly place: string | undefined;
  readonly fits: readonly Fit[];
}

export function answerMayFit(knowledge: CarKnowledge, asked: MayFitQuestion): MayFitAnswer {
  const { catalog } = knowledge;
  const index = partIndexOf(catalog);
  const part = requirePart(catalog, asked.part);
  const car = readCar(knowledge, asked.car);
  const base = { question: "may-fit" as const, part: { number: part.number, name: part.name } };
  const places = placesAsked(knowledge, index, part, asked.place);
  if (car.cars === NONE) return noSuchCar(knowledge, car, base);
  const see = ({ cars, fitted, foreign }: KnownCar): Reported => seeParts(index, cars, fitted, foreign);
  const ask = ({ cars }: KnownCar, on: Reported): FitsAtPlace[] =>
    places.map((place) => ({ place, fits: fitsAt(index, { part: part.number, place, cars, on }) }));
  const on = see(car);
  const found = ask(car, on);
  const misfits = on.misfits.map(({ part: number, by }) => ({
    part: number,
    name: partName(catalog, number),
    because: by.map((it) => reasonFor(catalog, it)),
  }));
  const decided = decide(part, found);
  const { verdict, order } = decided;
  const needed = carryingFacts(knowledge, car, decided, (less) => decide(part, ask(less, see(less))));
  const views = relevant(found).map((it) => viewPlace(index, part.number, car.cars, it));
  const because = views.flatMap((view) => view.fits.flatMap(reasonsOf));
  const records = [...new Set(because.map((it) => it.record))].flatMap((id) => catalog.records.get(id) ?? []);
  const alike = [...new Set([part.number, ...belongingIn(catalog, views)])];
  const look = views.find((view) => view.ask)?.ask;
  return {
    ...base,
    verdict,
    because: uniqueReasons(because),
    ...(look ? { ask: look } : {}),
    facts: needed.map((fact) => sayFact(catalog.space, fact)),
    notNeeded: car.facts.filter((fact) => !needed.includes(fact)).map((fact) => sayFact(catalog.space, fact)),
    places: views,
    order,
    misfits,
    words: [
      sayAnswer(part, verdict, views),
      ...misfits.map((it) => `${it.part} is on the car, where no record permits it.`),
      ...[...car.foreign]
        .slice(0, 1)
        .map((it) => `The ${catalog.space.trait(it).label} that was found is not one of a car like this.`),
    ].join(" "),
    marks: differingMarks(viewMarks(catalog, alike), alike),
    otherwise: records.flatMap(({ id, facts }) => (facts.otherwise ? [{ record: id, text: facts.otherwise }] : [])),
    cautions: cautionsOf(catalog, [part.number, ...companionsIn(views)]),
  };
}

/** A part for an empty place is for a place of its own component, not for any place that is empty. */
function placesAsked(
  knowledge: CarKnowledge,
  index: PartIndex,
  part: Part,
  asked: string | undefined,
): (string | undefined)[] {
  if (asked === undefined) return placesToAsk(index, part.number);
  const wanted = findPlace(knowledge, asked);
  const isOwn = placesOf(index, part.number).includes(wanted);
  if (!isOwn && knowledge.catalog.places.get(wanted)?.id !== part.component)
    throw new QuestionError(`No record speaks of ${part.number} in this place: ${wanted}.`);
  return [wanted];
}

function belongingIn({ parts }: Catalog, views: readonly AtPlace[]): string[] {
  return [...new Set(views.flatMap((view) => view.fits.map((it) => it.belongs)))].filter((it) => parts.has(it));
}

function companionsIn(views: readonly AtPlace[]): string[] {
  return views.flatMap((view) => view.fits.flatMap((it) => (it.ways[0]?.companions ?? []).map((one) => one.part)));
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
    misfits: [],
    words: `No such car was built, or it is no longer as built: ${said.conflict.map((fact) => fact.text).join(" and ")} do not go together.`,
    marks: [],
    otherwise: [],
    cautions: [],
  };
}

interface Decided {
  readonly verdict: Verdict;
  /** The part with what must be bought along, where it is decided that it may be fitted. */
  readonly order: string[];
}

function decide(part: Part, found: readonly FitsAtPlace[]): Decided {
  const verdict = overall(found.map(({ fits }) => verdictOf(fits)));
  if (!isFit(verdict) || !mayBeFitted(verdict)) return { verdict, order: [] };
  const along = relevant(found).flatMap(({ fits }) => fits.flatMap(toBuy));
  return { verdict, order: [...new Set([part.number, ...along])] };
}

/** One verdict where all pieces have it, and need the same parts for it. */
function verdictOf(fits: readonly Fit[]): FitVerdict | "look first" {
  const [first, ...others] = new Set(fits.map((fit) => sayOutcome(fit, fits)));
  return first === undefined || others.length > 0 ? "look first" : (fits[0] as Fit).verdict;
}

/** The verdict; with what must be bought, where others of the same verdict need other parts. */
function sayOutcome(fit: Fit, fits: readonly Fit[]): string {
  const along = toBuy(fit).join(", ");
  const alike = fits.every((other) => other.verdict !== fit.verdict || toBuy(other).join(", ") === along);
  return alike ? fit.verdict : `${fit.verdict}, ${along ? `along with ${along}` : "nothing more to buy"}`;
}

/** A place of which nothing is on record counts only where no other place says more. */
function overall(verdicts: readonly (FitVerdict | "look first")[]): Verdict {
  const telling = new Set(verdicts.filter((it) => it !== "not on record"));
  const [first, ...others] = telling;
  return first === undefined ? "not on record" : others.length > 0 ? "by place" : first;
}

function relevant(found: readonly FitsAtPlace[]): readonly FitsAtPlace[] {
  const telling = found.filter(({ fits }) => verdictOf(fits) !== "not on record");
  return telling.length > 0 ? telling : found;
}

function isFit(verdict: Verdict): verdict is FitVerdict {
  return verdict !== "look first" && verdict !== "by place" && verdict !== "no such car";
}

/** The facts without which the answer would not be the same; all of them while it is open. */
function carryingFacts(
  knowledge: CarKnowledge,
  car: KnownCar,
  { verdict, order }: Decided,
  again: (car: KnownCar) => Decided,
): KnownCar["facts"] {
  if (!isFit(verdict)) return car.facts;
  return neededFacts(car.facts, (facts) => {
    const less = again(withFacts(knowledge, facts));
    return less.verdict === verdict && `${less.order}` === `${order}`;
  });
}

function viewPlace(index: PartIndex, part: string, cars: CarSet, { place, fits }: FitsAtPlace): AtPlace {
  const { space } = index;
  const verdict = verdictOf(fits);
  const outcomes = new Map<string, CarSet>();
  for (const fit of fits) {
    const said = sayOutcome(fit, fits);
    outcomes.set(said, space.sets.or(outcomes.get(said) ?? NONE, fit.cars));
  }
  const values = [...outcomes].map(([said, its]) => ({ said, cars: its }));
  const ask = verdict === "look first" ? lookAmong(space, cars, values) : undefined;
  const unclear = fits.filter((fit) =>
    fits.some((other) => sayOutcome(other, fits) !== sayOutcome(fit, fits) && space.sets.meet(other.cars, fit.cars)),
  );
  return {
    ...(place === undefined ? {} : { place }),
    verdict,
    fits: fits.map((fit) => viewFit(index, part, fit)),
    ...(ask ? { ask } : {}),
    lookAtPart: [...new Set(unclear.map((fit) => sayBelonging(fit.belonging)))],
  };
}

function cautionsOf(catalog: Catalog, numbers: readonly string[]): MayFitAnswer["cautions"] {
  const components = numbers.flatMap((number) => {
    const part = catalog.parts.get(number);
    return part ? [catalog.components.get(part.component)].filter((it) => it !== undefined) : [];
  });
  return cautionViews(
    catalog,
    components.map((it) => it.system),
    components.map((it) => it.id),
  );
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
  const [first, ...others] = (open?.lookAtPart ?? []).map((it) => (it === "not on record" ? "one not on record" : it));
  if (others.length > 0) return `Only the part on the car tells: it may be ${[first, ...others].join(" or ")}.`;
  return `It cannot be said of ${part.number} while the car is as reported.`;
}
