/**
 * Which setting, or which due, a question in words means. Of what the records that the question is about state:
 *
 *   each word of its name that the question holds counts, a rare one more than one of many names; words that tell which cars it is
 *   for do not count. What the question names as its component counts, and a word for a quantity of its kind ("psi", "how tight").
 *   The best one is meant; where several are as good, all of them are.
 *   Without a word for its quantity nothing is meant, where the component has parts: who asks of a wheel nut does not ask its torque.
 */
import { piecesOf, wordsOf } from "../ask/card.ts";
import { keyOf, namesOf } from "../ask/names.ts";
import { componentWords, rarity } from "../ask/rank.ts";
import type { Reading } from "../ask/read-question.ts";
import { fold, split } from "../ask/split.ts";
import type { Vocabulary } from "../ask/vocabulary-shape.ts";
import type { Catalog, Component } from "../records/catalog.ts";
import { statementsOf } from "../records/statement.ts";
import { type CarSet, NONE } from "../scope/diagram.ts";
import { UNITS } from "../settings/unit-table.ts";
import { componentOf, settingsOf } from "./find-settings.ts";

const MOST = 3;
/** From how much of a name on it is meant, and how near to the best another one is as good. */
const ENOUGH = 0.75;
const AS_GOOD = 0.12;

/** Words that ask for a quantity, by its dimension. */
const QUANTITY: Readonly<Record<string, readonly string[]>> = {
  torque: ["torque", "tight", "tighten", "tightening"],
  pressure: ["pressure"],
  temperature: ["temperature", "temp", "hot", "degree"],
  voltage: ["volt", "voltage"],
  current: ["amp", "output"],
  resistance: ["ohm", "resistance"],
  "speed of turning": ["rpm", "revs"],
  force: ["tension", "pull"],
  angle: ["dwell"],
  "crank position": ["degree", "advance"],
  volume: ["capacity"],
  mass: ["weight", "charge"],
  time: ["second", "long"],
};

export interface AskedMatter {
  readonly name: string;
  /** What the question names is what the setting is set on, or the question names nothing. */
  readonly ofComponent: boolean;
  /** The question holds every word of the name. */
  readonly whole: boolean;
}

interface Named {
  readonly name: string;
  readonly record: string;
  readonly component: Component | undefined;
  readonly unit: string | undefined;
  /** No part of its component is on record. */
  readonly partless: boolean;
}

/** Names of settings. */
export function findAskedSettings(
  catalog: Catalog,
  vocabulary: Vocabulary,
  reading: Reading,
  { records, cars }: { readonly records: readonly string[]; readonly cars: CarSet },
): AskedMatter[] {
  const withParts = new Set([...catalog.parts.values(), ...catalog.relatives.values()].map((part) => part.component));
  const every = settingsOf(catalog).flatMap(({ name, statements }) =>
    statements.map((it): Named & { cars: CarSet } => {
      const component = componentOf(catalog, it);
      const partless = !withParts.has(component?.id ?? "");
      return { name, record: it.record, component, unit: it.unit, partless, cars: it.scope.cars };
    }),
  );
  // Of "head bolt torque" of two engines the one is meant that the car has.
  const holding = every.filter((it) => catalog.space.sets.and(cars, it.cars) !== NONE);
  const all = holding.length > 0 ? holding : every;
  const how = reading.asked.some(({ asked }) => asked === "setting") ? 0.3 : 0;
  return findAsked(all, vocabulary, reading, records, how);
}

/** Names of what is due from time to time. */
export function findAskedDues(
  catalog: Catalog,
  vocabulary: Vocabulary,
  reading: Reading,
  records: readonly string[],
): AskedMatter[] {
  const all = [...catalog.records.values()].flatMap((record) =>
    statementsOf(record.statements, "interval").map(
      (it): Named => ({
        name: it.name,
        record: record.id,
        component: record.components[0],
        unit: undefined,
        partless: false,
      }),
    ),
  );
  const how = reading.asked.some(({ asked }) => asked === "interval") ? 0.5 : 0;
  return findAsked(all, vocabulary, reading, records, how);
}

