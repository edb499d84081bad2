/** What a person typed as a quantity, exactly; or what to ask him; or why it can't be taken. */
import Fraction from "fraction.js";
import { nearest } from "../scope/nearest.ts";
import { convertTo } from "./convert.ts";
import { drillCalled } from "./drills.ts";
import { clearWord, findUnits } from "./find-unit.ts";
import { readDrill, readGoesNotGoes, withoutDrill } from "./read-gauge.ts";
import { readNumber } from "./read-number.ts";
import { sayNumber, sayQuantity } from "./say-quantity.ts";
import { unitNamed } from "./unit-named.ts";
import { UNITS, type Unit } from "./unit-table.ts";
import { windowEnds } from "./window-ends.ts";

export interface Quantity {
  readonly as: "quantity";
  /** Equal to `high`, unless two gauges only gave a window. */
  readonly low: Fraction;
  readonly high: Fraction;
  /** The limit itself does not belong to it. */
  readonly openLow: boolean;
  readonly openHigh: boolean;
  readonly unit: Unit;
  /** As it was typed, without loose spaces. */
  readonly written: string;
}

export interface Choice {
  readonly as: "choice";
  readonly ask: string;
  /** `typed` reads back as one quantity. */
  readonly choices: readonly { readonly words: string; readonly typed: string }[];
}

export interface Refused {
  readonly as: "refused";
  readonly why: string;
}

export type ReadQuantity = Quantity | Choice | Refused;

const MOST_CHARACTERS = 60;
const INCH = unitNamed("in");
const DEGREE = unitNamed("deg");
const BEFORE_TOP = unitNamed("deg BTDC");

/**
 *   Two gauges, one that goes in and one that does not: a window, at least the first and below the second.
 *   A drill by number or letter: its size in inches.
 *   A number with a unit: that; where the word fits several units, the expected one, or the one of the expected dimension, else ask. A US
 *     measure and an imperial one have the same name and no expectation tells them apart: ask.
 *   A number alone: in the unit that is expected. Where inches are, a whole number may be a drill or thousandths: ask. A fraction
 *     is of an inch, or ask. A letter alone is a drill, where a length is expected.
 *   Feet and inches: together, in inches.
 *   A window of limits: refused, one value is read here. A temperature below absolute zero: refused.
 *   Another dimension than the expected one, or nothing of all this: refused, with what to mend.
 */
export function readQuantity(typed: string, expected?: Unit): ReadQuantity {
  if (typed.length > MOST_CHARACTERS) return refused(`That is longer than ${MOST_CHARACTERS} characters.`);
  const text = tidy(typed);
  if (text === "") return refused("Nothing was typed.");
  if (windowEnds(text)) return refused(`'${text}' is a window; one value is needed here.`);
  const read = possible(text, readTidy(text, expected));
  if (read.as !== "quantity" || !expected || read.unit.dimension === expected.dimension) return read;
  return otherDimension(text, [read.unit], expected);
}

function readTidy(text: string, expected: Unit | undefined): ReadQuantity {
  const gauged = readGoesNotGoes(text);
  if (gauged) return readOpening(text, gauged.goes, gauged.stays);
  const [, before, inside] = /^([^()]+)\(([^()]+)\)$/.exec(text) ?? [];
  if (before !== undefined && inside !== undefined) return readTwice(text, before.trim(), inside.trim(), expected);
  const named = readDrill(text);
  if (named) return named.drill ? one(named.drill.inches, INCH, text) : refused(`There is no drill '${named.name}'.`);
  const bare = withoutDrill(text);
  if (bare === "") return refused("Which drill? Type it as 'No. 42', 'letter E' or '7/64 in'.");
  if (bare !== text) return readTidy(bare, INCH.dimension === expected?.dimension ? expected : INCH);
  if (/^(at )?tdc$/i.test(text)) return one(new Fraction(0), BEFORE_TOP, text);
  return readMinutes(text) ?? readFeetAndInches(text) ?? readPlain(text, expected);
}

/** Nothing is colder than absolute zero; of several readings only those are meant that are not. */
function possible(text: string, read: ReadQuantity): ReadQuantity {
  if (read.as === "quantity") return isTooCold(read) ? refused(tooCold(text, read.unit)) : read;
  if (read.as === "refused") return read;
  const meant = read.choices.map((choice) => ({ choice, read: readTidy(tidy(choice.typed), undefined) }));
  const left = meant.filter((it) => it.read.as !== "quantity" || !isTooCold(it.read));
  if (left.length === meant.length) return read;
  return left.length > 0
    ? { ...read, choices: left.map((it) => it.choice) }
    : refused(`'${text}' is below absolute zero.`);
}

