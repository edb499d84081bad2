/**
 * "Which of these parts is this?" From the marks seen so far: what it can still be, what to look at next, and when the records
 * cannot tell. (The ninth law of the answers.)
 *
 *   Compared are the parts of a component, or those that are asked about (`parts-compared.ts`).
 *   A car does not rule out a part, for somebody may have fitted another one: it is said of each whether the plant built it in. Of
 *   the marks to look at those come first that tell apart what the car may have.
 *   A part that rests on paint alone gets a second test, a durable mark.
 */
import { alikeGroups, compareMarks } from "../lookalikes/alike.ts";
import { contradiction } from "../lookalikes/contradiction.ts";
import { type Mark, type MarkTable, markTable, type Row } from "../lookalikes/mark-table.ts";
import { type Look, nextMarks, type Outcome } from "../lookalikes/next-mark.ts";
import { isAbsent, type Observation, possibleParts, rulesOut } from "../lookalikes/possible-parts.ts";
import type { Feature, Part } from "../records/catalog.ts";
import { NONE } from "../scope/diagram.ts";
import { type KnownCar, readCar } from "./car.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { cautionViews } from "./cautions-for.ts";
import { onThisCar, viewRefusal } from "./on-this-car.ts";
import { type PartsAsked, partsCompared } from "./parts-compared.ts";
import { QuestionError } from "./question-error.ts";
import { findFeature, readSeen } from "./read-seen.ts";
import { reasonForRecord, uniqueReasons } from "./say.ts";
import { sayConflict } from "./say-conflict.ts";
import { sayOutcome, saySeen, sayValue } from "./say-seen.ts";
import { sayAlike, sayContradiction, sayNothing, sayTellApart } from "./say-tell-apart.ts";
import type { CarInput } from "./shapes/car.ts";
import type { TellApartAnswer } from "./shapes/tell-apart.ts";

export interface TellApartQuestion extends PartsAsked {
  /** By the mark what was seen of it; or as text, "grooves=2; colour=can't see". */
  readonly seen?: Readonly<Record<string, string | number>> | string | readonly string[] | undefined;
  readonly car?: CarInput | undefined;
}

type Observed = TellApartAnswer["observed"][number];
type LookView = TellApartAnswer["further"][number];

