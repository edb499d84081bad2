/**
 * Which of the engine's questions a question in words asks. The first that applies:
 *
 *   a part named, or one that comes from another car      may it go on this car; asked for its number, which one is current
 *   "retrofit", or "fit" without a part                    what the car may be improved with, of that component
 *   "replace", "order", "current" with a component         the current number of what the car was built with there
 *   "how often"                                            what is due on the car
 *   a figure by name, unit or "how much"                   the setting in force; with a figure in the question, whether it passes
 *   "which one", "tell apart" with a component             by which marks its parts are told apart
 *   a record named, and a car or "apply"                   whether it applies
 *   "what changed" with a year                             the net change against the year before, or between two years
 *
 * What none of these is has no answer of its own; the records stand alone.
 */
import type { Asked } from "../ask/asked.ts";
import { isOfCar } from "../ask/cars-said.ts";
import { HARMLESS } from "../ask/little-words.ts";
import { partsSaid } from "../ask/parts-said.ts";
import type { Reading } from "../ask/read-question.ts";
import { fold } from "../ask/split.ts";
import type { Vocabulary } from "../ask/vocabulary-shape.ts";
import { belongsAt } from "../interchange/belongs.ts";
import { NONE } from "../scope/diagram.ts";
import { readCar } from "./car.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { carsAsked } from "./car-of-question.ts";
import { type AskedMatter, findAskedDues, findAskedSettings } from "./find-asked-matter.ts";
import { saysMark } from "./marks-said.ts";
import { partIndexOf } from "./part-indexes.ts";
import { placesSaid } from "./places-said.ts";
import type { CarInput } from "./shapes/car.ts";

export type Planned =
  | {
      readonly question: "may-fit";
      readonly part: string;
      readonly place?: string;
      readonly car: CarInput;
      /** Parts that are not to go along. */
      readonly leftOut?: readonly string[];
    }
  | { readonly question: "current"; readonly part?: string; readonly place?: string; readonly car: CarInput }
  | { readonly question: "retrofits"; readonly component?: string; readonly car: CarInput }
  | {
      readonly question: "schedule";
      readonly car: CarInput;
      readonly about: readonly string[];
      readonly names?: readonly string[];
    }
  | { readonly question: "setting"; readonly setting: string; readonly car: CarInput }
  | { readonly question: "reading"; readonly setting: string; readonly value: string; readonly car: CarInput }
  | {
      readonly question: "tell-apart";
      readonly component?: string;
      readonly parts?: readonly string[];
      readonly car: CarInput;
    }
  | { readonly question: "applies"; readonly record: string; readonly car: CarInput }
  | {
      readonly question: "net-change";
      readonly from: number;
      readonly to: number;
      readonly car: CarInput;
      readonly about: readonly string[];
    };

/** More places, or more parts from the other car, than these are no answer but a list. */
const MOST = 4;

/**
 * `records` are those that the question is about, the best first. `donors` knows the car that a part comes from; a page, which has the
 * records of one line, gives those of the other car's line.
 */
