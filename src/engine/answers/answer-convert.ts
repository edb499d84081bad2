/** "What is this in another unit?" A value or a window, exactly; what can't be read is asked about or refused, never guessed. */
import { nearest } from "../scope/nearest.ts";
import { convertTo } from "../settings/convert.ts";
import { type Drill, drillsNear } from "../settings/drills.ts";
import { clearWord, findUnits } from "../settings/find-unit.ts";
import { significantDigits, windowIn } from "../settings/in-other-units.ts";
import type { Quantity, ReadQuantity } from "../settings/read-quantity.ts";
import { readWindow } from "../settings/read-window.ts";
import { endOf, sayNumber, sayQuantity } from "../settings/say-quantity.ts";
import { unitNamed } from "../settings/unit-named.ts";
import { UNITS, type Unit } from "../settings/unit-table.ts";
import type { ConvertAnswer, InUnit } from "./shapes/convert.ts";

const INCH = unitNamed("in");
/** An exact result of up to so many digits is not rounded. */
const EXACT_DIGITS = 8;
const LEAST_DIGITS = 4;

/** It needs no records, and takes the knowledge only to be asked as the other questions are. */
export function answerConvert(
  _knowledge: unknown,
  { value: typed, to: wanted }: { value: string; to?: string | undefined },
): ConvertAnswer {
  const answer = { question: "convert" as const, because: [], given: typed, others: [], choices: [] };
  const refuse = (words: string): ConvertAnswer => ({ ...answer, verdict: "refused", words });
  const choose = (words: string, choices: ConvertAnswer["choices"]): ConvertAnswer => ({
    ...answer,
    verdict: "choose",
    ask: { what: words, options: choices.map((choice) => choice.typed) },
    choices,
    words,
  });
  const targets = wanted === undefined ? undefined : findUnits(wanted);
  const read = readFor(typed, targets);
  if (read.as === "refused") return refuse(read.why);
  if (wanted !== undefined && targets?.length === 0) return refuse(unknownTarget(wanted, read));
  if (read.as === "choice") return choose(read.ask, [...read.choices]);

  const fitting = wanted === undefined ? [usualTarget(read.unit)] : sameDimension(read.unit, wanted);
  const [to] = fitting;
  if (!to)
    return refuse(
      `'${wanted}' does not measure what '${read.written}' does: that is a value of ${read.unit.dimension}.`,
    );
  if (fitting.length > 1)
    return choose(
      `'${wanted}' may be more than one unit. Which is meant?`,
      fitting.map((unit) => ({ words: unit.name, typed: clearWord(unit) })),
    );

  const result = inUnit(read, to);
  const given = saidIn(read, read.unit);
  const drills = read.unit.dimension === "length" ? drillsFor(read) : undefined;
  return {
    ...answer,
    verdict: "converted",
    read: given,
    result,
    others: otherUnits(read, to).map((unit) => inUnit(read, unit)),
    ...(drills ? { drills } : {}),
    factor: sayFactor(read.unit, to),
    source: [...new Set([read.unit.source, to.source])].join("; "),
    words: sentence(given, result),
  };
}

/** A word of several meanings means the one that can be converted to what is wanted, where there is only one such. */
function readFor(typed: string, targets: readonly Unit[] | undefined): ReadQuantity {
  const read = readWindow(typed);
  if (read.as === "refused" && targets?.some(({ dimension }) => dimension === INCH.dimension))
    return readLengthWithoutUnit(typed) ?? read;
  if (read.as !== "choice" || !targets) return read;
  const fitting = read.choices.flatMap((choice) => {
    const meant = readWindow(choice.typed);
    const fits = meant.as === "quantity" && targets.some(({ dimension }) => dimension === meant.unit.dimension);
    return fits ? [{ choice, meant: { ...meant, written: typed.trim() } }] : [];
  });
  const [only] = fitting;
  if (only && fitting.length === 1) return only.meant;
  return fitting.length === 0 ? read : { ...read, choices: fitting.map(({ choice }) => choice) };
}

/** Where a length is wanted a fraction is of an inch and a letter a drill; any other number may be inches or millimetres: ask. */
function readLengthWithoutUnit(typed: string): ReadQuantity | undefined {
  const read = readWindow(typed, INCH);
  if (read.as === "refused") return undefined;
  if (read.as === "quantity" && /[/¼-¾⅐-⅞⁄]|[a-z]/i.test(typed)) return read;
  const text = typed.trim();
  const inInches = read.as === "choice" ? read.choices : [{ words: `${text} in, a length`, typed: `${text} in` }];
  const inMillimetres = { words: `${text} mm, a length`, typed: `${text} mm` };
  return {
    as: "choice",
    ask: `'${text}' can be read in more than one way. Which is meant?`,
    choices: [...inInches, inMillimetres],
  };
}

