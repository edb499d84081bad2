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
 *   fitted=30-2230L   fitted!=30-2230L                    what is on the car today
 */
import { ALL, type CarSet, NONE } from "./diagram.ts";
import { nearest } from "./nearest.ts";
import { outside, type Ranges, ranges } from "./ranges.ts";
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

const OPERATORS = /^([^=!<>]*?)\s*(!=|>=|<=|=|<|>)\s*(.*)$/s;

export function readScope(space: Space, text: string): ReadScope {
  const slips: ScopeSlip[] = [];
  if (text.trim().toLowerCase() === "all") return { scope: { text, alternatives: [[]], cars: ALL } };
  const alternatives: Alternative[] = [];
  let cars: CarSet = NONE;
  for (const part of split(text, "||")) {
    const clauses: Clause[] = [];
    let set: CarSet = ALL;
    for (const piece of split(part.text, ";")) {
      const at = part.from + piece.from;
      const read = readClause(space, piece.text);
      if ("slip" in read) {
        slips.push({ ...read.slip, from: at + read.slip.from, to: at + read.slip.to });
      } else {
        clauses.push(read.clause);
        set = space.sets.and(set, carsOf(space, read.clause));
      }
    }
    alternatives.push(clauses);
    cars = space.sets.or(cars, set);
  }
  return slips.length > 0 ? { slips } : { scope: { text: text.trim(), alternatives, cars } };
}

type ReadClause = { clause: Clause } | { slip: ScopeSlip };

function readClause(space: Space, text: string): ReadClause {
  const parts = OPERATORS.exec(text.trim());
  const lead = text.length - text.trimStart().length;
  const slip = (of: string, message: string, hint: string): ReadClause => {
    const from = Math.max(0, of ? text.indexOf(of) : lead);
    return { slip: { from, to: from + Math.max(1, of.length), message, hint } };
  };
  const names = [...space.declared.map((trait) => trait.id), "eq", "no", "at", FITTED];
  if (!parts) return slip(text.trim(), `'${text.trim()}' is not a clause`, `write trait=value, such as ${names[0]}=…`);
  const [, name, sign, values] = parts as unknown as [string, string, string, string];
  if (values.trim() === "") return slip(text.trim(), `'${text.trim()}' names no value`, "write one after the sign");
  if (name === "eq" || name === "no") return readFlags(space, name, sign, values, slip);
  if (name === "at") return readPoint(space, sign, values, slip);
  if (name === FITTED) return readFitted(space, sign, values, slip);
  const index = space.find(name);
  if (index === undefined) {
    const meant = nearest(name, names);
    return slip(
      name,
      `no trait is called '${name}'`,
      meant ? `did you mean '${meant}'?` : `traits are ${names.join(", ")}`,
    );
  }
  return readValues(space.trait(index), index, sign, values, slip);
}

type MakeSlip = (of: string, message: string, hint: string) => ReadClause;

function readValues(trait: Trait, index: number, sign: string, values: string, slip: MakeSlip): ReadClause {
  const [lo, hi] = span(trait);
  if (sign === "=" || sign === "!=") {
    const pairs: [number, number][] = [];
    for (const value of values.split(",").map((v) => v.trim())) {
      const pair = readRange(trait, value);
      if (!pair) return slip(value, `${trait.label} has no value '${value}'`, valuesHint(trait, value));
      if (pair[0] > pair[1]) return slip(value, `the range '${value}' runs backwards`, "write the smaller value first");
      pairs.push(pair);
    }
    const set = ranges(pairs);
    return clauseOf(index, sign === "=" ? set : outside(set, [lo, hi]), sign === "=" ? "one of" : "none of");
  }
  if (trait.kind === "list" || trait.kind === "flag")
    return slip(sign, `${trait.label} has no order, so '${sign}' means nothing`, "use = or != with a list of values");
  const number = numberOf(trait, values);
  if (number === undefined) return slip(values, `${trait.label} has no value '${values}'`, valuesHint(trait, values));
  const [first, last] = stretch(trait, number);
  if (sign === ">=") return clauseOf(index, ranges([[number, last]]), "from");
  if (sign === ">") return clauseOf(index, ranges([[number + 1, last]]), "from");
  if (sign === "<=") return clauseOf(index, ranges([[first, number]]), "up to");
  return clauseOf(index, ranges([[first, number - 1]]), "up to");
}

