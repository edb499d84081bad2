/**
 * Reads a scope as an editor writes it.
 *
 *   line=Y,T; my>=1974; eq=DF || line=S; my=1975
 *
 * `;` joins clauses that must all hold, `||` separates alternatives, `all` is every car.
 *   trait=a,b   trait=1972-1974   one of these            trait!=a,b   none of these
 *   trait>=a  trait>a  trait<=a  trait<a                  from, after, up to, before
 *   eq=DF,AC    has one of these                          no=DF,AC     has none of these
 *   at=F73#24501+   at=F73#24501-                         plant F, from (before) number 24501 of 1973 on
 *   at=F73@1973-02-01+                                    the same by date
 *   fitted=AB-100   fitted!=AB-100                          what is on the car today
 */
import { ALL, type CarSet, NONE } from "./diagram.ts";
import { nearest } from "./nearest.ts";
import { outside, ranges } from "./ranges.ts";
import { meantBy, type ScopeWords } from "./read-scope-meant.ts";
import type { Alternative, Clause, Scope, ValuesClause } from "./scope.ts";
import { FITTED, type Space } from "./space.ts";
import { numberOf, span, stretch, type Trait } from "./trait.ts";

/** Something in a scope's text that is not understood: where it stands, what is wrong, what was expected. */
export interface ScopeSlip {
  readonly from: number;
  readonly to: number;
  readonly message: string;
  readonly hint: string;
}

export type ReadScope = { readonly scope: Scope } | { readonly slips: readonly ScopeSlip[] };

const OPERATORS = /^([^=!<>]*?)\s*(!=|>=|<=|=|<|>)\s*(.*)$/ds;

/** A piece of the text without the white space round it, and where it begins. */
interface Word {
  readonly text: string;
  readonly from: number;
}
type Slip = (at: Word, message: string, hint: string) => undefined;

export function readScope(space: Space, text: string): ReadScope {
  if (text.trim().toLowerCase() === "all") return { scope: { text: text.trim(), alternatives: [[]], cars: ALL } };
  const slips: ScopeSlip[] = [];
  const alternatives: Alternative[] = [];
  let cars: CarSet = NONE;
  for (const part of split({ text, from: 0 }, "||")) {
    const clauses: Clause[] = [];
    let set: CarSet = ALL;
    for (const piece of split(part, ";")) {
      const own: ScopeSlip[] = [];
      const read = readClauseOnce(space, piece, into(own));
      slips.push(...(own.length > 0 ? meantSlips(space, text, piece, own) : []));
      if (!read) continue;
      clauses.push(read.clause);
      set = space.sets.and(set, read.cars);
    }
    alternatives.push(clauses);
    cars = space.sets.or(cars, set);
  }
  return slips.length > 0 ? { slips } : { scope: { text: text.trim(), alternatives, cars } };
}

function into(slips: ScopeSlip[]): Slip {
  return (at, message, hint) => {
    slips.push({ from: at.from, to: at.from + Math.max(1, at.text.length), message, hint });
    return undefined;
  };
}

/** With the right writing of the piece, where what was meant is plain. */
function meantSlips(space: Space, text: string, piece: Word, slips: readonly ScopeSlip[]): readonly ScopeSlip[] {
  const [first] = slips as [ScopeSlip];
  if (piece.text === "") {
    const before = text.slice(0, piece.from).trimEnd();
    if (before === "" || text.slice(piece.from).trim() !== "") return slips;
    const sign = before.endsWith("||") ? "||" : ";";
    return [
      {
        ...first,
        message: `nothing follows the last '${sign}'`,
        hint: "take it away, or write another clause behind it",
      },
    ];
  }
  const meant = meantBy(piece.text, wordsOf(space), (other) => canRead(space, other));
  if (!meant) return slips;
  const hint = `write ${meant.text}`;
  if (meant.message === undefined) return slips.map((slip) => ({ ...slip, hint }));
  return [{ from: piece.from, to: piece.from + piece.text.length, message: meant.message, hint }];
}

function canRead(space: Space, text: string): boolean {
  const slips: ScopeSlip[] = [];
  for (const part of split({ text, from: 0 }, "||"))
    for (const piece of split(part, ";")) readClause(space, piece, into(slips));
  return slips.length === 0;
}

function wordsOf(space: Space): ScopeWords {
  const year = space.role("year");
  const trait = year === undefined ? undefined : space.trait(year);
  return {
    names: [...space.declared.flatMap(({ id, label, aliases }) => [id, label, ...aliases]), ...WORDS],
    years: trait ? [trait.id, trait.label, ...trait.aliases] : [],
    fullYear: (twoDigits) => trait && fullYear(trait, twoDigits),
  };
}

const WORDS = ["eq", "no", "at", FITTED];

interface ReadClause {
  readonly clause: Clause;
  readonly cars: CarSet;
}

/** Thousands of scopes are put together from few clauses. One with a slip is read again: the slip stands elsewhere each time. */
const clausesRead = new WeakMap<Space, Map<string, ReadClause>>();