function findAsked(
  all: readonly Named[],
  vocabulary: Vocabulary,
  reading: Reading,
  records: readonly string[],
  how: number,
): AskedMatter[] {
  const components = new Set(reading.chips.flatMap(({ kind, ids }) => (kind === "component" ? ids : [])));
  const ofComponents = vocabulary.names.filter(({ kind, id }) => kind === "component" && components.has(id));
  const pairs = reading.words.slice(1).map((word, i) => `${reading.words[i]}${word}`);
  const said = new Set([
    ...reading.words.flatMap(piecesOf),
    ...pairs,
    ...wordsOf(ofComponents.map(({ label }) => label)),
  ]);
  const holders = new Map<string, number>();
  for (const { name } of all)
    for (const word of nameWords(name, vocabulary)) holders.set(word, (holders.get(word) ?? 0) + 1);
  const weigh = (some: readonly string[]): number =>
    some.reduce((sum, word) => sum + 0.2 + rarity(holders.get(word) ?? 1, all.length), 0);
  const sayings = [
    ...ofComponents.map(({ label }) => wordsOf([label])),
    ...reading.chips.flatMap(({ kind, said: it }) => (kind === "component" ? [wordsOf([it])] : [])),
  ];
  // What a component was called in the question, as one word each.
  const calledBy = new Set(
    reading.chips.flatMap(({ kind, said }) => (kind === "component" ? [keyOf(split(said).map(fold))] : [])),
  );
  const best = new Map<string, { points: number; ofComponent: boolean; whole: boolean }>();
  for (const one of all) {
    const place = records.indexOf(one.record);
    if (place < 0) continue;
    const quantity = asksFor(said, one.unit) ? 0.5 : 0;
    const isOfComponent = one.component !== undefined && components.has(one.component.id);
    const called: ReadonlySet<string> =
      isOfComponent && one.component ? componentWords(vocabulary, one.component.id) : new Set();
    const name = nameWords(one.name, vocabulary);
    const held = name.filter((word) => said.has(word));
    const covered = weigh(held) / Math.max(0.1, weigh(name));
    // Words that only name the component do not ask for a figure, unless the figure itself is called so ("idle speed"), or the component
    // is nothing that could be bought: who asks of the toe-in asks for its figure.
    const label = wordsOf([one.component?.name ?? ""]);
    const isItself = isOfComponent && (isSame(name, label) || isWhole(name, held, label) || calledBy.has(keyOf(name)));
    const isAsked = quantity + how > 0 || isItself || (isOfComponent && one.partless);
    if (held.every((word) => called.has(word)) && !isAsked) continue;
    // A figure of something else than what is named is hardly meant: "wheel nut torque" is no figure of the bearing nut.
    const component = isOfComponent ? 0.4 : components.size > 0 ? -0.3 : 0;
    const points = covered + component + quantity + how - place * 0.08;
    const whole = held.length === name.length;
    // "Wheel nut torque" is a figure of the wheel nut, whichever component the record sets it on.
    const isNamed = sayings.some((words) => words.every((word) => name.includes(word)));
    const ofComponent = isOfComponent || components.size === 0 || isNamed;
    if (points >= ENOUGH && points > (best.get(one.name)?.points ?? 0))
      best.set(one.name, { points, ofComponent, whole });
  }
  const most = Math.max(...[...best.values()].map(({ points }) => points));
  return [...best]
    .filter(([, { points }]) => points >= most - AS_GOOD)
    .map(([name, { ofComponent, whole }]) => ({ name, ofComponent, whole }))
    .slice(0, MOST);
}

/** The question holds all of the name, and the name says more than what the component is called. */
function isWhole(name: readonly string[], held: readonly string[], label: readonly string[]): boolean {
  return held.length === name.length && name.some((word) => !label.includes(word));
}

function isSame(a: readonly string[], b: readonly string[]): boolean {
  return a.length === b.length && a.every((word) => b.includes(word));
}

/** The words of a name but those of traits of cars ("six", "A3L") and bare numbers. */
function nameWords(name: string, vocabulary: Vocabulary): string[] {
  const { byKey } = namesOf(vocabulary);
  const isOfCars = (word: string): boolean =>
    byKey.get(word)?.some(({ kind }) => kind === "trait" || kind === "line") ?? false;
  // "run-out" is one word here, however the question writes it.
  const words = split(name).filter((word) => !/^\d/.test(word));
  return [...new Set(words.map((word) => keyOf([fold(word)])))].filter((word) => !isOfCars(word));
}

function asksFor(said: ReadonlySet<string>, unit: string | undefined): boolean {
  if (unit === undefined) return false;
  const known = UNITS.find(({ id }) => id === unit);
  const alike = known ? UNITS.filter(({ dimension }) => dimension === known.dimension) : [];
  const words = known ? alike.flatMap(({ id, name, says }) => [id, name, ...says]) : [unit];
  const quantity = known ? (QUANTITY[known.dimension] ?? []) : [];
  return [...words, ...quantity].some((text) => {
    const parts = wordsOf([text]);
    // "in" is a word of its own; it asks for no length.
    return parts.length > 0 && parts.every((part) => part.length > 2 && said.has(part));
  });
}
