/**
 * Which records a question is about, the best first. Every record gets points:
 *
 *   what is named    the record itself, a part, a component (its main one a little more), a component above or below it, a system
 *   its words        words of the question that nothing else was read from: most where the record is called so, less where its
 *                    parts and components are, least where only its text holds them; a rare word counts more than a common one
 *   what is asked    it says something of the kind: a figure for "how much", what may stand in for "does it fit"
 *   the car          it is about such a car, best if new in that year; it loses more where it is not
 *   breadth          every further thing of the question that it covers, a word by its rarity
 *   a trap           comes before what is otherwise alike
 *
 * A record that nothing named or in words speaks for is not listed, but one that is a step away from a listed one in the graph
 * (one names the other) comes after those. Of equal points the newer comes first.
 */
import type { Asked } from "./asked.ts";
import { cardAddress, piecesOf, wordsOf } from "./card.ts";
import type { Card } from "./card-shape.ts";
import { carsSaid, isOfCar, type Said } from "./cars-said.ts";
import { keyOf } from "./names.ts";
import { plainNumber } from "./numbers.ts";
import type { Reading } from "./read-question.ts";
import { fold, split } from "./split.ts";
import type { Vocabulary } from "./vocabulary-shape.ts";

export const POINTS = {
  record: 200,
  part: 45,
  component: 30,
  mainComponent: 36,
  family: 14,
  system: 10,
  kind: 14,
  setting: 14,
  key: 22,
  near: 10,
  text: 9,
  asked: 6,
  line: 4,
  year: 4,
  newThatYear: 5,
  newThatYearAsked: 14,
  trait: 5,
  notThatLine: -30,
  notThatYear: -24,
  notThatTrait: -12,
  chipKey: 5,
  phrase: 8,
  further: 6,
  carries: 18,
  trap: 4,
  ended: -5,
  step: 5,
} as const;

export interface Query {
  readonly reading: Reading;
  readonly vocabulary: Vocabulary;
  /** Records whose text holds a word of the rest, or two words one after the other. */
  readonly holders: (words: string) => ReadonlySet<string>;
}

export interface Ranked {
  readonly card: Card;
  readonly points: number;
  /** Why it stands here, in a few words each. */
  readonly why: readonly string[];
  /** What of the car it is not about: a line, a year, a trait. */
  readonly misses: readonly string[];
  /** It is only a step away from one that the question is about. */
  readonly step: boolean;
}

export function rankRecords(cards: readonly Card[], query: Query, carriedBy: readonly string[] = []): Ranked[] {
  const words = wordsAsked(query);
  const measured = cards.map((card) => {
    const one = measure(card, query, words);
    const at = carriedBy.indexOf(card.id);
    // What the answer rests on comes first, in the order of the argument, where the words speak for it at all.
    return at >= 0 && one.speaks ? { ...one, points: one.points + POINTS.carries - at } : one;
  });
  const listed = measured.filter((it) => it.points > 0 && it.speaks);
  const isListed = new Set<Ranked>(listed);
  const reached = new Map<string, string>();
  for (const { card } of listed
    .filter(({ misses }) => misses.length === 0)
    .sort(byPoints)
    .slice(0, 5))
    for (const id of card.links) if (!reached.has(id)) reached.set(id, card.id);
  const steps = measured
    .filter((it) => !isListed.has(it) && reached.has(it.card.id))
    .map((it) => ({ ...it, points: 0, step: true, why: [`named with ${reached.get(it.card.id)}`] }));
  return [...listed.sort(byPoints), ...steps.sort(byPoints)].map(({ speaks: _, ...ranked }) => ranked);
}

type Measured = Ranked & { readonly speaks: boolean };

function byPoints(a: Ranked, b: Ranked): number {
  return (
    b.points - a.points ||
    (a.card.issued < b.card.issued ? 1 : a.card.issued > b.card.issued ? -1 : 0) ||
    (a.card.id < b.card.id ? -1 : 1)
  );
}

function measure(card: Card, query: Query, words: Words): Measured {
  const why: string[] = [];
  const misses: string[] = [];
  const named = namedPoints(card, query, why);
  const called = wordPoints(card, words, why);
  const asked = askedPoints(card, query.reading);
  const car = carPoints(card, query.reading, misses);
  const kinds = query.reading.chips.filter(({ kind }) => kind === "kind");
  const kind = kinds.filter(({ ids }) => ids.some((id) => card.kinds.includes(id))).length * POINTS.kind;
  const isOnlyOfCar = query.reading.rest === "" && query.reading.chips.every(isOfCar);
  const speaks = named + called + kind > 0 || (isOnlyOfCar && car > 0 && misses.length === 0);
  const breadth = furtherOf(why, words) * POINTS.further;
  const trap = (card.trap ? POINTS.trap : 0) + (card.ended ? POINTS.ended : 0);
  const points = card.withdrawn ? Math.min(1, named + called) : named + called + kind + asked + car + trap + breadth;
  return { card, points: speaks ? Math.max(points, 0.01) : 0, why, misses, step: false, speaks };
}

