/** What was typed into one field of a sum, as the number that the formula wants, or why it cannot be taken. */
import { nearest } from "../../scope/nearest.ts";
import { convertTo } from "../convert.ts";
import { findUnits } from "../find-unit.ts";
import { type Choice as Asked, readQuantity } from "../read-quantity.ts";
import type { Unit } from "../unit-table.ts";
import { windowEnds } from "../window-ends.ts";
import { num } from "./num.ts";
import type { SumInput, Values } from "./sum.ts";

export interface Choice {
  readonly words: string;
  readonly typed: string;
}

export type ReadInput =
  | {
      readonly as: "values";
      readonly values: Values;
      /** The unit in which it was typed; none for plain numbers. */
      readonly unit?: Unit;
    }
  | { readonly as: "refused"; readonly why: string; readonly choices?: readonly Choice[] };

interface One {
  readonly as: "value";
  readonly value: number;
  readonly unit?: Unit;
}
type Refused = Extract<ReadInput, { as: "refused" }>;

const MOST_CHARACTERS = 60;

/**
 * A word from a list, a plain number, a quantity, or a window of quantities, as the input says. Whatever it is, it must lie within
 * the limits of the input, and be whole where only whole ones exist.
 */
export function readInput(input: SumInput, typed: string): ReadInput {
  const text = typed.trim();
  if (text.length > MOST_CHARACTERS) return refused(`it is longer than ${MOST_CHARACTERS} characters`);
  if (input.choices) return readChoice(input, input.choices, text);
  const ends = input.window ? windowEnds(text) : undefined;
  if (ends && (ends.from === "" || ends.to === ""))
    return refused(`'${text}' has one limit only; two are needed, such as 0.002..0.006 ${input.unit}`);
  const [from, to] = ends ? withOneUnit(ends.from, ends.to) : [text, text];
  const [low, high] = [readOne(input, from), readOne(input, to)];
  if (high.as === "refused") return ends ? wholeWindow(input, high, (typed) => `${ends.from}..${typed}`) : high;
  if (low.as === "refused") return ends ? wholeWindow(input, low, (typed) => `${typed}..${ends.to}`) : low;
  if (low.value > high.value) return refused(`'${text}' begins above its end`);
  const unit = high.unit === undefined ? {} : { unit: high.unit };
  const values = input.window
    ? { [`${input.id}Low`]: low.value, [`${input.id}High`]: high.value }
    : { [input.id]: low.value };
  return { as: "values", values, ...unit };
}

function refused(why: string, choices?: readonly Choice[]): Refused {
  return choices ? { as: "refused", why, choices } : { as: "refused", why };
}

/** What may be meant by one limit, as the whole window: choosing must not lose the other limit. */
function wholeWindow(input: SumInput, asked: Refused, whole: (typed: string) => string): Refused {
  const choices = (asked.choices ?? [])
    .map(({ typed }) => whole(typed))
    .filter((typed) => readInput(input, typed).as === "values")
    .map((typed) => ({ words: typed, typed }));
  return choices.length > 0 ? refused(asked.why, choices) : refused(asked.why);
}

function readChoice(input: SumInput, choices: readonly string[], text: string): ReadInput {
  const wanted = text.toLowerCase();
  const index = choices.findIndex((choice) => choice.toLowerCase() === wanted);
  if (index >= 0) return { as: "values", values: { [input.id]: index } };
  const meant = nearest(wanted, choices);
  return refused(
    `'${text}' is not one of ${choices.join(", ")}${meant ? `; did you mean '${meant}'?` : ""}`,
    choices.map((choice) => ({ words: choice, typed: choice })),
  );
}

/** "0.186..0.188 in": the unit of the second limit is that of the first, where the first has none. */
function withOneUnit(from: string, to: string): [string, string] {
  const unit = to.replace(/^[-+\d./\s]+/, "");
  return /^[-+\d./\s]+$/.test(from) && unit !== "" ? [`${from} ${unit}`, to] : [from, to];
}

