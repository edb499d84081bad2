/**
 * What records say between parts, as the lines of a drawing. Every line is read the same way: the part at its tail, where the
 * part at its head belongs. So a newer part that is delivered instead of an older one is at the tail, too.
 *
 *   Statements of one kind, between the same two parts and in the same direction, are one line.
 *   If the line back is the same in all it says, both are one line with two heads.
 *   A statement whose instruction was ended for all cars is no line. Nor is a permission that is refused for all its cars.
 *   A line is about some cars only, and says so,
 *     if it permits or delivers, and one of its statements is limited by a scope, an ending or a refusal;
 *     if it refuses, and each of its statements is.
 *   So where a line says less than the records do, it says less of what may be done, and more of what may not.
 */
import { isPermission, type PartIndex, whereHolds } from "../interchange/part-index.ts";
import type { StandInVerdict, StandsIn, Supersedes } from "../records/statement.ts";
import { type CarSet, NONE } from "../scope/diagram.ts";

/** Stands for "nothing is fitted there" where a part's number would stand. */
export const NO_PART = "";

export type LineKind = "delivered" | StandInVerdict;

export interface FamilyLine {
  readonly tail: string;
  readonly head: string;
  readonly kind: LineKind;
  /** It holds the other way as well. */
  readonly bothWays: boolean;
  readonly someCars: boolean;
  /** Other parts have to go along. */
  readonly withOthers: boolean;
  /** There is work to do. */
  readonly withWork: boolean;
  readonly by: readonly (StandsIn | Supersedes)[];
}

type Said = StandsIn | Supersedes;

export function familyLines(
  index: PartIndex,
  statements: readonly Said[],
): { lines: FamilyLine[]; notInForce: readonly Said[] } {
  const { sets } = index.space;
  const refused = new Map<string, CarSet>();
  for (const it of statements)
    if (isRefusal(it)) refused.set(way(it), sets.or(refused.get(way(it)) ?? NONE, holdsFor(index, it)));

  const lines = new Map<string, FamilyLine>();
  const notInForce: Said[] = [];
  for (const it of statements) {
    const refusal = isRefusal(it);
    const holds = holdsFor(index, it);
    const against = it.type === "stands-in" && !refusal ? (refused.get(way(it)) ?? NONE) : NONE;
    const left = sets.minus(holds, against);
    if (left === NONE) {
      notInForce.push(it);
      continue;
    }
    const limited = it.scope !== undefined || left !== index.catalog.buildable;
    const key = JSON.stringify([way(it), kindOf(it)]);
    const before = lines.get(key);
    lines.set(key, {
      tail: tailOf(it),
      head: headOf(it),
      kind: kindOf(it),
      bothWays: false,
      someCars: before === undefined ? limited : refusal ? before.someCars && limited : before.someCars || limited,
      withOthers: !refusal && (it.with.length > 0 || before?.withOthers === true),
      withWork: it.type === "stands-in" && !refusal && (it.do !== undefined || before?.withWork === true),
      by: [...(before?.by ?? []), it],
    });
  }
  return { lines: joinWays([...lines.values()]), notInForce };
}

export function tailOf(it: Said): string {
  return it.type === "supersedes" ? it.new : it.part;
}

export function headOf(it: Said): string {
  return it.type === "supersedes" ? it.old : (it.for ?? NO_PART);
}

function joinWays(lines: readonly FamilyLine[]): FamilyLine[] {
  const isBack = (a: FamilyLine, b: FamilyLine): boolean =>
    a.tail === b.head &&
    a.head === b.tail &&
    a.kind === b.kind &&
    a.someCars === b.someCars &&
    a.withOthers === b.withOthers &&
    a.withWork === b.withWork;
  return lines.flatMap((line, i) => {
    const back = lines.findIndex((other) => isBack(line, other));
    if (back === -1 || back === i) return [line];
    if (back < i) return [];
    // Whichever is stated first: the same line.
    const [tail, head] = [line.tail, line.head].sort() as [string, string];
    return [{ ...line, tail, head, bothWays: true, by: [...line.by, ...(lines[back] as FamilyLine).by] }];
  });
}

function holdsFor(index: PartIndex, it: Said): CarSet {
  return whereHolds(index, it, index.catalog.buildable);
}

function isRefusal(it: Said): boolean {
  return it.type === "stands-in" && !isPermission(it);
}

function kindOf(it: Said): LineKind {
  return it.type === "supersedes" ? "delivered" : it.verdict;
}

function way(it: Said): string {
  return JSON.stringify([tailOf(it), headOf(it)]);
}