function clauseOf(trait: number, values: Ranges, written: ValuesClause["written"]): ReadClause {
  return { clause: { type: "values", trait, values, written } };
}

function readRange(trait: Trait, text: string): [number, number] | undefined {
  const one = numberOf(trait, text);
  if (one !== undefined) return [one, one];
  if (trait.kind === "list" || trait.kind === "flag" || trait.kind === "date") return undefined;
  const parts = /^(\S+?)\s*-\s*(\S+)$/.exec(text);
  if (!parts) return undefined;
  const from = numberOf(trait, parts[1] as string);
  const to = numberOf(trait, parts[2] as string);
  return from === undefined || to === undefined ? undefined : [from, to];
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

function readFlags(space: Space, name: string, sign: string, values: string, slip: MakeSlip): ReadClause {
  if (sign !== "=") return slip(sign, `'${name}' takes only =`, "use eq= for has, no= for has not");
  const traits: number[] = [];
  for (const value of values.split(",").map((v) => v.trim())) {
    const index = space.find(value);
    if (index === undefined || space.trait(index).kind !== "flag") {
      const flags = space.declared.filter((trait) => trait.kind === "flag").map((trait) => trait.id);
      const meant = nearest(value, flags);
      return slip(
        value,
        `no equipment is called '${value}'`,
        meant ? `did you mean '${meant}'?` : `equipment is ${flags.join(", ") || "not declared in traits.yaml"}`,
      );
    }
    traits.push(index);
  }
  return { clause: { type: "flags", side: name === "eq" ? "any" : "none", traits } };
}

const POINT = /^(.+?)(\d{4}|\d{2})([#@])([\w-]+?)([+-])$/;

function readPoint(space: Space, sign: string, values: string, slip: MakeSlip): ReadClause {
  const parts = POINT.exec(values.trim());
  const form = "write plant, model year, # and the number, then + (from it on) or - (before it), such as at=F73#24501+";
  if (sign !== "=" || !parts) return slip(values, `'${values}' is not a point in a plant's production`, form);
  const [, plantText, yearText, mark, atText, side] = parts as unknown as string[];
  const by = mark === "#" ? "sequence" : "date";
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
  const plant = numberOf(plantTrait, plantText as string);
  if (plant === undefined)
    return slip(plantText as string, `no plant is called '${plantText}'`, valuesHint(plantTrait, plantText as string));
  const year = fullYear(yearTrait, yearText as string);
  if (year === undefined) return slip(yearText as string, `no model year is '${yearText}'`, valuesHint(yearTrait, ""));
  const at = numberOf(atTrait, atText as string);
  if (at === undefined)
    return slip(atText as string, `${atTrait.label} has no value '${atText}'`, valuesHint(atTrait, ""));
  return { clause: { type: "point", side: side === "+" ? "from" : "before", plant, year, by, at } };
}

/** A year in full, or its last two digits where just one year of the domain ends in them. */
function fullYear(trait: Trait, text: string): number | undefined {
  if (text.length === 4) return numberOf(trait, text);
  const [from, to] = span(trait);
  const years = [];
  for (let year = from; year <= to; year++) if (year % 100 === Number(text)) years.push(year);
  return years.length === 1 ? years[0] : undefined;
}

function readFitted(space: Space, sign: string, values: string, slip: MakeSlip): ReadClause {
  if (sign !== "=" && sign !== "!=") return slip(sign, "'fitted' takes = or !=", "write fitted=PART or fitted!=PART");
  const traits = values.split(",").map((value) => space.fitted(value.trim()));
  return { clause: { type: "flags", side: sign === "=" ? "any" : "none", traits } };
}

/** The cars that one clause holds for. */
function carsOf(space: Space, clause: Clause): CarSet {
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

function split(text: string, by: string): { text: string; from: number }[] {
  let from = 0;
  return text.split(by).map((part) => {
    const piece = { text: part, from };
    from += part.length + by.length;
    return piece;
  });
}
