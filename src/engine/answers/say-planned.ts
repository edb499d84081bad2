/** One sentence for an answer that a question in words brought up, and the car's own words for what it rests on. */
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
import type { CarKnowledge } from "./car-knowledge.ts";
import type { Planned } from "./plan-answers.ts";
import { QuestionError } from "./question-error.ts";

export interface Given {
  readonly asked: Planned;
  /** The answer in a sentence. */
  readonly says: string;
  readonly verdict: string;
  readonly because: readonly Reason[];
  /** The whole answer, as the question by itself gives it. */
  readonly answer: object;
}

/** Asks what was planned. What cannot be asked of this car is left out: the records still stand. */
export function askPlanned(knowledge: CarKnowledge, planned: readonly Planned[]): Given[] {
  return planned.flatMap((asked): Given[] => {
    try {
      const given = answerOne(knowledge, asked);
      const place = planned.length > 1 && "place" in asked && asked.place !== undefined ? `${capital(asked.place)}: ` : "";
      return [{ asked, ...given, says: `${place}${given.says}` }];
    } catch (error) {
      if (error instanceof QuestionError) return [];
      throw error;
    }
  });
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function answerOne(knowledge: CarKnowledge, asked: Planned): Omit<Given, "asked"> {
  switch (asked.question) {
    case "may-fit":
      return spoken(answerMayFit(knowledge, asked));
    case "current":
      return spoken(answerCurrent(knowledge, asked));
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

/** Of the schedule only what the question is about, where it names something. */
function sayDue(knowledge: CarKnowledge, asked: Extract<Planned, { question: "schedule" }>): Omit<Given, "asked"> {
  const { about, names = [], ...question } = asked;
  const whole = answerSchedule(knowledge, question);
  const named = whole.items.filter(({ name }) => names.includes(name));
  const own = named.length > 0 ? named : whole.items.filter(({ component = "" }) => about.includes(component));
  const answer = own.length > 0 ? { ...whole, items: own, because: own.flatMap((it) => it.because) } : whole;
  const items = own.map(({ name, due }) => `${name}: ${due.map((it) => it.said).join(" or ") || "not on record"}`);
  return { ...said(answer), says: items.length > 0 ? `${items.join("; ")}.` : whole.words };
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
  const answer = {
    ...whole,
    changes,
    notOnRecord: whole.notOnRecord.filter((it) => isAbout(it.records, it.systems)),
    because: whole.because.filter(({ record }) => isAbout([record], records.get(record)?.systems ?? [])),
  };
  return { ...said(answer), says: sayCount(answer) };
}

function sayCount({ verdict, from, to, changes }: ReturnType<typeof answerNetChange>): string {
  if (verdict === "no such car" || verdict === "no such car in that year") return "No such car was built.";
  if (changes.length === 0)
    return `No change is on record between ${from} and ${to}. That is not the same as no change.`;
  const sure = changes.filter((it) => it.verdict === "changed").map(({ name }) => name);
  const count = changes.length === 1 ? "one change is" : `${changes.length} changes are`;
  const named = sure.length > 0 && sure.length <= 6 ? `: ${sure.join("; ")}` : "";
  return `Between ${from} and ${to} ${count} on record${named}.`;
}