export function answerTellApart(knowledge: CarKnowledge, asked: TellApartQuestion): TellApartAnswer {
  const { catalog } = knowledge;
  const { component, parts, leftOut, place } = partsCompared(knowledge, asked);
  const byNumber = new Map(parts.map((part) => [part.number, part]));
  const features = parts[0]?.features ?? [];
  const observations = readObservations(features, parts, asked.seen);
  const seen = new Map(observations.map((it) => [it.mark, it]));
  const featureOf = (id: string): Feature => features.find((it) => it.id === id) as Feature;
  const view = ({ mark, seen: what }: Observation): Observed => {
    const feature = featureOf(mark);
    return { feature: mark, name: feature.name, seen: saySeen(feature, what) };
  };
  const nameOf = (number: string): string => byNumber.get(number)?.name ?? number;
  const base = {
    question: "tell-apart" as const,
    because: [],
    component: { id: component.id, name: component.name },
    parts: [],
    ruledOut: [],
    leftOut,
    observed: observations.map(view),
    further: [],
    same: [],
    alike: [],
    provesNothing: [],
    cautions: cautionViews(catalog, [component.system], [component.id]),
  };
  const car = hasFacts(asked.car) ? readCar(knowledge, asked.car) : undefined;
  if (car?.cars === NONE) {
    const clash = sayConflict(catalog, car).conflict;
    const facts = clash.map((fact) => fact.text).join(" and ");
    const words = `No such car was built, or it is no longer as built: ${facts} do not go together.`;
    return { ...base, verdict: "no such car", carConflict: clash, words };
  }
  const table = markTable(parts);
  const because = (ids: readonly string[]): TellApartAnswer["because"] =>
    uniqueReasons([...new Set(ids)].map((id) => reasonForRecord(catalog, featureOf(id).record)));
  const ruledOut = table.parts.flatMap((row) => ruledOutBy(table, row, observations, featureOf, nameOf));
  const provesNothing = observations
    .filter((it) => possibleParts(table, [it]).length === table.parts.length)
    .map((it) => ({ ...view(it), why: whyNothing(table, it) }));
  const told = { ...base, ruledOut, provesNothing };

  const isKnown = table.parts.some((row) => row.marks.size > 0);
  if (parts.length === 0 || (parts.length > 1 && !isKnown)) {
    const view = parts.map((part) => viewPart(knowledge, part, place, car));
    return { ...told, parts: view, verdict: "nothing on record", words: sayNothing(component, parts) };
  }
  const against = contradiction(table, observations);
  if (against) {
    const smallest = against.smallest.map(view);
    const conflict = {
      smallest,
      without: against.without.map((it) => ({ ...view(it.observation), leaves: [...it.leaves] })),
    };
    const words = sayContradiction(smallest, conflict.without);
    return { ...told, verdict: "contradiction", because: because(smallest.map((it) => it.feature)), conflict, words };
  }

  const left = possibleParts(table, observations);
  const leftTable: MarkTable = { marks: table.marks, parts: left };
  const possible = left.map((row) => viewPart(knowledge, byNumber.get(row.number) as Part, place, car));
  const likely = possible.filter((it) => it.builtHere !== "no" || it.mayStandIn).map((it) => it.number);
  const looks = likelyFirst(leftTable, likely, new Set(seen.keys())).map((look) => viewLook(featureOf, look));
  const [next, ...further] = looks;
  const blocked = nextMarks(leftTable).filter(({ mark }) => isBlocked(mark, seen.get(mark.id)));
  const alike = alikeGroups(leftTable).map((group) => ({ parts: group, words: sayAlike(byNumber, group) }));
  const isOpen = next !== undefined || blocked.length > 0 || alike.every((it) => it.parts.length < left.length);
  const used = observations
    .filter((it) => table.parts.some((row) => isRuledOutBy(table, row, it)))
    .map((it) => it.mark);
  // Nothing that was seen is on record for the one that is left: that the others are not it does not make it this one.
  const byElimination = used.length > 0 && used.every((id) => left.every((row) => !row.marks.has(id)));
  const verdict =
    left.length === 1
      ? byElimination
        ? "still open"
        : "one part"
      : isOpen
        ? "still open"
        : ("cannot be told apart" as const);
  const confirm = left.length === 1 ? confirmation(table, left[0] as Row, observations) : undefined;
  const secondTest = confirm?.look && viewLook(featureOf, confirm.look);
  const answer = {
    ...told,
    verdict,
    because: because([...used, ...(next ? [next.feature] : []), ...(secondTest ? [secondTest.feature] : [])]),
    parts: possible,
    ...(next ? { next } : {}),
    further,
    same: sameOn(leftTable, featureOf),
    alike,
    ...(secondTest ? { secondTest } : {}),
  } satisfies Omit<TellApartAnswer, "words">;
  const hidden = blocked.map(({ mark }) => featureOf(mark.id).name);
  const how = { among: parts.length, onPaint: confirm !== undefined, byElimination, hidden };
  return { ...answer, words: sayTellApart(answer, how) };
}

function hasFacts(car: CarInput | undefined): car is CarInput {
  return car !== undefined && Object.values(car).some((it) => it !== undefined && Object.keys(it).length > 0);
}

function readObservations(
  features: readonly Feature[],
  parts: readonly Part[],
  given: TellApartQuestion["seen"],
): Observation[] {
  const texts = typeof given === "string" ? given.split(";") : given;
  const pairs: (readonly [string, string | number])[] = Array.isArray(texts)
    ? texts.filter((text) => text.trim() !== "").map(pairIn)
    : Object.entries((texts ?? {}) as Readonly<Record<string, string | number>>);
  const read = pairs.map(([typed, value]): Observation => {
    const feature = findFeature(features, typed);
    return { mark: feature.id, seen: readSeen(feature, parts, value) };
  });
  const twice = read.find((it, i) => read.findIndex((other) => other.mark === it.mark) !== i);
  if (twice) throw new QuestionError(`The mark '${twice.mark}' is given twice.`);
  return read;
}

function pairIn(text: string): [string, string] {
  const at = text.indexOf("=");
  if (at < 1)
    throw new QuestionError(`'${text.trim()}' says nothing of a mark. Write mark=what is seen, such as "grooves=2".`);
  return [text.slice(0, at).trim(), text.slice(at + 1).trim()];
}

function isRuledOutBy({ marks }: MarkTable, row: Row, { mark: id, seen }: Observation): boolean {
  return rulesOut(marks.find((mark) => mark.id === id) as Mark, row.marks.get(id), seen);
}