export function planAnswers(
  knowledge: CarKnowledge,
  vocabulary: Vocabulary,
  reading: Reading,
  picked: CarInput,
  records: readonly string[],
  donors: CarKnowledge = knowledge,
): Plan {
  const { catalog } = knowledge;
  const asked = new Set<Asked>(reading.asked.map((it) => it.asked));
  const idsOf = (kind: string): string[] => reading.chips.flatMap((chip) => (chip.kind === kind ? chip.ids : []));
  const said = partsSaid(reading);
  const isHere = (number: string): boolean => catalog.parts.has(number) || catalog.relatives.has(number);
  const parts = said.asked;
  const components = componentsMeant([knowledge, donors], reading, records);
  const isOfFitting = asked.has("fits") || asked.has("retrofit") || asked.has("replaces") || parts.length > 0;
  const {
    car: plain,
    sure,
    lost,
    donor,
    unclear,
  } = carsAsked(knowledge, reading, picked, isOfFitting || asked.size === 0);
  // What no record covers has no answer, and a part whose place on the car is taken by one unknown neither.
  if (reading.beyond.length > 0 || reading.noNumbers.length > 0 || saysFitted(reading, catalog, parts)) return NOTHING;
  const onCar = said.onCar.filter(isHere).filter((part) => !goesAlong(knowledge, parts, part));
  const car = onCar.length > 0 ? { ...plain, fitted: [...(plain.fitted ?? []), ...onCar] } : plain;
  const isPicked = picked.plate !== undefined || Object.keys(picked.facts ?? {}).length > 0;
  const isCarSaid = isPicked || reading.chips.some(isOfCar);
  const all = { knowledge, reading, car };
  const plan = (planned: readonly Planned[]): Plan => ({ planned, unclear: false, sure, lost });

  if (parts.length > 0) {
    if (asked.has("tell-apart") && parts.length > 1) return plan([{ question: "tell-apart", parts, car }]);
    if (said.against.length > 0) return plan(fits(all, parts));
    if (asked.has("current") || asked.has("replaces")) {
      const current = parts.slice(0, MOST).map((part): Planned => ({ question: "current", part, car }));
      return plan(asked.has("fits") ? [...fits(all, parts), ...current] : current);
    }
    if (asked.has("interval"))
      return plan([
        { question: "schedule", car: { ...car, fitted: [...(car.fitted ?? []), ...parts] }, about: components },
      ]);
    if (asked.has("tell-apart") && !isCarSaid && !asked.has("fits"))
      return plan(components.slice(0, 1).map((component) => ({ question: "tell-apart", component, car })));
    if (!asked.has("setting") && reading.figures.length === 0 && (isOfFitting || isCarSaid || asked.size === 0))
      return plan(fits(all, parts));
  }
  const [component] = components;
  const isOfTwo = asked.has("fits") || asked.has("retrofit") || asked.size === 0;
  if (unclear && isOfTwo && component !== undefined) return { planned: [], unclear: true, sure, lost };
  // Of a part that comes from another car nothing else is asked than whether it may go on.
  if (donor && isOfTwo && component !== undefined) return plan(partsBuilt(all, component, donor, donors));
  const dues = findAskedDues(catalog, vocabulary, reading, records);
  // "Oil change" is a due, and no question of what changed.
  const isOfDue = !hasYears(reading, asked) || dues.some(({ whole }) => whole);
  if (asked.has("interval") || (dues.length > 0 && !asked.has("fits") && isOfDue))
    return plan([{ question: "schedule", car, about: components, names: dues.map(({ name }) => name) }]);
  const { cars } = readCar(knowledge, car);
  const settings = findAskedSettings(catalog, vocabulary, reading, { records, cars });
  const isOfFigure = settings.length > 0 && !hasYears(reading, asked);
  if (component !== undefined) {
    if (asked.has("retrofit")) return plan([{ question: "retrofits", component, car }]);
    if (asked.has("current") || asked.has("replaces")) {
      const current = saysMark(catalog, vocabulary, component, reading) ? [] : currentAt(all, component);
      if (current.length > 0) return plan(current);
    }
    if (asked.has("tell-apart") && asked.has("fits")) return plan([{ question: "retrofits", component, car }]);
    // "Which one" of a known car asks what belongs there, and how to tell it from what does not.
    if (asked.has("tell-apart") && !isOfFigure && !hasYears(reading, asked))
      return plan([{ question: "tell-apart", component, car }, ...(isCarSaid ? currentAt(all, component) : [])]);
  }
  const [record] = idsOf("record");
  if (record !== undefined && catalog.records.has(record) && (asked.has("applies") || isCarSaid))
    return plan([{ question: "applies", record, car }]);
  if (isOfFigure) return plan(settings.map((matter) => settingOrReading(reading, matter, settings.length === 1, car)));
  if (hasYears(reading, asked) && record === undefined) return plan(changes(all));
  const isOfWholeCar = component === undefined && parts.length === 0 && (asked.has("fits") || asked.has("retrofit"));
  if (isOfWholeCar && isCarSaid && !unclear && !donor) return plan([{ question: "retrofits", car }]);
  if (component === undefined || asked.has("changed")) return NOTHING;
  if (asked.has("fits")) return plan([{ question: "retrofits", component, car }]);
  const isRestHarmless = reading.rest.split(" ").every((word) => word === "" || HARMLESS.has(fold(word)));
  const isOnlyCar = isRestHarmless && reading.asked.length === 0 && isCarSaid && idsOf("component").length > 0;
  if (isOnlyCar) {
    const current = currentAt(all, component);
    // Where the car was built with nothing, what may go there is asked.
    return plan(current.length > 0 ? current : [{ question: "retrofits", component, car }]);
  }
  const isNamed = idsOf("component").includes(component);
  return isNamed && reading.asked.length === 0 && saysMark(catalog, vocabulary, component, reading)
    ? plan([{ question: "tell-apart", component, car }])
    : NOTHING;
}