function readClauseOnce(space: Space, piece: Word, slip: Slip): ReadClause | undefined {
  const known = clausesRead.get(space) ?? new Map<string, ReadClause>();
  clausesRead.set(space, known);
  const before = known.get(piece.text);
  if (before) return before;
  const clause = readClause(space, piece, slip);
  if (!clause) return undefined;
  const read = { clause, cars: carsOf(space, clause) };
  known.set(piece.text, read);
  return read;
}

function readClause(space: Space, clause: Word, slip: Slip): Clause | undefined {
  const names = [...space.declared.map((trait) => trait.id), ...WORDS];
  if (clause.text === "")
    return slip(clause, "a clause is missing here", "take the ';' or '||' away, or write trait=value");
  const parts = OPERATORS.exec(clause.text);
  if (!parts) return slip(clause, `'${clause.text}' is not a clause`, `write trait=value, such as ${names[0]}=…`);
  const [name, sign, values] = groups(parts, clause.from) as [Word, Word, Word];
  if (values.text === "") return slip(clause, `'${clause.text}' names no value`, "write one after the sign");
  if (name.text === "eq" || name.text === "no") return readFlags(space, name.text, sign, values, slip);
  if (name.text === "at") return readPoint(space, sign, values, slip);
  if (name.text === FITTED) return readFitted(space, sign, values, slip);
  const index = space.find(name.text);
  if (index === undefined) {
    const meant = nearest(name.text, names);
    return slip(
      name.text === "" ? sign : name,
      `no trait is called '${name.text}'`,
      meant ? `did you mean '${meant}'?` : `traits are ${names.join(", ")}`,
    );
  }
  return readValues(space.trait(index), index, sign, values, slip);
}

function readValues(trait: Trait, index: number, sign: Word, values: Word, slip: Slip): Clause | undefined {
  if (sign.text === "=" || sign.text === "!=") {
    const pairs = each(values, slip, (value) => readRange(trait, value, slip));
    if (!pairs) return undefined;
    const set = ranges(pairs);
    return sign.text === "="
      ? { type: "values", trait: index, values: set, written: "one of" }
      : { type: "values", trait: index, values: outside(set, span(trait)), written: "none of" };
  }
  if (trait.kind === "list" || trait.kind === "flag")
    return slip(
      sign,
      `${trait.label} has no order, so '${sign.text}' means nothing`,
      "use = or != with a list of values",
    );
  const number = readValue(trait, values, slip);
  if (number === undefined) return undefined;
  const [first, last] = stretch(trait, number);
  const clause = (pair: [number, number], written: ValuesClause["written"]): Clause => {
    return { type: "values", trait: index, values: ranges([pair]), written };
  };
  if (sign.text === ">=") return clause([number, last], "from");
  if (sign.text === ">") return clause([number + 1, last], "after");
  if (sign.text === "<=") return clause([first, number], "up to");
  return clause([first, number - 1], "before");
}

function readValue(trait: Trait, typed: Word, slip: Slip): number | undefined {
  return (
    numberOf(trait, typed.text) ??
    slip(typed, `${trait.label} has no value '${typed.text}'`, valuesHint(trait, typed.text))
  );
}

/** One value, or first and last of several. */
function readRange(trait: Trait, typed: Word, slip: Slip): [number, number] | undefined {
  const one = numberOf(trait, typed.text);
  if (one !== undefined) return [one, one];
  const ends = trait.kind === "whole" || trait.kind === "serial" ? /^(\S+?)\s*-\s*(\S+)$/.exec(typed.text) : null;
  const from = ends ? numberOf(trait, ends[1] as string) : undefined;
  const to = ends ? numberOf(trait, ends[2] as string) : undefined;
  if (from === undefined || to === undefined)
    return slip(typed, `${trait.label} has no value '${typed.text}'`, valuesHint(trait, typed.text));
  if (from > to) return slip(typed, `the range '${typed.text}' runs backwards`, "write the smaller value first");
  return [from, to];
}

function valuesHint(trait: Trait, typed: string): string {
  if (trait.kind === "list") {
    const ids = trait.values.map((value) => value.id);
    const meant = nearest(typed, [...ids, ...trait.values.map((value) => value.label)]);
    return meant ? `did you mean '${meant}'?` : `values are ${ids.join(", ")}`;
  }
  if (trait.kind === "flag") return "values are yes and no";
  if (trait.kind === "serial")
    return `write ${trait.prefixes.some(Boolean) ? `one of ${trait.prefixes.join(", ")} and ` : ""}up to ${trait.digits} digits`;
  if (trait.kind === "date") return `write a day from ${trait.from} to ${trait.to}, year-month-day`;
  return `values run from ${trait.from} to ${trait.to}`;
}