/** The nearest name is one of the same dimension, if any is near. */
function unknownTarget(wanted: string, read: ReadQuantity): string {
  const names = (units: readonly Unit[]): string[] => [...new Set(units.flatMap((unit) => [unit.id, ...unit.says]))];
  const alike = read.as === "quantity" ? UNITS.filter((unit) => unit.dimension === read.unit.dimension) : [];
  const near = nearest(wanted, names(alike)) ?? nearest(wanted, names(UNITS));
  const known =
    alike.length === 0 ? "" : ` Units of ${alike[0]?.dimension} are ${alike.map((unit) => unit.id).join(", ")}.`;
  return `'${wanted}' is no unit known here.${near === undefined ? known : ` Did you mean '${near}'?`}`;
}

function sameDimension(from: Unit, wanted: string): readonly Unit[] {
  return findUnits(wanted).filter((unit) => unit.dimension === from.dimension);
}

/** The unit beside it, else the next best of its dimension, else itself. */
function usualTarget(from: Unit): Unit {
  if (from.beside !== undefined) return unitNamed(from.beside);
  return UNITS.find((unit) => unit.dimension === from.dimension && unit.id !== from.id) ?? from;
}

/** Numbers far too small or too large say nothing at the bench. */
function otherUnits({ low, unit: from }: Quantity, to: Unit): readonly Unit[] {
  const isHandy = (unit: Unit): boolean => {
    const size = convertTo(low, from, unit).abs();
    return size.equals(0) || (size.gte("0.01") && size.lte(100_000));
  };
  const shown = [from, to].map(nameOf);
  return UNITS.filter((unit, i) => {
    const isRepeated = shown.includes(nameOf(unit)) || UNITS.slice(0, i).some((it) => nameOf(it) === nameOf(unit));
    return unit.dimension === from.dimension && !isRepeated && isHandy(unit);
  });
}

/** "mile" and "miles" are one. */
function nameOf({ name }: Unit): string {
  return name.replace(/s$/, "");
}

/** Exactly where that takes few digits; else to as many digits as were typed, limits of a window inward. */
function inUnit(read: Quantity, to: Unit): InUnit {
  const [low, high] = [read.low, read.high].map((limit) => convertTo(limit, read.unit, to)) as [
    Quantity["low"],
    Quantity["low"],
  ];
  const isShort = [low, high].every(
    (limit) => endOf(limit) !== undefined && significantDigits(sayNumber(limit)) <= EXACT_DIGITS,
  );
  if (isShort) return saidIn({ ...read, low: low.lte(high) ? low : high, high: low.lte(high) ? high : low }, to);
  const numbers = read.written.match(/\d+(?:\.\d+)?|\.\d+/g) ?? [];
  const digits = Math.max(LEAST_DIGITS, ...numbers.map(significantDigits));
  const rounded = windowIn(read.low, read.high, read.unit, to, digits);
  return written(rounded.low ?? "", rounded.high ?? "", read.openHigh, to, false);
}

/** The limits are in this unit already. */
function saidIn(read: Quantity, unit: Unit): InUnit {
  return written(sayNumber(read.low), sayNumber(read.high), read.openHigh, unit, true);
}

function written(low: string, high: string, openHigh: boolean, unit: Unit, exact: boolean): InUnit {
  const base = { value: low, unit: unit.id, exact };
  if (low === high && !openHigh) return { ...base, shown: `${low} ${unit.id}` };
  if (!openHigh) return { ...base, high, shown: `${low} to ${high} ${unit.id}` };
  return { ...base, high, below: true, shown: `at least ${low}, below ${high} ${unit.id}` };
}

/** Nothing for what is smaller or larger than all of them. */
function drillsFor(read: Quantity): ConvertAnswer["drills"] {
  const [low, high] = [read.low, read.high].map((limit) => drillsNear(convertTo(limit, read.unit, INCH)));
  if (!low?.below || !high?.above) return undefined;
  const say = ({ name, inches }: Drill): { name: string; shown: string } => ({
    name,
    shown: sayQuantity(inches, INCH, 4),
  });
  return {
    exact: (read.low.equals(read.high) ? low.exact : []).map(say),
    below: say(low.below),
    above: say(high.above),
  };
}

function sayFactor(from: Unit, to: Unit): string {
  if (from.id === to.id) return from.factor;
  if (from.zero || to.zero) return [...new Set([from.factor, to.factor])].join("; ");
  const size = from.size.div(to.size);
  const isShort = endOf(size) !== undefined && significantDigits(sayNumber(size)) <= 20;
  return isShort
    ? `1 ${from.name} = ${sayNumber(size)} ${to.id} exactly`
    : `1 ${from.name} = ${sayNumber(size, 10)} ${to.id}, rounded; the whole fraction is counted with (${from.factor}; ${to.factor})`;
}

function sentence(given: InUnit, result: InUnit): string {
  if (given.unit === result.unit) return `${given.shown}.`;
  const how = result.exact ? "exactly" : result.high === undefined ? "rounded" : "limits rounded inward";
  return `${given.shown} = ${result.shown}, ${how}.`;
}