export interface Plan {
  readonly planned: readonly Planned[];
  /** Two cars are spoken of, and it is not clear which of them is the one at hand. */
  readonly unclear: boolean;
  /** What is certain of the car whatever the words mean that were not understood. */
  readonly sure: CarInput;
  /** It may be a car that the records know nothing of, so nothing is permitted. */
  readonly lost: boolean;
}
const NOTHING: Plan = { planned: [], unclear: false, sure: {}, lost: false };

/** "… low drag calipers fitted": another component is not as built, and no number says what is there. */
function saysFitted({ words, chips }: Reading, { parts }: CarKnowledge["catalog"], asked: readonly string[]): boolean {
  const own = new Set(asked.flatMap((number) => parts.get(number)?.component ?? []));
  const isState = (word: string | undefined): boolean =>
    ["fitted", "installed", "converted", "swapped"].includes(word ?? "");
  return chips.some(
    ({ kind, ids, at, length }) =>
      kind === "component" && !ids.some((id) => own.has(id)) && asked.length > 0 && isState(words[at + length]),
  );
}

/** A part that some way of fitting the others asks for is no fact of the car: it goes along. */
function goesAlong({ statementsByPart }: CarKnowledge, parts: readonly string[], part: string): boolean {
  return parts.some((asked) =>
    (statementsByPart.get(asked) ?? []).some(
      (it) => it.type === "stands-in" && it.part === asked && it.with.includes(part),
    ),
  );
}

interface All {
  readonly knowledge: CarKnowledge;
  readonly reading: Reading;
  readonly car: CarInput;
}

/** The parts named, each in the places that the question speaks of. */
function fits({ knowledge: { catalog }, reading, car }: All, parts: readonly string[]): Planned[] {
  const planned = parts.flatMap((part): Planned[] => {
    const places = catalog.components.get(catalog.parts.get(part)?.component ?? "")?.places ?? [];
    const said = placesSaid(places, reading);
    const { leftOut } = partsSaid(reading);
    const base = { question: "may-fit", part, car, ...(leftOut.length > 0 ? { leftOut } : {}) } as const;
    return said.length < places.length ? said.map((place) => ({ ...base, place })) : [base];
  });
  return planned.slice(0, MOST);
}

/** What changed is asked of years; so is a difference between two years, where no part or component is named. */
function hasYears({ chips }: Reading, asked: ReadonlySet<Asked>): boolean {
  const years = chips.flatMap(({ kind, ids }) => (kind === "year" ? ids : []));
  const isOfThing = chips.some(({ kind }) => kind === "component" || kind === "part");
  const isDifference = asked.has("tell-apart") && !isOfThing && new Set(years).size > 1;
  return (asked.has("changed") || isDifference) && years.length > 0;
}

/** The current number of what the car was built with, in each place of a component that the question speaks of. */
function currentAt({ knowledge, reading, car }: All, component: string): Planned[] {
  const all = knowledge.catalog.components.get(component)?.places ?? [];
  const places = placesSaid(all, reading).filter((place) => isOnCar(knowledge, place, car));
  return places.length <= MOST ? places.map((place) => ({ question: "current", place, car })) : [];
}

