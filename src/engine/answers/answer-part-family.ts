/**
 * "Which parts is this one related to, and how?" The family of a part, in the order in which a drawing shows it.
 *
 *   In the family are, and are drawn in this order while there is room:
 *     the part itself, and "no part" where it may be put in an empty place,
 *     the parts that a record names with it: delivered for each other, or said to stand in for each other or not to;
 *     the rest of its chain of deliveries, to both ends;
 *     the parts that it may be taken for;
 *     the parts that a record names with one of those named with it.
 *   Whatever is not drawn is counted.
 *
 *   They stand in the order of their age: what is delivered for another stands after it; else the one that cars were
 *   built with first stands first; else the lower number.
 */
import type { PartIndex } from "../interchange/part-index.ts";
import { carsBuiltWith } from "../interchange/part-index.ts";
import type { Part } from "../records/catalog.ts";
import { yearsOf } from "../records/concerned.ts";
import { type StandsIn, type StatementOf, type Supersedes, statementsOf } from "../records/statement.ts";
import type { ScopeWords } from "./answer.ts";
import { type FamilyLine, familyLines, headOf, NO_PART, tailOf } from "./family-lines.ts";
import type { Knowledge } from "./knowledge.ts";
import { type LookAlike, lookAlikes } from "./look-alikes.ts";
import { partIndexOf } from "./part-indexes.ts";
import { anchor, sayScope } from "./say.ts";

/** More columns than this no page has room for, and more lines nobody follows. */
export const MOST_MEMBERS = 10;
export const MOST_LINES = 30;

export interface FamilyMember {
  /** Empty where no part is fitted. */
  readonly number: string;
  readonly name: string;
  /** The first model year of which cars were built with it. */
  readonly since: number | undefined;
  readonly repairOnly: boolean;
}

interface Cited {
  readonly record: string;
  readonly anchor: string;
}

/** A line as `FamilyLine` has it, with where it is said. */
export interface FamilyLineView extends Omit<FamilyLine, "by"> {
  readonly by: readonly Cited[];
}

/** A statement by which another part goes on together with this one. */
export interface GoesAlong extends Cited {
  readonly verdict: "yes" | "on-conditions";
  readonly part: string;
  readonly for: string | undefined;
  readonly with: readonly string[];
  readonly scope: ScopeWords | undefined;
  readonly inForce: boolean;
}

export interface PartFamily {
  readonly part: string;
  /** Oldest first. */
  readonly members: readonly FamilyMember[];
  /** What is said of the part itself first. */
  readonly lines: readonly FamilyLineView[];
  readonly lookAlikes: readonly LookAlike[];
  readonly leftOut: {
    readonly parts: readonly string[];
    /** How many statements that name the part itself, and how many between its relatives. */
    readonly ofIt: number;
    readonly ofOthers: number;
  };
  /** What is said of the part itself, but holds for no car: its instruction was ended, or it is refused as well. */
  readonly notInForce: readonly Cited[];
  readonly goesAlong: readonly GoesAlong[];
  /** Deliveries in which the part must be ordered along. */
  readonly orderedAlong: readonly (Cited & { readonly part: string; readonly inForce: boolean })[];
}

type Said = StandsIn | Supersedes;

export function answerPartFamily(knowledge: Knowledge, { number }: { readonly number: string }): PartFamily {
  const { catalog } = knowledge;
  const index = partIndexOf(catalog);
  const part = catalog.parts.get(number) as Part;
  const alike = lookAlikes(knowledge, part);
  const family = familyOf(knowledge, number, alike);
  const drawn = new Set(family.slice(0, MOST_MEMBERS));

  const ofIt = saidOf(knowledge, number);
  const between = [...drawn].flatMap((one) =>
    one === number || one === NO_PART
      ? []
      : saidOf(knowledge, one).filter((it) => tailOf(it) === one && ![headOf(it), tailOf(it)].includes(number)),
  );
  const isDrawn = (it: Said): boolean => drawn.has(tailOf(it)) && drawn.has(headOf(it)) && tailOf(it) !== headOf(it);
  // "No part" stands for the places of the part itself; what is put in an empty place elsewhere is another matter.
  const ofOthers = between.filter((it) => isDrawn(it) && headOf(it) !== NO_PART);
  const { lines, notInForce } = familyLines(index, [...ofIt, ...ofOthers]);

  const members = inOrder(index, [...drawn], [...ofIt, ...ofOthers]);
  const inPlace = inReadingOrder(lines, number, members);
  const shown = inPlace.filter((it) => it.by.every(isDrawn)).slice(0, MOST_LINES);
  const left = lines.filter((line) => !shown.includes(line));
  const isOfIt = (line: FamilyLine): boolean => line.tail === number || line.head === number;
  const count = (list: readonly FamilyLine[]): number => list.reduce((sum, it) => sum + it.by.length, 0);
  return {
    part: number,
    members: members.map((one) => viewMember(knowledge, index, one)),
    lines: shown.map((line) => ({ ...line, by: line.by.map(cite) })),
    lookAlikes: alike,
    leftOut: {
      parts: family.slice(MOST_MEMBERS).sort(),
      ofIt: count(left.filter(isOfIt)),
      ofOthers: count(left.filter((line) => !isOfIt(line))),
    },
    notInForce: notInForce.filter((it) => [tailOf(it), headOf(it)].includes(number)).map(cite),
    goesAlong: goesAlongIn(knowledge, index, number),
    orderedAlong: statementsOf(knowledge.statementsByPart.get(number) ?? [], "supersedes")
      .filter((it) => it.with.includes(number))
      .map((it) => ({ ...cite(it), part: it.new, inForce: isInForce(knowledge, index, it) })),
  };
}

