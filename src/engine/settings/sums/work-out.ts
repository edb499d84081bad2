/**
 * Does one sum with what a person typed.
 *
 *   A field that cannot be read or lies outside its limits: refused, field by field.
 *   Two ways to give one thing, both given: refused, for they may contradict each other.
 *   Something needed is not there: missing, and what. Fields with a usual value take it.
 *   The figures cannot belong to one thing: impossible, in a sentence.
 *   Else the results, each with its value and as the trade rounds it, and the formula with the numbers put in.
 */
import Fraction from "fraction.js";
import { nearest } from "../../scope/nearest.ts";
import { convertTo } from "../convert.ts";
import type { Unit } from "../unit-table.ts";
import { num, undusted } from "./num.ts";
import { type Choice, readInput, unitCalled } from "./read-input.ts";
import { show } from "./show.ts";
import type { Solved, Sum, SumInput, SumResult, Values } from "./sum.ts";

export interface ShownResult {
  readonly id: string;
  readonly label: string;
  /** None where the result is words. */
  readonly value?: number;
  readonly unit: string;
  readonly shown: string;
  readonly rounded: string;
}

export interface Wrong {
  readonly input: string;
  readonly label: string;
  readonly why: string;
  readonly choices?: readonly Choice[];
}

export interface Missing {
  readonly what: string;
  /** The ways to give it, each a list of inputs. */
  readonly ways: readonly (readonly string[])[];
}

export type WorkedOut =
  | { readonly as: "worked out"; readonly results: readonly ShownResult[]; readonly steps: readonly string[] }
  | { readonly as: "missing"; readonly missing: readonly Missing[] }
  | { readonly as: "refused"; readonly wrong: readonly Wrong[] }
  | { readonly as: "impossible"; readonly why: string };

export function workOut(sum: Sum, typed: Readonly<Record<string, string>>): WorkedOut {
  const given = new Map(Object.entries(typed).filter(([, text]) => text.trim() !== ""));
  const wrong = unknownInputs(sum, given);
  const values: Record<string, number> = {};
  const units = new Map<string, Unit>();
  for (const input of sum.inputs) {
    const text = given.get(input.id) ?? input.default;
    if (text === undefined) continue;
    const read = readInput(input, text);
    if (read.as === "refused")
      wrong.push({
        input: input.id,
        label: input.label,
        why: `${input.label}: ${read.why}${/[.?!]$/.test(read.why) ? "" : "."}`,
        ...(read.choices && { choices: read.choices }),
      });
    else {
      Object.assign(values, read.values);
      if (read.unit) units.set(input.id, read.unit);
    }
  }
  wrong.push(...givenTwice(sum, given));
  if (wrong.length > 0) return { as: "refused", wrong };
  const missing = missingOf(sum, given);
  if (missing.length > 0) return { as: "missing", missing };
  const solved = sum.solve(values);
  if ("impossible" in solved) return { as: "impossible", why: solved.impossible };
  if (!Object.values(solved.results).every(Number.isFinite))
    return { as: "impossible", why: "The figures are too far apart for a sum." };
  const results = shownResults(sum, solved, units);
  const steps = [...readIn(sum, given, values, units), ...solved.steps, ...readOut(sum, solved, results)];
  return { as: "worked out", results, steps };
}

function unknownInputs(sum: Sum, given: ReadonlyMap<string, string>): Wrong[] {
  const known = sum.inputs.map((input) => input.id);
  return [...given.keys()]
    .filter((id) => !known.includes(id))
    .map((id) => {
      const meant = nearest(id, known);
      const hint = meant ? `did you mean '${meant}'?` : `It takes ${known.join(", ")}.`;
      return { input: id, label: id, why: `${sum.name} takes no '${id}'; ${hint}` };
    });
}

function givenTwice(sum: Sum, given: ReadonlyMap<string, string>): Wrong[] {
  return (sum.ways ?? [])
    .filter((it) => !it.several)
    .flatMap(({ what, ways }) => {
      const whole = ways.filter((way) => way.every((id) => given.has(id)));
      const [first, second] = whole;
      if (second === undefined) return first ? partOfAnother(sum, what, first, ways, given) : [];
      const names = whole.map((way) => inWords(sum, way));
      const why = `${capital(what)} is given more than once: ${names.join("; ")}. Leave all but one out.`;
      return [{ input: second[0] as string, label: labelOf(sum, second[0] as string), why }];
    });
}