function readOne(input: SumInput, text: string): One | Refused {
  const read = input.counted ? readNumber(input, input.counted, text) : readLength(input, text);
  if (read.as === "refused") return read;
  return outsideOf(input, read.value) ?? read;
}

/** "20", "1,250", "3.08", "1/2", "1 1/2", "41/12", "3.08:1", with the words of the input behind it or not. */
function readNumber(input: SumInput, words: readonly string[], text: string): One | Refused {
  const bare = [...words, ":1", ": 1", "to 1"]
    .sort((a, b) => b.length - a.length)
    .reduce(
      (left, word) => (left.toLowerCase().endsWith(word) ? left.slice(0, -word.length).trim() : left),
      text.toLowerCase(),
    );
  const expected = `a number${input.unit === "" ? "" : ` of ${input.unit}`}, such as 20 or 1/2`;
  const match = /^([-+]?)(?:(\d{1,3}(?:,\d{3})+|\d+)?(\.\d+)?|(?:(\d+)[\s-]+)?(\d+)\s*\/\s*(\d+))$/.exec(bare);
  if (bare === "" || !match) return refused(`'${text}' is not ${expected}`);
  const [, sign, whole, part, ones, over, under] = match;
  if (over !== undefined && Number(under) === 0) return refused(`'${text}' divides by zero`);
  const size =
    over === undefined
      ? Number(`${(whole ?? "0").replaceAll(",", "")}${part ?? ""}`)
      : Number(ones ?? 0) + Number(over) / Number(under);
  return { as: "value", value: sign === "-" ? -size : size };
}

function readLength(input: SumInput, text: string): One | Refused {
  const expected = unitCalled(input.unit);
  // Nothing is nothing in every unit, and no drill.
  if (/^-?0+(\.0*)?$/.test(text)) return { as: "value", value: 0, unit: expected };
  // The field says its unit, so a bare number is in that; where a drill is asked for it is a drill's.
  const isBare = /^\d+$/.test(text);
  const typed = isBare ? (input.drill ? `No. ${text} drill` : `${text} ${input.unit}`) : text;
  const read = askedOf(typed, expected) ?? readQuantity(typed, expected);
  if (read.as === "refused") return refused(read.why.replace(/\.$/, ""));
  if (read.as === "choice") return refused(read.ask.replace(/[.:]$/, ""), read.choices);
  if (read.openLow || read.openHigh || !read.low.equals(read.high))
    return refused(`'${text}' is a window; one value is needed here`);
  return { as: "value", value: convertTo(read.low, read.unit, expected).valueOf(), unit: read.unit };
}

/** A word that means several units of the right dimension: a sum is not a place to guess by the unit that it counts in. */
function askedOf(typed: string, expected: Unit): Asked | undefined {
  const read = readQuantity(typed);
  if (read.as !== "choice") return undefined;
  const choices = read.choices.filter((choice) => {
    const meant = readQuantity(choice.typed);
    return meant.as === "quantity" && meant.unit.dimension === expected.dimension;
  });
  return choices.length > 1 ? { ...read, choices } : undefined;
}

/** The unit of an id, which is the first of its spellings. */
export function unitCalled(id: string): Unit {
  const unit = findUnits(id).find((it) => it.id === id);
  if (!unit) throw new RangeError(`no unit is called '${id}'`);
  return unit;
}

function outsideOf(input: SumInput, value: number): Refused | undefined {
  const unit = input.unit === "" ? "" : ` ${input.unit}`;
  const say = (limit: string): Refused => refused(`it must be ${limit}${unit}; ${num(value)}${unit} is not`);
  if (!Number.isFinite(value)) return refused("the number is too large");
  if (input.above !== undefined && value <= input.above) return say(`above ${input.above}`);
  if (input.atLeast !== undefined && value < input.atLeast) return say(`at least ${input.atLeast}`);
  if (input.atMost !== undefined && value > input.atMost) return say(`at most ${input.atMost}`);
  if (input.whole && !Number.isInteger(value)) return refused(`it must be a whole number; ${num(value)} is not`);
  return undefined;
}
