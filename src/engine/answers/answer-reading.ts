/**
 * "Does my reading pass?"
 *
 *   If what was typed is no quantity of the setting's dimension, it is not understood; if it may be several, they are offered.
 *   If no record gives this car a figure, there is no such setting. If the words fit several settings of the car, the one whose unit
 *   fits the reading; if several do, they are offered.
 *   If conditions of the figure were not met, it cannot be judged. Where nothing is said of the conditions, the verdict holds
 *   provided that it was measured so, and says it.
 *   If several figures may be in force, and all of them judge the reading alike, that is the verdict; otherwise look first.
 *   Whatever the verdict, the neighbouring figures are judged as well: last year's figure is the classic mistake.
 */
import Fraction from "fraction.js";
import type { Setting } from "../records/statement.ts";
import { NONE } from "../scope/diagram.ts";
import { convertTo } from "../settings/convert.ts";
import { judge } from "../settings/judge.ts";
import { type Quantity, type ReadQuantity, readQuantity } from "../settings/read-quantity.ts";
import { endOf, sayNumber, sayQuantity } from "../settings/say-quantity.ts";
import { unitNamed } from "../settings/unit-named.ts";
import type { Unit } from "../settings/unit-table.ts";
import { askOf, type SettingFound, settingOn } from "./answer-setting.ts";
import { type KnownCar, readCar } from "./car.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { NOT_ON_RECORD } from "./compare-years.ts";
import { silentAmong } from "./figures-for-car.ts";
import { findSettings } from "./find-settings.ts";
import { sayFact } from "./look.ts";
import { explainedBy, otherFigures, type Reading, viewOther } from "./other-figures.ts";
import { QuestionError } from "./question-error.ts";
import { reasonFor, uniqueReasons } from "./say.ts";
import { NO_SUCH_CAR, sayConflict } from "./say-conflict.ts";
import type { CarInput } from "./shapes/car.ts";
import type { FigureView, ReadingAnswer } from "./shapes/setting.ts";
import { clausesOf, viewFigure } from "./view-figures.ts";

export interface ReadingQuestion {
  readonly setting: string;
  /** The reading, as typed. */
  readonly value: string;
  /** The instrument's error, to both sides: "0.001 in", "4 %". */
  readonly error?: string | undefined;
  /** "met", "not met", "unknown", or the conditions under which it was measured. */
  readonly conditions?: string | undefined;
  readonly car: CarInput;
}

export function answerReading(knowledge: CarKnowledge, asked: ReadingQuestion): ReadingAnswer {
  const { catalog } = knowledge;
  const car = readCar(knowledge, asked.car);
  const meant = findSettings(catalog, asked.setting);
  const base = {
    question: "reading" as const,
    because: [],
    facts: car.facts.map((fact) => sayFact(catalog.space, fact)),
    notNeeded: [],
    settings: [],
    choices: [],
    each: [],
    provided: [],
    missing: [],
    passesUnder: [],
    failsUnder: [],
    explainedBy: [],
    warnings: [],
  };
  if (car.cars === NONE)
    return {
      ...base,
      ...sayConflict(catalog, car),
      verdict: "no such car",
      words: NO_SUCH_CAR,
    };
  const found = meant.map((matter) => settingOn(knowledge, car, matter));
  const alive = found.filter(({ view }) => view.verdict !== "no such setting");
  const fitting = (alive.length > 0 ? alive : found).filter((it) => typedFor(it, asked.value).as !== "refused");
  const [only = alive[0] ?? found[0], ...more] = fitting;
  if (!only) throw new QuestionError(`No setting is called '${asked.setting}'.`);
  if (alive.length === 0)
    return {
      ...base,
      verdict: "no such setting",
      because: uniqueReasons(found.flatMap(({ matter }) => matter.statements.map((it) => reasonFor(catalog, it)))),
      setting: only.view,
      words: `No record gives this car a figure for “${only.matter.name}”, so there is nothing to judge the reading by.`,
      ...others(knowledge, car, only, asked),
    };
  if (more.length > 0)
    return {
      ...base,
      verdict: "choose",
      because: uniqueReasons(fitting.flatMap((it) => statedIn(it).map((one) => reasonFor(catalog, one)))),
      settings: fitting.map(({ view }) => view.name),
      words: `These words fit ${fitting.length} settings of this car. Which one is meant?`,
    };
  return { ...base, ...judgedOn(knowledge, car, only, asked) };
}

function statedIn({ figures }: SettingFound): Setting[] {
  return figures.values.flatMap((value) => value.statements as readonly Setting[]);
}

function typedFor({ matter }: SettingFound, value: string): ReadQuantity {
  return readQuantity(value, unitNamed(matter.statements[0]?.unit ?? ""));
}