/** What a card covers beyond the weightiest thing: whatever is named counts whole, a word by its rarity. */
function furtherOf(why: readonly string[], { single }: Words): number {
  const weights = [...new Set(why)].map((it) => single.find(({ word }) => word === it)?.weight ?? 1);
  return weights.reduce((sum, weight) => sum + weight, 0) - Math.max(0, ...weights);
}

function namedPoints(card: Card, query: Query, why: string[]): number {
  let points = 0;
  for (const { kind, ids, label, said } of query.reading.chips) {
    const best = Math.max(0, ...ids.map((id) => pointsOf(card, kind, id, query)));
    if (best > 0) why.push(label);
    points += best;
    // A record that is called by the very words is meant before one that only concerns the same thing.
    if ((best > 0 && (kind === "component" || kind === "system")) || kind === "trait")
      for (const word of wordsOf([said]))
        if (card.keys.includes(word))
          points += POINTS.chipKey * rarity(frequencyOf(word, query.vocabulary), query.vocabulary.records);
  }
  return points;
}

function pointsOf(card: Card, kind: string, id: string, { vocabulary: { components, records } }: Query): number {
  switch (kind) {
    case "record":
      return card.id === id ? POINTS.record : card.links.includes(id) ? POINTS.step : 0;
    case "part":
      return card.parts.includes(id) ? POINTS.part : 0;
    case "component": {
      // A component of many records says less than one of a few.
      const weight = 0.6 + 0.4 * rarity(components[id]?.records ?? 1, records);
      if (card.components[0] === id) return POINTS.mainComponent * weight;
      if (card.components.includes(id)) return POINTS.component * weight;
      const isNear = card.components.some((own) => components[own]?.under === id || components[id]?.under === own);
      return isNear ? POINTS.family : 0;
    }
    case "system":
      return card.systems[0] === id ? POINTS.system + 1 : card.systems.includes(id) ? POINTS.system : 0;
    default:
      return 0;
  }
}

function wordPoints(card: Card, words: Words, why: string[]): number {
  let points = 0;
  const place = cardAddress(card);
  for (const { word, pieces, number, components, holders, weight } of words.single) {
    const has = (own: readonly string[]): boolean => pieces.some((piece) => own.includes(piece));
    const isPart = number !== undefined && card.parts.some((part) => plainNumber(part) === number);
    const isNear = () => has(card.near) || card.components.some((id) => components.has(id));
    const worth = has(card.keys) || isPart ? POINTS.key : isNear() ? POINTS.near : holders.has(place) ? POINTS.text : 0;
    if (worth === 0) continue;
    why.push(word);
    points += worth * weight;
  }
  for (const { holders, weight } of words.phrases) if (holders.has(place)) points += POINTS.phrase * weight;
  return points + (card.settings.some((name) => words.isSetting(name)) ? POINTS.setting : 0);
}

/** All that is the same for every card, found out once for a question: most of the time would go into it. */
interface Words {
  readonly single: readonly {
    readonly word: string;
    readonly pieces: readonly string[];
    /** The word as a number without signs, where it has figures: it may be that of a part. */
    readonly number: string | undefined;
    /** Components that are called so. */
    readonly components: ReadonlySet<string>;
    readonly holders: ReadonlySet<string>;
    readonly weight: number;
  }[];
  readonly phrases: readonly { readonly holders: ReadonlySet<string>; readonly weight: number }[];
  isSetting(name: string): boolean;
}

/** In how many records a word stands; one at least, as somebody asks for it. */
function frequencyOf(word: string, { words }: Vocabulary): number {
  const folded = fold(word);
  return Object.hasOwn(words, folded) ? (words[folded] ?? 1) : 1;
}

const NOWHERE: ReadonlySet<string> = new Set();

/** A word of so large a part of the records tells nothing, and is not looked for in their texts. */
const COMMON = 0.3;

export function isCommon(word: string, vocabulary: Vocabulary): boolean {
  const { records } = vocabulary;
  return records > 20 && frequencyOf(word, vocabulary) > records * COMMON;
}

function wordsAsked({ reading, holders, vocabulary }: Query): Words {
  const { records } = vocabulary;
  const words = [...new Set(reading.rest.split(" ").filter(Boolean))];
  const said = new Set(words.flatMap(split).map((word) => keyOf([fold(word)])));
  const known = new Map<string, boolean>();
  return {
    single: words.map((word) => {
      const pieces = piecesOf(word);
      const held = isCommon(word, vocabulary) ? NOWHERE : holders(word);
      return {
        word,
        pieces,
        number: /\d/.test(word) ? plainNumber(word) : undefined,
        components: new Set(
          Object.keys(vocabulary.components).filter((id) =>
            pieces.some((piece) => componentWords(vocabulary, id).has(piece)),
          ),
        ),
        holders: held,
        weight: rarity(Math.max(frequencyOf(word, vocabulary), held.size), records),
      };
    }),
    phrases: reading.phrases.map((phrase) => {
      const held = holders(phrase);
      return { holders: held, weight: rarity(held.size, records) };
    }),
    isSetting: (name) => {
      let is = known.get(name);
      if (is === undefined) {
        is = words.length > 0 && split(name).every((word) => said.has(keyOf([fold(word)])));
        known.set(name, is);
      }
      return is;
    },
  };
}