const GENERAL: ReadonlySet<string> = new Set(
  ["newer", "later", "older", "better", "improved", "parts", "thing", "stuff"].map(fold),
);

/** The components named; where none is, that of the best record, if the question has words of its own for it. */
function componentsMeant(
  [{ catalog }, donors]: readonly [CarKnowledge, CarKnowledge],
  { chips, rest }: Reading,
  records: readonly string[],
): string[] {
  const named = chips.filter(({ kind }) => kind === "component").flatMap(({ ids }) => ids);
  const ofParts = chips
    .filter(({ kind }) => kind === "part")
    .flatMap(({ ids }) => ids.flatMap((id) => catalog.parts.get(id)?.component ?? []));
  const known = [...new Set([...named, ...ofParts])].filter(
    (id) => catalog.components.has(id) || donors.catalog.components.has(id),
  );
  if (known.length > 0) {
    // Of several, the one that the best record is about comes first.
    const best = catalog.records.get(records[0] ?? "")?.components.map(({ id }) => id) ?? [];
    return known.toSorted((a, b) => Number(best.includes(b)) - Number(best.includes(a)));
  }
  // "What newer parts" names none; what the best record is about is meant only where some words are its own.
  const isGeneral = rest.split(" ").every((word) => word === "" || GENERAL.has(fold(word)) || HARMLESS.has(fold(word)));
  const [main] = isGeneral ? [] : (catalog.records.get(records[0] ?? "")?.components ?? []);
  return main ? [main.id] : [];
}

/** The parts of a component that the other car was built with, each as a question for this car. */
function partsBuilt({ reading, car }: All, component: string, donor: CarInput, donors: CarKnowledge): Planned[] {
  const { catalog } = donors;
  const { cars } = readCar(donors, donor);
  if (cars === NONE) return [];
  const index = partIndexOf(catalog);
  const places = placesSaid(catalog.components.get(component)?.places ?? [], reading);
  const found = places.flatMap((place) =>
    belongsAt(index, place, cars).flatMap(({ belonging }): Planned[] =>
      belonging.what === "part" ? [{ question: "may-fit", part: belonging.part, place, car }] : [],
    ),
  );
  return found.length <= MOST ? found : [];
}

function isOnCar(knowledge: CarKnowledge, place: string, car: CarInput): boolean {
  const index = partIndexOf(knowledge.catalog);
  return belongsAt(index, place, readCar(knowledge, car).cars).some(({ belonging }) => belonging.what === "part");
}

/** A figure in the question is a reading, where only one setting can be meant, of the very thing that is named. */
function settingOrReading(
  { figures, comparing }: Reading,
  { name, ofComponent }: AskedMatter,
  only: boolean,
  car: CarInput,
): Planned {
  const [value] = figures;
  return value !== undefined && only && ofComponent && !comparing
    ? { question: "reading", setting: name, value, car }
    : { question: "setting", setting: name, car };
}

/** Without its line a car is too many cars to say what changed on all of them. */
function changes({ knowledge: { catalog }, reading, car }: All): Planned[] {
  const { space, years: known } = catalog;
  const years = reading.chips.flatMap(({ kind, ids }) => (kind === "year" ? ids.map(Number) : []));
  const [last, first] = [Math.max(...years), Math.min(...years)];
  const [year, line] = [space.role("year"), space.role("line")];
  if (years.length === 0 || year === undefined) return [];
  const said = line === undefined ? undefined : car.facts?.[space.trait(line).id];
  const isLineSaid = line === undefined || typeof said === "string" || car.plate !== undefined;
  const from = first < last ? first : known[known.indexOf(last) - 1];
  if (from === undefined || (!isLineSaid && catalog.lines.length > 1)) return [];
  const facts = { ...car.facts, [space.trait(year).id]: String(last) };
  return [{ question: "net-change", from, to: last, car: { ...car, facts }, about: topicsOf(reading) }];
}

/** Systems and components that the question names. */
function topicsOf({ chips }: Reading): string[] {
  return chips.flatMap(({ kind, ids }) => (kind === "system" || kind === "component" ? ids : []));
}