/** Without a figure for this car, the figures of other cars are named all the same. */
function others(knowledge: CarKnowledge, car: KnownCar, found: SettingFound, asked: ReadingQuestion) {
  const [first] = found.matter.statements;
  const read = typedFor(found, asked.value);
  if (!first || read.as !== "quantity") return {};
  const reading = readingOf(read, unitNamed(first.unit), undefined);
  const passes = otherFigures(knowledge, car, found.matter, [], first.unit)
    .map((it) => viewOther(knowledge, reading, it))
    .filter((it) => it.verdict === "within");
  return {
    passesUnder: passes,
    warnings: passes.map(
      ({ figure, sameCar }) =>
        `It would pass under ${whose(sameCar)}: ${figure.said} (${figure.cars}). This car has none.`,
    ),
  };
}

function whose(sameCar: boolean): string {
  return sameCar
    ? "the figure of a car like this one, of another year or built or fitted otherwise"
    : "the figure of other cars";
}

function readingOf(
  { low, high, openLow, openHigh, unit: typed }: Quantity,
  unit: Unit,
  error: Fraction | undefined,
): Reading {
  const [from, to] = [convertTo(low, typed, unit), convertTo(high, typed, unit)];
  const [a, b] = from.lte(to) ? [from, to] : [to, from];
  return { read: { low: a, high: b, openLow, openHigh }, error: error ?? new Fraction(0), unit: unit.id };
}

function judgedOn(knowledge: CarKnowledge, car: KnownCar, found: SettingFound, asked: ReadingQuestion) {
  const { catalog } = knowledge;
  const { matter, figures, view } = found;
  const stated = statedIn(found);
  const because = uniqueReasons(stated.map((it) => reasonFor(catalog, it)));
  const unit = unitNamed(stated[0]?.unit ?? "");
  const typed = readQuantity(asked.value, unit);
  const base = { because, setting: view };
  if (typed.as === "refused") return { ...base, verdict: "not understood" as const, words: typed.why };
  if (typed.as === "choice")
    return {
      ...base,
      verdict: "not understood" as const,
      choices: typed.choices.map((it) => ({ ...it })),
      words: typed.ask,
    };
  const reading = readingOf(typed, unit, readError(asked.error, typed, unit));
  const shown = {
    typed: typed.written,
    inUnit: sayRead(reading, unit),
    ...(reading.error.equals(0) ? {} : { error: sayMeasured(reading.error, unit) }),
  };
  const each = figures.values
    .filter((value) => value.said !== NOT_ON_RECORD)
    .flatMap((value) => (value.statements as readonly Setting[]).slice(0, 1))
    .map((setting, i) => ({
      setting,
      figure: view.figures[i] as FigureView,
      ...judge(reading.read, setting, reading.error),
    }));
  // What has no lower limit would let any slip of the sign pass.
  const isBelowNothing = reading.read.low.lt(0) && unit.dimension !== "temperature";
  if (isBelowNothing && each.some(({ setting, verdict }) => setting.low === undefined && verdict === "within"))
    return {
      ...base,
      verdict: "not understood" as const,
      words: `${shown.typed} is less than nothing. Leave out the sign, or read it again.`,
    };
  const measured = conditionsOf(asked.conditions, stated);
  const common = {
    ...base,
    reading: shown,
    each: each.map(({ figure, verdict }) => ({ figure, verdict })),
    provided: measured.provided,
    missing: measured.missing,
  };
  if (view.verdict === "contradiction")
    return {
      ...common,
      verdict: "contradiction" as const,
      words: "Two records give different figures for the same car. Use neither before it is settled.",
    };
  const neighbours = otherFigures(knowledge, car, matter, stated, reading.unit);
  if (measured.missing.length > 0)
    return {
      ...common,
      verdict: "cannot be judged" as const,
      warnings: neighbours
        .filter(
          ({ setting }) =>
            setting.conditions !== undefined &&
            asked.conditions !== undefined &&
            holds(asked.conditions, setting.conditions),
        )
        .map(
          ({ setting }) =>
            `Measured so, it belongs to another figure: ${viewFigure(setting, []).said}, ${setting.conditions}.`,
        ),
      words: `It cannot be judged: this figure holds if it is measured so: ${measured.missing.join("; ")}.`,
    };
  const verdicts = new Set(each.map((it) => it.verdict));
  const [first] = each;
  const isOpen = verdicts.size > 1 || silentAmong(figures.values) !== NONE;
  const ask = isOpen ? askOf(knowledge, car, figures.values) : undefined;
  if (!first || isOpen)
    return {
      ...common,
      verdict: "look first" as const,
      ...(ask ? { ask } : {}),
      words: `Whether it passes depends on what is not known yet. ${ask?.what ?? "Look at the part."}`,
    };
  const near = neighbours.map((it) => viewOther(knowledge, reading, it));
  const isFine = first.verdict === "within";
  const passesUnder = isFine ? [] : near.filter((it) => it.verdict === "within");
  const failsUnder = isFine ? near.filter((it) => it.verdict !== "within") : [];
  const explained = isFine ? [] : explainedBy(knowledge, car, matter, first.setting, reading);
  return {
    ...common,
    verdict: first.verdict,
    ...(each.length === 1 && first.by ? { by: sayMeasured(first.by, unit) } : {}),
    passesUnder,
    failsUnder,
    explainedBy: explained,
    warnings: [
      ...passesUnder.map(
        ({ figure, sameCar }) =>
          `It would pass under ${whose(sameCar)}: ${figure.said} (${figure.cars}). That figure does not hold here.`,
      ),
      ...explained.map(
        ({ part, inPlaceOf }) => `${part} in place of ${inPlaceOf} would explain it. Look which one is on the car.`,
      ),
      ...view.refused,
      ...(view.unsaid.length > 0 ? [`No record ties a figure to ${view.unsaid.join(" and ")}, found on the car.`] : []),
    ],
    words: sayJudged(first, each, shown, unit),
  };
}