/** A stroke beside the swept volume would be left out of the sum, unsaid. */
function partOfAnother(
  sum: Sum,
  what: string,
  whole: readonly string[],
  ways: readonly (readonly string[])[],
  given: ReadonlyMap<string, string>,
): Wrong[] {
  const isIdle = (id: string): boolean =>
    given.has(id) && !whole.includes(id) && !sum.inputs.find((input) => input.id === id)?.optional;
  const [idle] = ways.flat().filter(isIdle);
  if (idle === undefined) return [];
  const label = labelOf(sum, idle);
  const others = ways.filter((way) => way.includes(idle)).map((way) => inWords(sum, way));
  const why = `${capital(what)} is given by ${inWords(sum, whole)}, so '${label}' has no use. Give ${[inWords(sum, whole), ...others].join(", or ")}.`;
  return [{ input: idle, label, why }];
}

function missingOf(sum: Sum, given: ReadonlyMap<string, string>): Missing[] {
  const inWays = new Set((sum.ways ?? []).flatMap(({ ways }) => ways.flat()));
  const noWay = (sum.ways ?? []).filter(({ ways }) => !ways.some((way) => way.every((id) => given.has(id))));
  const needed = new Set([
    ...sum.inputs
      .filter((it) => !it.optional && it.default === undefined && !inWays.has(it.id))
      .map((it: SumInput) => it.id),
    ...(sum.goesWith ?? []).filter((it) => it.given.some((id) => given.has(id))).flatMap((it) => it.needs),
  ]);
  return [
    ...noWay.map(({ what, ways }) => ({ what: `${what}: ${ways.map((way) => inWords(sum, way)).join("; ")}`, ways })),
    ...[...needed].filter((id) => !given.has(id)).map((id) => ({ what: labelOf(sum, id), ways: [[id]] })),
  ];
}

/** "Or" and "and" before a label belong to the order of the fields on a page, not to the thing. */
function labelOf(sum: Sum, id: string): string {
  return (sum.inputs.find((input) => input.id === id)?.label ?? id).replace(/^(or|and) /, "");
}

function inWords(sum: Sum, way: readonly string[]): string {
  return way.map((id) => labelOf(sum, id)).join(" and ");
}

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

/** The formula counts in the units of the sum: what was typed in others is turned into them first. */
function readIn(
  sum: Sum,
  given: ReadonlyMap<string, string>,
  values: Values,
  units: ReadonlyMap<string, Unit>,
): string[] {
  return sum.inputs.flatMap(({ id, letter, unit }) => {
    const typed = given.get(id);
    const value = values[id] ?? values[`${id}Low`];
    if (typed === undefined || value === undefined || (units.get(id)?.id ?? unit) === unit) return [];
    const high = values[`${id}High`] ?? value;
    return `${letter} = ${typed} = ${num(value)}${high === value ? "" : `..${num(high)}`} ${unit}`;
  });
}

/** What is shown in another unit is turned back last. */
function readOut(sum: Sum, { results: solved }: Solved, shown: readonly ShownResult[]): string[] {
  return sum.results.flatMap(({ id, unit }) => {
    const [value, result] = [solved[id], shown.find((it) => it.id === id)];
    if (value === undefined || result?.value === undefined || result.unit === unit) return [];
    return `${result.label}: ${num(value)} ${unit} = ${num(result.value)} ${result.unit}`;
  });
}

function shownResults(sum: Sum, { results, words }: Solved, units: ReadonlyMap<string, Unit>): ShownResult[] {
  const shownWith = (result: SumResult, finer: number): string => {
    const typed = inTypedUnit(result, results[result.id] ?? 0, units);
    return show(typed.value, typed.unit, result.round, finer);
  };
  const finerFor = ({ between }: SumResult): number => {
    const [low, high] = (between ?? []).map((id) => sum.results.find((it) => it.id === id));
    if (!low || !high) return 0;
    const open = [0, 1, 2, 3, 4, 5, 6].find((finer) => Number(shownWith(low, finer)) <= Number(shownWith(high, finer)));
    return open ?? 6;
  };
  return sum.results.flatMap((result): ShownResult[] => {
    const { id, label, round } = result;
    const said = words?.[id];
    if (said !== undefined) return [{ id, label, unit: "", shown: said, rounded: "" }];
    const value = results[id];
    if (value === undefined) return [];
    const { value: inUnit, unit } = inTypedUnit(result, value, units);
    return [{ id, label, value: inUnit, unit, shown: shownWith(result, finerFor(result)), rounded: round.words }];
  });
}

function inTypedUnit(
  { unit, unitOf = [] }: SumResult,
  value: number,
  units: ReadonlyMap<string, Unit>,
): { value: number; unit: string } {
  const typed = unitOf.map((id) => units.get(id)).find((it) => it !== undefined);
  if (typed === undefined || typed.id === unit) return { value: undusted(value), unit };
  return { value: undusted(convertTo(new Fraction(value), unitCalled(unit), typed).valueOf()), unit: typed.id };
}