function readFlags(space: Space, name: "eq" | "no", sign: Word, values: Word, slip: Slip): Clause | undefined {
  if (sign.text !== "=") return slip(sign, `'${name}' takes only =`, "use eq= for has, no= for has not");
  const traits = each(values, slip, (value) => {
    const index = space.find(value.text);
    if (index !== undefined && space.trait(index).kind === "flag") return index;
    const flags = space.declared.filter((trait) => trait.kind === "flag").map((trait) => trait.id);
    const meant = nearest(value.text, flags);
    return slip(
      value,
      `no equipment is called '${value.text}'`,
      meant ? `did you mean '${meant}'?` : `equipment is ${flags.join(", ") || "not declared in traits.yaml"}`,
    );
  });
  return traits && { type: "flags", side: name === "eq" ? "any" : "none", traits };
}

const POINT = /^(.+?)(\d{4}|\d{2})([#@])([\w-]+?)([+-])$/d;

function readPoint(space: Space, sign: Word, values: Word, slip: Slip): Clause | undefined {
  const parts = POINT.exec(values.text);
  const form = "write plant, model year, # and the number, then + (from it on) or - (before it), such as at=F73#24501+";
  if (sign.text !== "=" || !parts) return slip(values, `'${values.text}' is not a point in a plant's production`, form);
  const [plantText, yearText, mark, atText, side] = groups(parts, values.from) as [Word, Word, Word, Word, Word];
  const by = mark.text === "#" ? "sequence" : "date";
  const roles = [space.role("plant"), space.role("year"), space.role(by)];
  if (roles.includes(undefined))
    return slip(
      values,
      "the traits do not say how cars are numbered",
      `give a trait each the roles plant, year and ${by}`,
    );
  const [plantTrait, yearTrait, atTrait] = (roles as number[]).map((role) => space.trait(role)) as [
    Trait,
    Trait,
    Trait,
  ];
  const plant =
    numberOf(plantTrait, plantText.text) ??
    slip(plantText, `no plant is called '${plantText.text}'`, valuesHint(plantTrait, plantText.text));
  const year =
    fullYear(yearTrait, yearText.text) ??
    slip(yearText, `no model year is '${yearText.text}'`, valuesHint(yearTrait, ""));
  const at = readValue(atTrait, atText, slip);
  if (plant === undefined || year === undefined || at === undefined) return undefined;
  return { type: "point", side: side.text === "+" ? "from" : "before", plant, year, by, at };
}

/** A year in full, or its last two digits where just one year of the domain ends in them. */
function fullYear(trait: Trait, text: string): number | undefined {
  if (text.length === 4) return numberOf(trait, text);
  const [from, to] = span(trait);
  const years = [];
  for (let year = from; year <= to; year++) if (year % 100 === Number(text)) years.push(year);
  return years.length === 1 ? years[0] : undefined;
}

function readFitted(space: Space, sign: Word, values: Word, slip: Slip): Clause | undefined {
  if (sign.text !== "=" && sign.text !== "!=")
    return slip(sign, "'fitted' takes = or !=", "write fitted=PART or fitted!=PART");
  const traits = each(values, slip, (part) => space.fitted(part.text));
  return traits && { type: "flags", side: sign.text === "=" ? "any" : "none", traits };
}

/** Every value of a list with commas, read; nothing when one of them slips. */
function each<T>(values: Word, slip: Slip, read: (value: Word) => T | undefined): T[] | undefined {
  const all = split(values, ",").map((value) =>
    value.text === "" ? slip(value, "a value is missing here", "take the ',' away") : read(value),
  );
  return all.every((one) => one !== undefined) ? all : undefined;
}

/** The cars that one clause holds for. */
export function carsOf(space: Space, clause: Clause): CarSet {
  if (clause.type === "values") return space.where(clause.trait, clause.values);
  if (clause.type === "flags") {
    const any = space.any(clause.traits.map((trait) => space.where(trait, [[1, 1]])));
    return clause.side === "any" ? any : space.sets.not(any);
  }
  return carsAtPoint(space, clause);
}

/**
 * Built at the plant, and either in the point's own model year on the point's side, or in any year beyond it.
 * A point at one plant says nothing about another plant.
 */
function carsAtPoint(space: Space, point: Extract<Clause, { type: "point" }>): CarSet {
  const [plant, year, at] = [space.role("plant"), space.role("year"), space.role(point.by)] as [number, number, number];
  const [firstYear, lastYear] = span(space.trait(year));
  const [first, last] = span(space.trait(at));
  const from = point.side === "from";
  const beyond = space.where(year, ranges([from ? [point.year + 1, lastYear] : [firstYear, point.year - 1]]));
  const inYear = space.sets.and(
    space.where(year, [[point.year, point.year]]),
    space.where(at, ranges([from ? [point.at, last] : [first, point.at - 1]])),
  );
  return space.sets.and(space.where(plant, [[point.plant, point.plant]]), space.sets.or(beyond, inYear));
}

function split(whole: Word, by: string): Word[] {
  let from = whole.from;
  return whole.text.split(by).map((part) => {
    const piece = { text: part.trim(), from: from + part.length - part.trimStart().length };
    from += part.length + by.length;
    return piece;
  });
}

/** What the groups of a pattern caught, each with its place. */
function groups(match: RegExpExecArray, from: number): Word[] {
  return match.slice(1).map((text, i) => ({ text, from: from + (match.indices?.[i + 1]?.[0] ?? 0) }));
}