function sayRead({ read }: Reading, unit: Unit): string {
  if (read.low.equals(read.high)) return sayMeasured(read.low, unit);
  return `${sayNumber(read.low)} to ${read.openHigh ? "below " : ""}${sayQuantity(read.high, unit)}`;
}

/** Exactly, where people can read that; otherwise about, to four digits. Judged it is exactly all the same. */
function sayMeasured(value: Fraction, unit: Unit): string {
  const places = endOf(value);
  const isShort = places === undefined ? value.d < 100n : places <= 9;
  return isShort ? `${sayNumber(value)} ${unit.id}` : `about ${sayQuantity(value, unit, 4)}`;
}

/** "14.0 V" is "14 V". */
function withoutIdleZeros(text: string): string {
  return text.replace(/(\.\d*?)0+(?!\d)/, "$1").replace(/\.(?!\d)/, "");
}

function sayJudged(
  { verdict, by, limit, figure }: ReturnType<typeof judge> & { figure: FigureView },
  each: readonly unknown[],
  { typed, inUnit, error }: { typed: string; inUnit: string; error?: string },
  unit: Unit,
): string {
  const read = withoutIdleZeros(typed) === inUnit ? typed : `${typed} (${inUnit})`;
  // Two gauges may leave nothing between the reading and the limit.
  const far = by && !by.equals(0) ? sayMeasured(by, unit) : "";
  const against = each.length === 1 ? figure.said : "every figure that may be in force";
  switch (verdict) {
    case "within":
      return `${read} is within the limits, ${against}${each.length === 1 && far && limit ? `, ${far} from the ${limit} limit` : ""}.`;
    case "too near the limit to call":
      return `${read} is too near the ${limit} limit of ${against} to call${error === undefined ? "" : ", with this instrument's error"}.`;
    default:
      return `${read} is ${verdict}${each.length === 1 && far ? ` by ${far}` : ""}: ${against}.`;
  }
}

/** The error in the unit of the record: a quantity, or a part of the reading. Throws a QuestionError. */
function readError(typed: string | undefined, reading: Quantity, unit: Unit): Fraction | undefined {
  if (typed === undefined) return undefined;
  const [, percent] = /^\s*(?:±|\+\/?-)?\s*(\d+(?:\.\d+)?|\.\d+)\s*(?:%|per ?cent)\s*$/.exec(typed) ?? [];
  if (percent !== undefined) return convertTo(reading.high, reading.unit, unit).abs().mul(percent).div(100);
  const read = readQuantity(typed.replace(/^\s*(±|\+\/?-)\s*/, ""), unit);
  if (read.as === "choice") throw new QuestionError(`The error '${typed}': ${read.ask}`);
  if (read.as === "refused") throw new QuestionError(`The error '${typed}': ${read.why}`);
  if (read.high.lt(0) && !/^\s*(±|\+\/?-)/.test(typed))
    throw new QuestionError(`The error '${typed}' is below zero; type its size, or ± before it.`);
  // An error is a difference: no zero is added.
  return read.high.mul(read.unit.size).div(unit.size).abs();
}

function conditionsOf(
  given: string | undefined,
  stated: readonly Setting[],
): { provided: string[]; missing: string[] } {
  const clauses = [...new Set(stated.flatMap((it) => clausesOf(it.conditions)))];
  const said = given?.trim().toLowerCase();
  if (said === undefined || said === "" || clauses.length === 0) return { provided: clauses, missing: [] };
  if (["met", "yes", "as stated"].includes(said)) return { provided: [], missing: [] };
  if (["not met", "no", "unknown", "?"].includes(said)) return { provided: [], missing: clauses };
  return { provided: [], missing: clauses.filter((clause) => !holds(said, clause)) };
}

/** Whether what was said of the measuring holds all words of some conditions. "Lamps not on" says nothing of lamps that are on. */
function holds(said: string, conditions: string): boolean {
  const wanted = wordsOf(conditions);
  const own = clausesOf(said)
    .map(wordsOf)
    .filter((clause) => clause.every((word) => !DENIALS.includes(word) || wanted.includes(word)))
    .flat();
  return wanted.every((word) => own.includes(word));
}

const DENIALS = ["not", "no", "never", "without", "isn", "aren", "wasn", "weren"];

function wordsOf(text: string): string[] {
  return text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
}
