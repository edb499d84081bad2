/** What "ask" found, as its answer shows it. */

import { cardAddress } from "../ask/card.ts";
import { carsSaid, isOfCar } from "../ask/cars-said.ts";
import type { Found } from "../ask/find-records.ts";
import type { Ranked } from "../ask/rank.ts";
import type { Chip, Reading } from "../ask/read-question.ts";
import type { Vocabulary } from "../ask/vocabulary-shape.ts";
import { address, NODE_KINDS, type NodeKind } from "../graph/node.ts";
import { list } from "../scope/describe.ts";
import { uniqueReasons } from "./say.ts";
import type { Given } from "./say-planned.ts";
import type { AskAnswer } from "./shapes/ask.ts";

export interface AskedAndFound {
  readonly reading: Reading;
  readonly answers: readonly Given[];
  /** Two cars are spoken of, and it is not clear which of them is the one at hand. */
  readonly unclear: boolean;
  /** The records, with those first that an answer rests on. */
  readonly found: (carriedBy?: readonly string[]) => Found;
}

export function viewAsked(
  vocabulary: Vocabulary,
  { reading, answers, unclear, found: find }: AskedAndFound,
): AskAnswer {
  const carriedBy = carriers(answers);
  const found = find(carriedBy);
  const fitting = found.records.filter(({ card, misses }) => card.kind === "record" && misses.length === 0);
  const because = answers.flatMap((it) => it.because);
  const isAnswered = because.length > 0 || (found.onRecord && answers.length > 0);
  const isOnRecord = found.onRecord && reading.beyond.length === 0;
  const verdict = isAnswered ? "answered" : isOnRecord ? "records" : "nothing on record";
  const lines = linesToAsk(vocabulary, reading, answers);
  const recordsFirst = fitting.slice(0, 5).map(({ card }) => ({
    record: card.id,
    statement: "record",
    text: card.title,
    address: address("record", card.id),
  }));
  return {
    question: "ask",
    verdict,
    because: uniqueReasons(because.length > 0 ? because : verdict === "records" ? recordsFirst : []),
    ...(unclear ? { ask: { what: WHICH_CAR, options: carsNamed(reading) } } : {}),
    ...(lines.length > 1 ? { ask: { what: "Which model line is it?", options: lines } } : {}),
    reading: {
      chips: reading.chips.map(chipView),
      asked: reading.asked.map((it) => ({ ...it })),
      rest: reading.rest,
      beyond: [...reading.beyond],
      noNumbers: reading.noNumbers.map((it) => ({ ...it })),
      figures: [...reading.figures],
      corrected: reading.corrected.map(({ said, readAs }) => ({ said, readAs: [...readAs] })),
      unread: [...new Set(carsSaid(reading).unread)],
      unknown: [...found.unknown],
    },
    answers: answers.map(({ asked: question, because: carried, answer, ...rest }) => ({
      asked: { ...question },
      ...rest,
      because: [...carried],
      answer: { ...answer },
    })),
    things: thingsOf(reading.chips),
    records: found.records.filter(isRecord).map((ranked) => recordView(ranked, carriedBy)),
    bulletins: found.records
      .filter((it) => !isRecord(it))
      .map(({ card }) => ({ id: card.id, title: card.title, address: cardAddress(card), about: card.starts })),
    facets: {
      system: [...found.facets.system],
      line: [...found.facets.line],
      year: [...found.facets.year],
      kind: [...found.facets.kind],
    },
    nearest: verdict === "nothing on record" ? nearestOf(found) : [],
    words: wordsOf(verdict, reading, found, answers),
  };
}

/** What changed is answered for the cars of one line; which one is asked where the question does not say. */
function linesToAsk({ names }: Vocabulary, reading: Reading, answers: readonly Given[]): string[] {
  const isOfChange = reading.asked.some(({ asked }) => asked === "changed");
  const has = (kind: string): boolean => reading.chips.some((chip) => chip.kind === kind);
  const isOpen = isOfChange && answers.length === 0 && has("year") && !has("line");
  return isOpen ? names.filter(({ kind }) => kind === "line").map(({ label }) => label) : [];
}

/** The records that answers rest on, in the order of the argument. A list of changes or ways is no argument: its records are ranked as all others. */
export function carriers(answers: readonly Given[]): string[] {
  const arguing = answers.filter(({ asked: { question } }) => question !== "net-change" && question !== "retrofits");
  return [...new Set(arguing.flatMap(({ because }) => because.map(({ record }) => record)))];
}

const WHICH_CAR =
  "The question speaks of two cars. Which of them is the one at hand, and which does the part come from?";

function carsNamed({ chips }: Reading): string[] {
  return chips.filter(isOfCar).map(({ label }) => label);
}

function chipView({ ids, options, ...chip }: Chip): AskAnswer["reading"]["chips"][number] {
  return { ...chip, ids: [...ids], ...(options ? { options: options.map((it) => ({ ...it })) } : {}) };
}

function recordView({ card, points, why, misses }: Ranked, carriedBy: readonly string[]): AskAnswer["records"][number] {
  return {
    id: card.id,
    title: card.title,
    address: address("record", card.id),
    trap: card.trap,
    starts: card.starts,
    systems: [...card.systems],
    why: [...new Set(why)],
    carries: carriedBy.includes(card.id),
    misses: [...misses],
    points: Math.round(points * 10) / 10,
  };
}

/** The pages of what the question names, where these are few. */
export function thingsOf(chips: readonly Chip[]): AskAnswer["things"] {
  return chips
    .filter(({ kind, ids }) => (NODE_KINDS as readonly string[]).includes(kind) && ids.length <= 4)
    .flatMap(({ kind, ids, label, options }) =>
      ids.map((id) => ({
        kind,
        id,
        label: options?.find((option) => option.id === id)?.label ?? (kind === "year" ? id : label),
        address: address(kind as NodeKind, id),
      })),
    );
}

function isRecord({ card }: Ranked): boolean {
  return card.kind === "record";
}

function nearestOf({ records }: Found): string[] {
  return records
    .filter(isRecord)
    .slice(0, 3)
    .map(({ card }) => `${card.id} ${card.title}`);
}

function wordsOf(
  verdict: AskAnswer["verdict"],
  reading: Reading,
  { unknown, records }: Found,
  answers: readonly Given[],
): string {
  const about = list(
    reading.chips.map(({ label }) => label),
    "and",
  );
  const noNumber = reading.noNumbers
    .map(
      ({ said, near }) =>
        `No part or record is called '${said}'.${near === undefined ? "" : ` The nearest is ${near}.`} `,
    )
    .join("");
  if (reading.beyond.length > 0)
    return `The records do not cover ${list(reading.beyond, "or")}. Nothing is on record about such a car, and silence is not permission.`;
  if (verdict === "nothing on record") {
    const what =
      unknown.length > 0
        ? list(
            unknown.map((word) => `'${word}'`),
            "or",
          )
        : about === ""
          ? "this"
          : about;
    const near = records.length > 0 ? " What comes nearest is listed below; it is no answer." : "";
    return `${noNumber}Nothing is on record about ${what}. Silence is not permission, and not "no change".${near}`;
  }
  const lacking =
    unknown.length > 0
      ? ` No record has the word ${list(
          unknown.map((word) => `'${word}'`),
          "or",
        )}.`
      : "";
  if (verdict === "answered") return noNumber + answers.map(({ says }) => says).join(" ") + lacking;
  const count = records.filter(isRecord).filter(({ misses }) => misses.length === 0).length;
  return `${noNumber}${count === 1 ? "One record" : `${count} records`}${about === "" ? "" : ` for ${about}`}.${lacking}`;
}