function isTooCold({ low, unit }: Quantity): boolean {
  return unit.zero !== undefined && low.add(unit.zero).lt(0);
}

function tooCold(text: string, unit: Unit): string {
  return `'${text}' is below absolute zero, ${sayQuantity((unit.zero ?? new Fraction(0)).neg(), unit)}.`;
}

/** One spelling for signs that look alike. Vulgar fractions stand apart from the whole number before them. */
function tidy(typed: string): string {
  return typed
    .replaceAll(/[¼-¾⅐-⅞]/g, (sign) => ` ${sign.normalize("NFKC").replace("⁄", "/")}`)
    .replaceAll("º", "°")
    .replaceAll(/[″“”]|''/g, '"')
    .replaceAll(/[′’‘]/g, "'")
    .replaceAll(/[−–—]/g, "-")
    .normalize("NFKC")
    .replaceAll("⁄", "/")
    .replaceAll(/\s+/g, " ")
    .trim();
}

/** A bare number names a drill here, a bare letter too, and a bare decimal is inches. */
function readOpening(text: string, goes: string, stays: string): ReadQuantity {
  const size = (typed: string): Fraction | Choice | Refused => {
    const drill = /^(\d{1,2}|[a-z])$/i.test(typed) ? drillCalled(typed) : undefined;
    if (drill) return drill.inches;
    const read = readTidy(typed, INCH);
    if (read.as !== "quantity") return read;
    return read.unit.dimension === INCH.dimension
      ? convertTo(read.low, read.unit, INCH)
      : otherDimension(typed, [read.unit], INCH);
  };
  const [low, high] = [size(goes), size(stays)];
  if ("as" in low) return low;
  if ("as" in high) return high;
  for (const [typed, inches] of [
    [goes, low],
    [stays, high],
  ] as const)
    if (inches.lt(0)) return refused(`'${typed}' is below zero, and no gauge is.`);
  if (low.gte(high))
    return refused(
      `'${goes}' (${sayNumber(low)} in) can't go in where '${stays}' (${sayNumber(high)} in) does not. Is it the other way round?`,
    );
  return { as: "quantity", low, high, openLow: false, openHigh: true, unit: INCH, written: text };
}

/** "7/64 in (0.109375 in)": the same, said twice. */
function readTwice(text: string, first: string, again: string, expected: Unit | undefined): ReadQuantity {
  const [a, b] = [readTidy(first, expected), readTidy(again, expected)];
  if (a.as !== "quantity") return a;
  if (b.as !== "quantity") return b;
  const isSame = a.unit.dimension === b.unit.dimension && convertTo(b.low, b.unit, a.unit).equals(a.low);
  return isSame ? { ...a, written: text } : refused(`'${first}' and '${again}' are not the same.`);
}

