/**
 * What somebody saw of a mark, as the records would write it.
 *
 *   A mark is named by its id, its name, or a beginning of either that only one has.
 *   "Can't see" and the like is an answer too, and so are "none" and "something else".
 *   A measure is a quantity, perhaps with the tool's error: "0.181 in +/- 0.001".
 *   A value is one on record: written so; as a word for the number or the number for the word; a beginning that only one has; or
 *   words that hold it, or that it holds, and no other. With "not" or "no" in it only what says "not" or "no" as well is meant.
 *   Whatever is not understood is refused, with the values on record.
 */

import type Fraction from "fraction.js";
import { markOf, statedValue } from "../lookalikes/mark-table.ts";
import type { Seen } from "../lookalikes/possible-parts.ts";
import type { Feature, Part } from "../records/catalog.ts";
import { nearest } from "../scope/nearest.ts";
import { convertTo } from "../settings/convert.ts";
import { readQuantity } from "../settings/read-quantity.ts";
import { unitNamed } from "../settings/unit-named.ts";
import { QuestionError } from "./question-error.ts";

const MOST_CHARACTERS = 200;
const NUMBERS = ["0", ..."one two three four five six seven eight nine ten eleven twelve".split(" ")];
const NOT_SEEN =
  /^(?:\?|-|(?:i )?(?:can ?no?t|can'?t|could ?n[o']t) (?:see|tell|read|look)(?: it)?|hidden|not seen|do ?n[o']t know|unknown|covered)$/;
const ELSE = /^(?:something else|another|other|none of (?:these|them)|else)$/;
const ABSENT =
  /^(?:none|no|absent|nothing|missing|gone|not there|none seen|nothing seen|nothing there|not present|without|zero)$/;
const THERE = /^(?:yes|present|there|it is there|seen|has (?:it|one))$/;
const NEGATED = /\b(?:no|not|none|without|un\w+ed)\b/;

/** The feature meant. Throws a QuestionError with those that there are. */
export function findFeature(features: readonly Feature[], typed: string): Feature {
  const wanted = typed.trim().toLowerCase();
  const names = (it: Feature): string[] => [it.id.toLowerCase(), it.name.toLowerCase()];
  const exact = features.find((it) => names(it).includes(wanted));
  if (exact) return exact;
  const begun = wanted === "" ? [] : features.filter((it) => names(it).some((name) => name.startsWith(wanted)));
  if (begun.length === 1) return begun[0] as Feature;
  const meant = nearest(wanted, features.flatMap(names));
  const options = (begun.length > 0 ? begun : features).map((it) => `'${it.id}' (${it.name})`).join(", ");
  throw new QuestionError(
    begun.length > 0
      ? `'${typed.trim()}' may be any of these marks: ${options}.`
      : `No mark of these parts is called '${typed.trim()}'. ${meant ? `Did you mean '${meant}'?` : `There are ${options}.`}`,
  );
}

/** Throws a QuestionError that says which values are on record. */
export function readSeen(feature: Feature, parts: readonly Part[], typed: string | number): Seen {
  const text = String(typed).trim();
  const stated = [...new Set(parts.flatMap((part) => part.marks[feature.id] ?? []))];
  const refuse = (why: string): never => {
    const unit = feature.unit === undefined ? "" : ` ${feature.unit}`;
    const values = stated.map((value) => (typeof value === "number" ? `${value}${unit}` : value)).join(", ");
    throw new QuestionError(`${feature.name}: ${why} On record: ${values || "nothing"}.`);
  };
  if (text === "" || text.length > MOST_CHARACTERS) return refuse("what was seen is missing, or far too long.");
  const plain = simplify(text);
  const values = stated.map((value) => statedValue(feature, value)).filter((value) => typeof value === "string");
  const exact = values.find((value) => simplify(value) === plain);
  const absent = markOf(feature).absent;
  if (exact !== undefined) return exact === absent ? { is: "absent" } : { is: "value", value: exact };
  if (NOT_SEEN.test(text.toLowerCase())) return { is: "not seen" };
  if (ELSE.test(plain)) return { is: "something else" };
  if (ABSENT.test(plain) || isNoSuchMark(feature, plain)) return { is: "absent" };
  if (feature.made === "measured") return readMeasure(feature, text, refuse);
  const shown = values.filter((value) => value !== absent);
  if (THERE.test(plain) && shown.length === 1) return { is: "value", value: shown[0] as string };
  const found = feature.made === "counted" ? byCount(values, plain) : byWords(values, plain);
  if (found.length > 1) return refuse(`'${text}' may be ${found.join(" or ")}.`);
  const [value] = found;
  if (value === undefined)
    return refuse(`'${text}' is not one of the values on record; say "something else" if it is none of them.`);
  return value === absent ? { is: "absent" } : { is: "value", value };
}

/** In small letters, numbers as figures, without articles and stops. */
function simplify(text: string): string {
  return text
    .toLowerCase()
    .replaceAll(/["'’,;:!]|\.(?!\d)/g, " ")
    .split(/\s+/)
    .filter((word) => word !== "" && word !== "a" && word !== "an" && word !== "the")
    .map((word) => (NUMBERS.includes(word) ? String(NUMBERS.indexOf(word)) : word))
    .join(" ");
}

/** "No grooves" of the grooves round the base. */
function isNoSuchMark({ name }: Feature, plain: string): boolean {
  const what = /^(?:no|without) (.+)$/.exec(plain)?.[1];
  const known = new Set([...wordsOf(simplify(name)), "mark", "paint", "print", "colour", "color"]);
  return (
    what !== undefined &&
    wordsOf(what).every((word) => known.has(word) || known.has(`${word}s`) || known.has(word.replace(/s$/, "")))
  );
}

function byCount(values: readonly string[], plain: string): string[] {
  const counts = plain.match(/(?<![\w./-])\d+(?![\w./-])/g) ?? [];
  const [count] = counts;
  return counts.length === 1 && !NEGATED.test(plain) ? values.filter((value) => value === count) : [];
}

function byWords(values: readonly string[], plain: string): string[] {
  const plainOf = new Map(values.map((value) => [value, simplify(value)]));
  const alike = values.filter((value) => NEGATED.test(plainOf.get(value) ?? "") === NEGATED.test(plain));
  const matching = (test: (value: string) => boolean): string[] =>
    alike.filter((value) => test(plainOf.get(value) ?? ""));
  const holds = (long: string, short: string): boolean => ` ${long} `.includes(` ${short} `);
  return matching((value) => value.startsWith(plain) || holds(value, plain) || holds(plain, value));
}

function wordsOf(text: string): string[] {
  return text.split(/[\s-]+/).filter(Boolean);
}

function readMeasure(feature: Feature, text: string, refuse: (why: string) => never): Seen {
  const [reading = "", tool, ...more] = text.split(/\s*(?:±|\+\/?-)\s*/);
  if (more.length > 0) return refuse(`'${text}' is no measure with one error.`);
  const measured = quantity(feature, reading, refuse);
  const error = tool === undefined ? undefined : quantity(feature, tool, refuse);
  return { is: "measured", low: measured.low, high: measured.high, ...(error && { error: error.high.abs() }) };
}

/** In the unit of the feature. */
function quantity(feature: Feature, text: string, refuse: (why: string) => never): { low: Fraction; high: Fraction } {
  const unit = unitNamed(feature.unit ?? "");
  // The mark is asked for in its unit: a bare number is in that.
  const isBare = /^\d+$/.test(text.trim()) && feature.unit !== undefined;
  const read = readQuantity(isBare ? `${text} ${feature.unit}` : text, unit);
  switch (read.as) {
    case "quantity":
      return read.unit.id === unit.id
        ? read
        : { low: convertTo(read.low, read.unit, unit), high: convertTo(read.high, read.unit, unit) };
    case "choice":
      return refuse(`${read.ask} ${read.choices.map((it) => `"${it.typed}" (${it.words})`).join(", ")}.`);
    case "refused":
      return refuse(read.why);
  }
}