const ofComponents = new WeakMap<Vocabulary, Map<string, ReadonlySet<string>>>();

/** The words by which a component is called. */
export function componentWords(vocabulary: Vocabulary, id: string): ReadonlySet<string> {
  let known = ofComponents.get(vocabulary);
  if (!known) {
    const named = vocabulary.names.filter(({ kind }) => kind === "component");
    known = new Map(named.map((name) => [name.id, new Set(wordsOf(name.say))]));
    ofComponents.set(vocabulary, known);
  }
  return known.get(id) ?? new Set();
}

/** From 1 for a word of one record down to almost nothing for a word of all of them. */
export function rarity(holders: number, records: number): number {
  return Math.max(0.05, 1 - Math.log(Math.max(1, holders)) / Math.log(Math.max(2, records)));
}

/** What a record must say to answer what is asked. */
const SAYS: Readonly<Record<Asked, readonly string[]>> = {
  "tell-apart": ["tell-apart"],
  retrofit: ["stands-in"],
  replaces: ["supersedes", "stands-in"],
  fits: ["stands-in"],
  current: ["supersedes", "built"],
  interval: ["interval"],
  setting: ["setting"],
  why: [],
  how: ["procedure"],
  applies: [],
  changed: [],
};

function askedPoints(card: Card, { asked }: Reading): number {
  const kinds = asked.map((it) => it.asked);
  const says = kinds.filter((kind) => SAYS[kind].some((type) => card.says.includes(type))).length;
  const retrofit = kinds.includes("retrofit") && card.kinds.includes("retrofit") ? POINTS.kind : 0;
  return says * POINTS.asked + retrofit;
}

const saids = new WeakMap<Reading, readonly Said[]>();

/** The traits that chips name, weak ones too, and whether they are denied: for finding it is enough that they are spoken of. */
function carSaid(reading: Reading): readonly Said[] {
  const known = saids.get(reading);
  if (known) return known;
  const said = carsSaid(reading);
  const sure = [...said.car, ...said.donor];
  const weak = reading.chips
    .filter(({ kind, ids }) => kind === "trait" && !sure.some((one) => one.ids.join() === ids.join()))
    .map(({ ids }): Said => ({ kind: "trait", ids, denied: false }));
  saids.set(reading, [...sure, ...weak]);
  return saids.get(reading) as readonly Said[];
}

function carPoints(card: Card, reading: Reading, misses: string[]): number {
  const { chips, asked } = reading;
  let points = 0;
  const lines = chips.filter(({ kind }) => kind === "line").flatMap(({ ids }) => ids);
  if (lines.length > 0 && card.kind === "record") {
    const isAbout = lines.some((line) => card.told[line] !== undefined);
    points += isAbout ? POINTS.line : POINTS.notThatLine;
    if (!isAbout) misses.push("line");
  }
  const about = lines.length > 0 ? lines : Object.keys(card.told);
  const years = chips.filter(({ kind }) => kind === "year").flatMap(({ ids }) => ids.map(Number));
  if (years.length > 0 && card.kind === "record") {
    const isChange = asked.some((it) => it.asked === "changed");
    const told = about.flatMap((line) => card.told[line] ?? []);
    const on = about.flatMap((line) => card.on[line] ?? []);
    const begins = about.flatMap((line) => card.begins[line] ?? []);
    if (!years.some((year) => told.includes(year))) {
      points += POINTS.notThatYear;
      misses.push("year");
    } else {
      if (years.some((year) => on.includes(year))) points += POINTS.year;
      if (years.some((year) => begins.includes(year)))
        points += isChange ? POINTS.newThatYearAsked : POINTS.newThatYear;
    }
  }
  // What is denied is no wish: "no tow package" is a car without it.
  for (const { kind, ids, denied } of carSaid(reading)) {
    if (kind !== "trait" || (denied && !/=yes$/.test(ids[0] ?? ""))) continue;
    const wanted = ids.map((id) => (denied ? id.replace(/yes$/, "no") : id).split("=") as [string, string]);
    const [trait = ""] = wanted[0] ?? [];
    const only = card.only[trait];
    if (only === undefined) continue;
    if (wanted.some(([, value]) => only.includes(value))) points += POINTS.trait;
    else {
      points += POINTS.notThatTrait;
      misses.push(trait);
    }
  }
  return points;
}
