/**
 * Which setting, or which due, a question in words means. Of what the records that the question is about state:
 *
 *   each word of its name that the question holds counts, a rare one more than one of many names; words that tell which cars it is
 *   for do not count. What the question names as its component counts, and a word for a quantity of its kind ("psi", "how tight").
 *   The best one is meant; where several are as good, all of them are.
 *   Without a word for its quantity nothing is meant: who asks of a wheel nut does not ask its torque.
 */
import { piecesOf, wordsOf } from "../ask/card.ts";
import { namesOf } from "../ask/names.ts";
import { componentWords, rarity } from "../ask/rank.ts";
import type { Reading } from "../ask/read-question.ts";
import { split } from "../ask/split.ts";
import type { Vocabulary } from "../ask/vocabulary-shape.ts";
import type { Catalog, Component } from "../records/catalog.ts";
import { statementsOf } from "../records/statement.ts";
import { UNITS } from "../settings/unit-table.ts";
import { componentOf, settingsOf } from "./find-settings.ts";

const MOST = 3;
/** From how much of a name on it is meant, and how near to the best another one is as good. */
const ENOUGH = 0.75;
const AS_GOOD = 0.12;

/** Words that ask for a quantity, by its dimension. */
const QUANTITY: Readonly<Record<string, readonly string[]>> = {
  length: ["length", "height", "clearance", "gap", "play", "depth", "thick", "thickness", "travel", "distance", "wide"],
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

interface Named {
  readonly name: string;
  readonly record: string;
  readonly component: Component | undefined;
  readonly unit: string | undefined;
}

/** Names of settings. */
export function findAskedSettings(
  catalog: Catalog,
  vocabulary: Vocabulary,
  reading: Reading,
  records: readonly string[],
) {
  const all = settingsOf(catalog).flatMap(({ name, statements }) =>
    statements.map((it): Named => ({ name, record: it.record, component: componentOf(catalog, it), unit: it.unit })),
  );
  const how = reading.asked.some(({ asked }) => asked === "setting") ? 0.3 : 0;
  return findAsked(all, vocabulary, reading, records, how);
}

/** Names of what is due from time to time. */
export function findAskedDues(catalog: Catalog, vocabulary: Vocabulary, reading: Reading, records: readonly string[]) {
  const all = [...catalog.records.values()].flatMap((record) =>
    statementsOf(record.statements, "interval").map(
      (it): Named => ({ name: it.name, record: record.id, component: record.components[0], unit: undefined }),
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
): string[] {
  const components = new Set(reading.chips.flatMap(({ kind, ids }) => (kind === "component" ? ids : [])));
  const ofComponents = vocabulary.names.filter(({ kind, id }) => kind === "component" && components.has(id));
  const said = new Set([...reading.words.flatMap(piecesOf), ...wordsOf(ofComponents.map(({ label }) => label))]);
  const holders = new Map<string, number>();
  for (const { name } of all) for (const word of wordsOf([name])) holders.set(word, (holders.get(word) ?? 0) + 1);
  const weigh = (some: readonly string[]): number =>
    some.reduce((sum, word) => sum + 0.2 + rarity(holders.get(word) ?? 1, all.length), 0);
  const best = new Map<string, number>();
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
    // Words that only name the component do not ask for a figure, unless the figure itself is called so ("idle speed").
    const isItself = isOfComponent && isSame(name, wordsOf([one.component?.name ?? ""]));
    if (held.every((word) => called.has(word)) && quantity + how === 0 && !isItself) continue;
    const points = covered + (isOfComponent ? 0.4 : 0) + quantity + how - place * 0.08;
    if (points >= ENOUGH) best.set(one.name, Math.max(best.get(one.name) ?? 0, points));
  }
  const most = Math.max(...best.values());
  return [...best]
    .filter(([, points]) => points >= most - AS_GOOD)
    .map(([name]) => name)
    .slice(0, MOST);
}

function isSame(a: readonly string[], b: readonly string[]): boolean {
  return a.length === b.length && a.every((word) => b.includes(word));
}

/** The words of a name but those of traits of cars ("six", "A3L") and bare numbers. */
function nameWords(name: string, vocabulary: Vocabulary): string[] {
  const { byKey } = namesOf(vocabulary);
  const isOfCars = (word: string): boolean =>
    byKey.get(word)?.some(({ kind }) => kind === "trait" || kind === "line") ?? false;
  return wordsOf(split(name).filter((word) => !/^\d/.test(word))).filter((word) => !isOfCars(word));
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
