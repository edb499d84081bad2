/**
 * Cars and scopes for timing single questions, the same every time: 12 list traits of 8 values, years, sequence numbers,
 * dates and four items of equipment; a table of rows that were built; scopes as an editor would write them.
 */
import type { CarSet } from "../../src/engine/scope/diagram.ts";
import { type Fact, readFacts } from "../../src/engine/scope/facts.ts";
import { type Car, pick, sayCar } from "../../src/engine/scope/pick.ts";
import { readScope } from "../../src/engine/scope/read-scope.ts";
import type { Scope } from "../../src/engine/scope/scope.ts";
import { Space } from "../../src/engine/scope/space.ts";
import { span, type Trait, type TraitRole } from "../../src/engine/scope/trait.ts";
import { type Random, random } from "./random.ts";

const YEARS = { first: 1961, last: 1970 } as const;
const LISTS = ["line", "plant", "body", "eng", "tr", "axle", "mkt", "brk", "str", "carb", "ign", "trim"] as const;
const FLAGS = ["AC", "PS", "PB", "TW"] as const;
/** Lists other than line and plant. */
const OTHERS = LISTS.slice(2);

export interface Question {
  readonly space: Space;
  readonly built: CarSet;
  /** Each row of the table by itself. */
  readonly rows: readonly CarSet[];
  readonly texts: readonly string[];
}

export function makeQuestion(rows: number, scopes: number): Question {
  const chance = random(19610901);
  const space = new Space(traits());
  const sets = Array.from({ length: rows }, (_, i) => read(space, rowText(chance, i)).cars);
  const texts = Array.from({ length: scopes }, () => scopeText(chance));
  return { space, built: space.any(sets), rows: sets, texts };
}

export function read(space: Space, text: string): Scope {
  const result = readScope(space, text);
  if ("slips" in result) throw new Error(`${text}: ${result.slips[0]?.message}`);
  return result.scope;
}

function traits(): Trait[] {
  const base = (id: string, role?: TraitRole) => ({
    ...{ id, label: id, aliases: [], role, find: "It stands on the plate.", effort: 2 },
    ...{ phrase: `with ${id} {}`, otherwise: `not with ${id} {}`, today: false },
  });
  const list = (id: string, role?: TraitRole): Trait => ({
    ...base(id, role),
    kind: "list",
    values: Array.from({ length: 8 }, (_, i) => ({ id: `${i + 1}`, label: `${id} ${i + 1}`, aliases: [] })),
  });
  return [
    list("line", "line"),
    { ...base("my", "year"), kind: "whole", from: YEARS.first, to: YEARS.last },
    list("plant", "plant"),
    ...OTHERS.map((id) => list(id)),
    { ...base("seq", "sequence"), kind: "whole", from: 1, to: 1_000_000 },
    { ...base("day", "date"), kind: "date", from: "1960-07-01", to: "1970-12-31" },
    ...FLAGS.map((id): Trait => ({ ...base(id), kind: "flag", phrase: `with ${id}`, otherwise: `without ${id}` })),
  ];
}

/** Rows go round the lines and years; each leaves some traits open, names a few values of others and one of the rest. */
function rowText(chance: Random, row: number): string {
  const line = (row % 8) + 1;
  const year = YEARS.first + (Math.floor(row / 8) % 10);
  const clauses = [`line=${line}`, `my=${year}`, `plant=${some(chance, 1, 2)}`];
  for (const id of OTHERS) if (chance.percent(80)) clauses.push(`${id}=${some(chance, 1, 3)}`);
  if (chance.percent(30)) clauses.push(`seq=${numbers(chance)}`);
  clauses.push(`day>=${year - 1}-07-01`, `day<=${year}-12-31`);
  for (const id of FLAGS) if (chance.percent(50)) clauses.push(`${id}=${chance.pick(["yes", "no"])}`);
  return clauses.join("; ");
}

function scopeText(chance: Random): string {
  return Array.from({ length: chance.whole(1, 3) }, () => alternative(chance)).join(" || ");
}

/** Two to five clauses: the line and the years first, as editors do, then whatever else. */
function alternative(chance: Random): string {
  const wanted = chance.whole(2, 5);
  const clauses: string[] = [];
  if (chance.percent(80)) clauses.push(`line=${some(chance, 1, 3)}`);
  if (chance.percent(60)) clauses.push(years(chance));
  const rest = [
    ...(chance.percent(15) ? [point(chance)] : []),
    ...(chance.percent(15) ? [`${chance.pick(["eq", "no"])}=${chance.some(FLAGS, chance.whole(1, 2)).join()}`] : []),
    ...(chance.percent(5) ? [`seq=${numbers(chance)}`] : []),
    ...chance.some(["plant", ...OTHERS], 5).map((id) => `${id}${chance.percent(80) ? "=" : "!="}${some(chance, 1, 3)}`),
  ];
  return [...clauses, ...rest].slice(0, wanted).join("; ");
}

function some(chance: Random, least: number, most: number): string {
  return chance.some(["1", "2", "3", "4", "5", "6", "7", "8"], chance.whole(least, most)).join();
}

function years(chance: Random): string {
  const year = chance.whole(YEARS.first, YEARS.last);
  return chance.pick([`my>=${year}`, `my<=${year}`, `my=${year}`, `my=${year}-${Math.min(YEARS.last, year + 2)}`]);
}

function numbers(chance: Random): string {
  const from = chance.whole(1, 900_000);
  return `${from}-${chance.whole(from, 1_000_000)}`;
}

function point(chance: Random): string {
  const year = chance.whole(YEARS.first, YEARS.last);
  const month = `${chance.whole(1, 12)}`.padStart(2, "0");
  const at = chance.percent(70) ? `#${chance.whole(1, 1_000_000)}` : `@${year}-${month}-15`;
  return `at=${chance.whole(1, 8)}${year}${at}${chance.pick(["+", "-"])}`;
}

/** A car that was built, with a value for every trait. */
export function someCar({ space, rows }: Question, chance: Random): Car {
  const wished = space.declared.map((trait, index) => [index, chance.whole(...span(trait))] as const);
  const like = new Map(wished);
  return new Map([...like, ...(pick(chance.pick(rows), like) as Car)]);
}

/** What is known of a car: these traits of it, as a person would give them. */
export function factsOf(space: Space, car: Car, known: readonly number[]): Fact[] {
  return readFacts(space, sayCar(space, new Map(known.map((trait) => [trait, car.get(trait) as number]))), "said");
}