/** All of the family, in the order in which there is room for them. */
function familyOf(knowledge: Knowledge, number: string, alike: readonly LookAlike[]): string[] {
  const of = (one: string): Said[] => saidOf(knowledge, one);
  const named = (one: string, list: readonly Said[]): string[] =>
    list.flatMap((it) => [tailOf(it), headOf(it)]).filter((other) => other !== one && other !== NO_PART);
  const direct = named(number, of(number)).sort();
  return [
    ...new Set([
      number,
      ...(of(number).some((it) => headOf(it) === NO_PART) ? [NO_PART] : []),
      ...direct,
      ...chain(number, (one) =>
        statementsOf(of(one), "supersedes")
          .filter((it) => it.old === one)
          .map((it) => it.new),
      ),
      ...chain(number, (one) =>
        statementsOf(of(one), "supersedes")
          .filter((it) => it.new === one)
          .map((it) => it.old),
      ),
      ...alike.map((it) => it.number),
      ...direct.flatMap((one) => named(one, of(one)).sort()),
    ]),
  ];
}

/** Whatever is reached, the nearest first. Each is visited once, so that a circle in the records ends. */
function chain(from: string, next: (one: string) => readonly string[]): string[] {
  const reached = new Set([from]);
  for (const one of reached) for (const other of [...next(one)].sort()) reached.add(other);
  return [...reached].slice(1);
}

/** The statements that join a part with another: not those that only name it as going along. */
function saidOf({ statementsByPart }: Knowledge, number: string): Said[] {
  const statements = statementsByPart.get(number) ?? [];
  return [...statementsOf(statements, "supersedes"), ...statementsOf(statements, "stands-in")].filter((it) =>
    [tailOf(it), headOf(it)].includes(number),
  );
}

/** Oldest first. Of a circle of deliveries the one stands first that would if there were none. */
function inOrder(index: PartIndex, members: readonly string[], said: readonly Said[]): string[] {
  const byAge = [...members].sort((a, b) => sinceOf(index, a) - sinceOf(index, b) || (a < b ? -1 : 1));
  const orders = statementsOf(said, "supersedes");
  const placed: string[] = [];
  const isNext = (one: string): boolean =>
    !placed.includes(one) &&
    orders.every((it) => it.new !== one || it.old === one || placed.includes(it.old) || !members.includes(it.old));
  while (placed.length < members.length) {
    const next = byAge.find(isNext) ?? byAge.find((one) => !placed.includes(one));
    placed.push(next as string);
  }
  return placed;
}

/** A number that sorts: no part before all years, a part that no car was built with after them. */
function sinceOf(index: PartIndex, number: string): number {
  if (number === NO_PART) return Number.MIN_SAFE_INTEGER;
  const { space, catalog } = index;
  const built = carsBuiltWith(index, number);
  return yearsOf(space, space.sets.and(built, catalog.buildable))[0] ?? Number.MAX_SAFE_INTEGER;
}

const KINDS: readonly FamilyLine["kind"][] = [
  "delivered",
  "yes",
  "on-conditions",
  "does-not-go-on",
  "must-not-be-used",
];

/** What is said of the part itself first; then pair by pair as the parts stand; then deliveries, permissions, refusals. */
function inReadingOrder(lines: readonly FamilyLine[], number: string, members: readonly string[]): FamilyLine[] {
  const places = (line: FamilyLine): number[] => {
    const [a = 0, b = 0] = [line.tail, line.head].map((one) => members.indexOf(one));
    const isOfIt = line.tail === number || line.head === number;
    return [isOfIt ? 0 : 1, Math.min(a, b), Math.max(a, b), KINDS.indexOf(line.kind), a];
  };
  return lines
    .map((line) => ({ line, at: places(line) }))
    .sort((x, y) => x.at.reduce((found, at, i) => found || at - (y.at[i] as number), 0))
    .map(({ line }) => line);
}

function viewMember(knowledge: Knowledge, index: PartIndex, number: string): FamilyMember {
  const since = sinceOf(index, number);
  return {
    number,
    name: number === NO_PART ? "no part" : (knowledge.catalog.parts.get(number)?.name ?? number),
    since: Math.abs(since) === Number.MAX_SAFE_INTEGER ? undefined : since,
    repairOnly: statementsOf(knowledge.statementsByPart.get(number) ?? [], "service-only").length > 0,
  };
}

function goesAlongIn(knowledge: Knowledge, index: PartIndex, number: string): GoesAlong[] {
  const { catalog, statementsByPart } = knowledge;
  return statementsOf(statementsByPart.get(number) ?? [], "stands-in").flatMap((it: StatementOf<"stands-in">) =>
    // A refusal may name what would not help either; that goes along nowhere.
    it.with.includes(number) && (it.verdict === "yes" || it.verdict === "on-conditions")
      ? {
          ...cite(it),
          verdict: it.verdict,
          part: it.part,
          for: it.for,
          with: it.with.filter((one) => one !== number),
          scope: it.scope && sayScope(catalog, it.scope),
          inForce: isInForce(knowledge, index, it),
        }
      : [],
  );
}

/** Whether it holds for some car, with all that is said of the same part in the same place. */
function isInForce(knowledge: Knowledge, index: PartIndex, it: Said): boolean {
  return !familyLines(index, saidOf(knowledge, tailOf(it))).notInForce.includes(it);
}

function cite(it: Said): Cited {
  return { record: it.record, anchor: anchor(it) };
}