/** 1° 30' */
function readMinutes(text: string): Quantity | undefined {
  const [, sign, degrees, minutes] = /^(-?)(\d{1,5}) ?(?:°|deg) ?(\d{1,2}(?:\.\d{1,6})?) ?(?:'|min)$/i.exec(text) ?? [];
  if (degrees === undefined || minutes === undefined) return undefined;
  const size = new Fraction(degrees).add(new Fraction(minutes).div(60));
  return one(sign === "-" ? size.neg() : size, DEGREE, text);
}

/** 12'6", 5 ft 2 1/2 in. */
function readFeetAndInches(text: string): Quantity | Refused | undefined {
  const [, sign, feet, number = "", sort] =
    /^(-?) ?(\d{1,5}) ?(?:'|ft\.?|feet|foot) ?-? ?(\d[\d.,/ -]*?) ?("|in\.?|ins|inch|inches)?$/i.exec(text) ?? [];
  if (feet === undefined) return undefined;
  const [inches, ...more] = readNumber(number);
  if (sort === undefined || inches === undefined || more.length > 0 || inches.gte(12))
    return refused(`'${text}' looks like feet and inches. Type them as '5 ft 2 1/2 in', with less than 12 inches.`);
  const size = new Fraction(feet).mul(12).add(inches);
  return one(sign === "-" ? size.neg() : size, INCH, text);
}

/** A number and a word, or one of them alone. */
function readPlain(text: string, expected: Unit | undefined): ReadQuantity {
  const [, number, word = ""] =
    /^([-+]? ?(?:\d+(?: | ?- ?)\d+ ?\/ ?\d+|\d+ ?\/ ?\d+|[\d.,]*\d[\d.,]*)) ?(.*)$/.exec(text) ?? [];
  if (number === undefined) {
    const drill = expected?.dimension === "length" && /^[a-z]$/i.test(text) ? drillCalled(text) : undefined;
    return drill
      ? one(drill.inches, INCH, text)
      : refused(`'${text}' has no number. Type one, such as ${example(expected)}.`);
  }
  const values = readNumber(number);
  const [value] = values;
  if (value === undefined)
    return refused(
      `'${number.length === text.length ? text : number}' is no number that can be read, such as 35, 0.76, 7/64 or 1 1/2.`,
    );
  const units = word === "" ? bareUnits(number, values, expected) : wordUnits(word, expected);
  if (word !== "" && units.length === 0) return unknownUnit(text, word);
  if (units.length === 0) return refused(`'${text}' has no unit. Add one, such as ${text} mm.`);
  if (expected && units.every((unit) => unit.dimension !== expected.dimension))
    return otherDimension(text, units, expected);
  return pick(text, number, grouped(values, units), units, word === "" && isDrillOrThou(number, values, expected));
}

/** Nobody counts, nor reads a tachometer or an odometer, to thousandths: there a comma groups. */
function grouped(values: readonly Fraction[], units: readonly Unit[]): readonly Fraction[] {
  const isLarge = ({ id, dimension }: Unit): boolean =>
    dimension.startsWith("count of ") || ["rpm", "miles", "km"].includes(id);
  return units.every(isLarge) ? values.slice(0, 1) : values;
}

function bareUnits(number: string, values: readonly Fraction[], expected: Unit | undefined): readonly Unit[] {
  if (!expected) return [];
  if (isDrillOrThou(number, values, expected)) return [unitNamed("thou"), INCH];
  const isFraction = number.includes("/") && expected.dimension === "length" && expected !== INCH;
  return isFraction ? [INCH, expected] : [expected];
}

function isDrillOrThou(number: string, [value]: readonly Fraction[], expected: Unit | undefined): boolean {
  return expected?.id === "in" && /^[-+\d ]+$/.test(number) && value?.n !== 0n;
}

/** The units that a word means here: one, unless it has to be asked. */
function wordUnits(word: string, expected: Unit | undefined): readonly Unit[] {
  const units = findUnits(word, expected);
  if (!expected || units.length < 2) return units;
  if (word === expected.id) return [expected];
  const isAcrossTheOcean = expected.dimension === "volume";
  return units.includes(expected) && !isAcrossTheOcean ? [expected] : units;
}

/** One value in one unit, or the question which. */
function pick(
  text: string,
  number: string,
  values: readonly Fraction[],
  units: readonly Unit[],
  mayBeDrill: boolean,
): ReadQuantity {
  const [value] = values as [Fraction];
  const [unit] = units as [Unit];
  if (values.length === 1 && units.length === 1) return one(value, unit, text);
  const choices = units.flatMap((it) =>
    values.map((size) => {
      const typed = `${values.length === 1 ? number : sayNumber(size)} ${clearWord(it)}`;
      const beside = it.id === "thou" ? ` (${sayNumber(size.div(1000))} in)` : "";
      return { words: `${typed}${beside}, ${withArticle(it.dimension)}`, typed };
    }),
  );
  const drill = mayBeDrill && /^\d{1,2}$/.test(number) ? drillCalled(number) : undefined;
  if (drill)
    choices.unshift({ words: `No. ${Number(number)} drill (${sayQuantity(drill.inches, INCH)})`, typed: drill.name });
  return { as: "choice", ask: `'${text}' can be read in more than one way. Which is meant?`, choices };
}

function one(value: Fraction, unit: Unit, written: string): Quantity {
  return { as: "quantity", low: value, high: value, openLow: false, openHigh: false, unit, written };
}

function refused(why: string): Refused {
  return { as: "refused", why };
}

function unknownUnit(text: string, word: string): Refused {
  const near = nearest(word, [...new Set(UNITS.flatMap((unit) => [unit.id, ...unit.says]))]);
  return refused(`'${word}' in '${text}' is no unit known here.${near ? ` Did you mean '${near}'?` : ""}`);
}

function otherDimension(text: string, units: readonly Unit[], expected: Unit): Refused {
  const are = [...new Set(units.map((unit) => withArticle(unit.dimension)))].join(" or ");
  const unit = !expected.dimension.startsWith("count of ") ? ` in ${expected.id}` : "";
  return refused(`'${text}' is ${are}; this setting is ${withArticle(expected.dimension)}${unit}.`);
}

function withArticle(dimension: string): string {
  return `${/^[aeiou]/.test(dimension) ? "an" : "a"} ${dimension}`;
}

function example(expected: Unit | undefined): string {
  return `'12 ${expected?.id ?? "mm"}'`;
}