function ruledOutBy(
  table: MarkTable,
  row: Row,
  observations: readonly Observation[],
  featureOf: (id: string) => Feature,
  nameOf: (number: string) => string,
): TellApartAnswer["ruledOut"] {
  const by = observations.filter((it) => isRuledOutBy(table, row, it));
  if (by.length === 0) return [];
  const why = by.map(({ mark, seen }) => {
    const feature = featureOf(mark);
    return `${feature.name}: on record ${sayValue(feature, row.marks.get(mark))}, seen ${saySeen(feature, seen)}`;
  });
  return [{ number: row.number, name: nameOf(row.number), by: by.map((it) => it.mark), why: `${why.join("; ")}.` }];
}

function whyNothing({ marks, parts }: MarkTable, { mark: id, seen }: Observation): string {
  const mark = marks.find((it) => it.id === id) as Mark;
  if (seen.is === "not seen") return "It could not be seen.";
  if (mark.wearsOff && isAbsent(mark, seen)) return "It wears off, so that it is missing proves nothing.";
  return parts.every((row) => row.marks.has(id))
    ? "It fits all of these parts."
    : "It fits all of these parts of which it is on record.";
}

function viewPart(
  knowledge: CarKnowledge,
  { number, name }: Part,
  place: string | undefined,
  car: KnownCar | undefined,
): TellApartAnswer["parts"][number] {
  // Of no car nothing is said: that is not the same as that no record says it.
  if (!car) return { number, name, mayStandIn: false, refused: [], elsewhere: [] };
  const { refusals, elsewhere, ...here } = onThisCar(knowledge, { part: number, place, cars: car.cars });
  const refused = refusals.map(viewRefusal);
  return { number, name, ...here, refused, elsewhere: [...elsewhere] };
}

/** The marks that tell apart the likely parts first, then the others. What each leaves is counted over all. */
function likelyFirst(table: MarkTable, likely: readonly string[], done: ReadonlySet<string>): Look[] {
  const looks = nextMarks(table, done);
  const some = table.parts.filter((row) => likely.includes(row.number));
  const first = nextMarks({ ...table, parts: some }, done).map(({ mark }) => mark.id);
  const rank = ({ mark }: Look): number => (first.includes(mark.id) ? first.indexOf(mark.id) : first.length);
  return looks.sort((a, b) => rank(a) - rank(b));
}

function viewLook(featureOf: (id: string) => Feature, { mark, gain, outcomes }: Look): LookView {
  const feature = featureOf(mark.id);
  const { name, made, where, effort, unit, note } = feature;
  const most = Math.max(...outcomes.map((it) => it.leaves.length));
  const isAll = (it: Outcome): boolean => mark.wearsOff && isAbsent(mark, it.seen) && it.leaves.length === most;
  return {
    feature: mark.id,
    name,
    made,
    where,
    effort,
    ...(unit === undefined ? {} : { unit }),
    ...(note === undefined ? {} : { how: note }),
    wearsOff: mark.wearsOff,
    gain: Math.round(gain * 1e6) / 1e6,
    options: outcomes.map((it) => ({
      value: saySeen(feature, it.seen),
      words: sayOutcome(feature, mark, it.seen),
      leaves: [...it.leaves],
      provesNothing: isAll(it),
    })),
  };
}

/** Looked for without finding anything out: it could not be seen, or paint was not there. */
function isBlocked(mark: Mark, observation: Observation | undefined): boolean {
  if (!observation) return false;
  return observation.seen.is === "not seen" || (mark.wearsOff && isAbsent(mark, observation.seen));
}

/** Whether a part rests on paint or print alone, and the durable mark that confirms it, if there is one. */
function confirmation(
  table: MarkTable,
  part: Row,
  observations: readonly Observation[],
): { look: Look | undefined } | undefined {
  const wears = new Set(table.marks.filter((mark) => mark.wearsOff).map((mark) => mark.id));
  const durable = observations.filter((it) => !wears.has(it.mark));
  const left = possibleParts(table, durable);
  if (left.length < 2) return undefined;
  const done = new Set([...durable.map((it) => it.mark), ...wears]);
  // Only a mark that is on record for the part itself can confirm it.
  const look = nextMarks({ ...table, parts: left }, done).find(({ mark }) => part.marks.has(mark.id));
  return { look };
}

function sameOn({ marks, parts }: MarkTable, featureOf: (id: string) => Feature): TellApartAnswer["same"] {
  const [first, ...others] = parts;
  if (!first || others.length === 0) return [];
  const isSame = (mark: Mark): boolean => others.every((other) => compareMarks([mark], first, other).same.length === 1);
  return marks.filter(isSame).map(({ id }) => {
    const feature = featureOf(id);
    return { feature: id, name: feature.name, value: sayValue(feature, first.marks.get(id)) };
  });
}
