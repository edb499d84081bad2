/** One sentence for an answer that a question in words brought up, and the car's own words for what it rests on. */
import { belongsAt } from "../interchange/belongs.ts";
import { list } from "../scope/describe.ts";
import type { Reason } from "./answer.ts";
import { answerApplies } from "./answer-applies.ts";
import { answerCurrent } from "./answer-current.ts";
import { answerMayFit } from "./answer-may-fit.ts";
import { answerNetChange } from "./answer-net-change.ts";
import { answerReading } from "./answer-reading.ts";
import { answerRetrofits } from "./answer-retrofits.ts";
import { answerSchedule } from "./answer-schedule.ts";
import { answerSetting } from "./answer-setting.ts";
import { answerTellApart } from "./answer-tell-apart.ts";
import { readCar } from "./car.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { partIndexOf } from "./part-indexes.ts";
import type { Plan, Planned } from "./plan-answers.ts";
import { QuestionError } from "./question-error.ts";
import { reasonFor } from "./say.ts";
import type { CarInput } from "./shapes/car.ts";

export interface Given {
  readonly asked: Planned;
  /** The answer in a sentence. */
  readonly says: string;
  readonly verdict: string;
  readonly because: readonly Reason[];
  /** The whole answer, as the question by itself gives it. */
  readonly answer: object;
}

/** Verdicts by which somebody fits a part, or leaves a thing as it is. */
export const PERMITS: ReadonlySet<string> = new Set([
  "yes",
  "yes, on conditions",
  "as built",
  "within",
  "on record",
  "by place",
]);

const OPENED = "Not every word was understood, so what was said of the car is left open. ";

/**
 * Asks what was planned. What cannot be asked of this car is left out: the records still stand. What would permit something is asked
 * again of what is certain of the car, and that is the answer.
 */
export function askPlanned(knowledge: CarKnowledge, { planned, sure, lost }: Omit<Plan, "unclear">): Given[] {
  return planned.flatMap((said): Given[] => {
    const place = planned.length > 1 && "place" in said && said.place !== undefined ? `${capital(said.place)}: ` : "";
    try {
      const first = answerOne(knowledge, said);
      const asked = PERMITS.has(first.verdict) ? { ...said, car: { ...sure, fitted: said.car.fitted ?? [] } } : said;
      const given = asked === said ? first : answerOne(knowledge, asked);
      if (lost && PERMITS.has(given.verdict)) return [];
      const isOpened = asked !== said && given.verdict !== first.verdict;
      return [{ asked, ...given, says: `${place}${isOpened ? OPENED : ""}${given.says}` }];
    } catch (error) {
      if (!(error instanceof QuestionError)) throw error;
      return isUnknownHere(knowledge, said) ? [notOnRecord(said, place)] : [];
    }
  });
}

type AskedFit = Extract<Planned, { question: "may-fit" }>;

/** A page has the records of one line; a part that none of them names is on record for no car of it. */
function isUnknownHere({ catalog }: CarKnowledge, asked: Planned): asked is AskedFit {
  return asked.question === "may-fit" && !catalog.parts.has(asked.part);
}

function notOnRecord(asked: AskedFit, place: string): Given {
  const says = `${place}${asked.part} is not on record for this car: no record says that it may be fitted, and so it may not.`;
  return {
    asked,
    says,
    verdict: "not on record",
    because: [],
    answer: { question: "may-fit", verdict: "not on record", words: says },
  };
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function answerOne(knowledge: CarKnowledge, asked: Planned): Omit<Given, "asked"> {
  switch (asked.question) {
    case "may-fit":
      return sayFit(knowledge, asked);
    case "current":
      return sayCurrent(knowledge, asked);
    case "setting":
      return spoken(answerSetting(knowledge, asked));
    case "reading":
      return spoken(answerReading(knowledge, asked));
    case "tell-apart":
      return spoken(answerTellApart(knowledge, { ...asked, parts: asked.parts && [...asked.parts] }));
    case "applies":
      return spoken(answerApplies(knowledge, asked));
    case "schedule":
      return sayDue(knowledge, asked);
    case "retrofits": {
      const answer = answerRetrofits(knowledge, asked);
      return { ...said(answer), says: sayRetrofits(answer) };
    }
    case "net-change":
      return sayChanges(knowledge, asked);
  }
}

interface Spoken {
  readonly verdict: string;
  readonly because: readonly Reason[];
}

function said(answer: Spoken): Omit<Given, "asked" | "says"> {
  return { verdict: answer.verdict, because: answer.because, answer };
}

function spoken(answer: Spoken & { readonly words: string }): Omit<Given, "asked"> {
  return { ...said(answer), says: answer.words };
}

/** What must go along is named with the permission; where it is to be left out, there is none. */
function sayFit(knowledge: CarKnowledge, asked: Extract<Planned, { question: "may-fit" }>): Omit<Given, "asked"> {
  const { leftOut = [], ...question } = asked;
  const answer = answerMayFit(knowledge, question);
  const given = spoken(answer);
  const ways = answer.places.flatMap(({ fits }) => fits.flatMap((fit) => fit.ways));
  const along = (way: (typeof ways)[number]): string[] => way.companions.map(({ part }) => part);
  const isLeftOut =
    leftOut.length > 0 && ways.length > 0 && ways.every((way) => along(way).some((part) => leftOut.includes(part)));
  if (isLeftOut)
    return {
      ...given,
      verdict: "not on record",
      says: `${asked.part} may be fitted only together with ${list([...new Set(ways.flatMap(along))], "and")}. Without it no record permits it.`,
    };
  const [best] = ways;
  if (answer.verdict !== "yes, on conditions" || !best) return given;
  const needed = [...new Set(along(best))];
  return { ...given, says: needed.length > 0 ? `${answer.words} Together with ${list(needed, "and")}.` : answer.words };
}

/** A number that no delivery rule names stands on the record that first names it. */
function sayCurrent(knowledge: CarKnowledge, asked: Extract<Planned, { question: "current" }>): Omit<Given, "asked"> {
  const given = spoken(answerCurrent(knowledge, asked));
  if (asked.place !== undefined && given.verdict !== "no such car" && !hasPart(knowledge, asked.place, asked.car))
    return {
      ...given,
      verdict: "look first",
      says: `Not every such car is on record with one. Where it has one: ${given.says}`,
    };
  if (given.because.length > 0 || asked.part === undefined) return given;
  const [first] = knowledge.statementsByPart.get(asked.part) ?? [];
  return first ? { ...given, because: [reasonFor(knowledge.catalog, first)] } : given;
}

/** Every car that this can be was built with a part there. */
function hasPart(knowledge: CarKnowledge, place: string, car: CarInput): boolean {
  const { cars } = readCar(knowledge, car);
  return belongsAt(partIndexOf(knowledge.catalog), place, cars).every(({ belonging }) => belonging.what === "part");
}

/** Of the schedule only what the question is about, where it names something. */
function sayDue(knowledge: CarKnowledge, asked: Extract<Planned, { question: "schedule" }>): Omit<Given, "asked"> {
  const { about, names = [], ...question } = asked;
  const whole = answerSchedule(knowledge, question);
  const named = whole.items.filter(({ name }) => names.includes(name));
  const own = named.length > 0 ? named : whole.items.filter(({ component = "" }) => about.includes(component));
  if (own.length === 0 || whole.verdict === "no such car") return { ...said(whole), says: whole.words };
  const isOpen = own.some(({ verdict }) => verdict === "look first");
  const verdict = isOpen
    ? "look first"
    : own.every((it) => it.verdict === "not on record")
      ? "not on record"
      : "schedule";
  const ask = own.find((it) => it.ask !== undefined)?.ask;
  const { ask: _, ...rest } = whole;
  const answer = { ...rest, verdict, items: own, because: own.flatMap((it) => it.because), ...(ask ? { ask } : {}) };
  const items = own.map(({ name, due }) => `${name}: ${due.map((it) => it.said).join(" or ") || "not on record"}`);
  return { ...said(answer), says: `${items.join("; ")}.` };
}

function sayRetrofits({ verdict, paths, blocked }: ReturnType<typeof answerRetrofits>): string {
  if (verdict === "no such car") return "No such car was built, or it is no longer as built.";
  const certain = paths.filter((it) => it.certain);
  if (verdict === "not on record") return "No record says that anything may be fitted here. Silence is not permission.";
  if (paths.length === 0)
    return `Nothing may be fitted here: ${blocked.length === 1 ? "one way is" : `${blocked.length} ways are`} closed.`;
  const numbers = (some: typeof paths, word: "and" | "or"): string =>
    list([...new Set(some.map((it) => it.part))], word);
  if (certain.length === 0) return `${numbers(paths, "or")} may go on some cars like this one only: look first.`;
  const plain = certain.filter((it) => it.verdict === "yes");
  const others = certain.filter((it) => it.verdict !== "yes");
  return [
    ...(plain.length > 0 ? [`${numbers(plain, "and")} may be fitted.`] : []),
    ...(others.length > 0 ? [`${numbers(others, "and")} may be fitted on conditions only.`] : []),
  ].join(" ");
}

/** Of the changes only those of the systems and components that the question names. */
function sayChanges(
  knowledge: CarKnowledge,
  asked: Extract<Planned, { question: "net-change" }>,
): Omit<Given, "asked"> {
  const { about, ...question } = asked;
  const whole = answerNetChange(knowledge, question);
  const { records } = knowledge.catalog;
  const isAbout = (ids: readonly string[], systems: readonly string[]): boolean =>
    about.length === 0 ||
    systems.some((id) => about.includes(id)) ||
    ids.some((id) => records.get(id)?.components.some((component) => about.includes(component.id)));
  const changes = whole.changes.filter((it) => isAbout(it.records, it.systems));
  const leftAlone = whole.leftAlone.filter(({ record }) => isAbout([record], records.get(record)?.systems ?? []));
  const isNone = whole.verdict === "no such car" || whole.verdict === "no such car in that year";
  const isOpen = changes.some((it) => it.verdict === "look first");
  const { ask: _, ...rest } = whole;
  // What to look at for these changes, not for some other of the car.
  const ask = changes.find((it) => it.verdict === "look first" && it.ask !== undefined)?.ask;
  const answer = {
    ...rest,
    verdict: isNone ? whole.verdict : isOpen ? "look first" : changes.length > 0 ? "changed" : "no change on record",
    changes,
    leftAlone,
    notOnRecord: whole.notOnRecord.filter((it) => isAbout(it.records, it.systems)),
    because: whole.because.filter(({ record }) => isAbout([record], records.get(record)?.systems ?? [])),
    ...(ask && isOpen ? { ask } : {}),
  };
  return { ...said(answer), says: sayCount(answer) };
}

type Counted = Pick<ReturnType<typeof answerNetChange>, "from" | "to" | "changes" | "leftAlone"> & {
  readonly verdict: string;
};

function sayCount({ verdict, from, to, changes, leftAlone }: Counted): string {
  if (verdict === "no such car" || verdict === "no such car in that year") return "No such car was built.";
  const [first, ...further] = leftAlone.map(({ what }) => what);
  const more = further.length > 0 ? ` (and ${further.length} more)` : "";
  const alone = first === undefined ? "" : ` Left alone on purpose: ${first}${more}`;
  if (changes.length === 0)
    return `No change is on record between ${from} and ${to}.${alone === "" ? " That is not the same as no change." : alone}`;
  const sure = changes.filter((it) => it.verdict === "changed").map(({ name }) => name);
  const open = changes.length - sure.length;
  const count = changes.length === 1 ? "one change is" : `${changes.length} changes are`;
  const named = sure.length > 0 && sure.length <= 6 ? `: ${sure.join("; ")}` : "";
  const others = open > 0 && named !== "" ? `; and ${open} more that depend${open === 1 ? "s" : ""} on the car` : "";
  return `Between ${from} and ${to} ${count} on record${named}${others}.${alone}`;
}
