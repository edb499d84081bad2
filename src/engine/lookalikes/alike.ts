/**
 * "Which parts can the records not tell apart?"
 *
 *   A mark tells two parts apart if it is on record for both, with values that differ: measures by more than the tolerance.
 *   Paint on one and none on the other tells them apart, as long as the paint is there.
 *   Two parts are alike if no mark tells them apart. A group is alike if every two of it are; only groups that no further part
 *   belongs to are named. One part may be in several: what is not on record for it may be as on either of two that differ.
 *   Where there are very many groups, because little is on record of many parts, only the first are named.
 */
import Fraction from "fraction.js";
import type { Mark, MarkTable, Row, Value } from "./mark-table.ts";

/** Nobody reads more; and of parts with few marks in common there may be more groups than can be counted. */
export const MOST_GROUPS = 60;

/** Of the marks that are on record for both parts: those that tell them apart, and those that are the same on both. */
export function compareMarks(marks: readonly Mark[], one: Row, other: Row): { apart: Mark[]; same: Mark[] } {
  const both = marks.filter(({ id }) => one.marks.has(id) && other.marks.has(id));
  const isSame = (mark: Mark): boolean =>
    isSameValue(mark, one.marks.get(mark.id) as Value, other.marks.get(mark.id) as Value);
  return { apart: both.filter((mark) => !isSame(mark)), same: both.filter(isSame) };
}

export function alikeGroups({ marks, parts }: MarkTable): string[][] {
  const alike = parts.map((one) =>
    parts.map((other) => one !== other && compareMarks(marks, one, other).apart.length === 0),
  );
  const groups: number[][] = [];
  largest([], [...parts.keys()], [], (a, b) => alike[a]?.[b] === true, groups);
  return groups
    .filter((group) => group.length > 1)
    .map((group) => group.sort((a, b) => a - b))
    .sort(byFirst)
    .map((group) => group.map((i) => (parts[i] as Row).number));
}

/** Every largest group: grows `group` by one of `open` at a time; what was tried before is in `tried`. (Bron and Kerbosch, 1973.) */
function largest(
  group: readonly number[],
  open: readonly number[],
  tried: readonly number[],
  alike: (a: number, b: number) => boolean,
  found: number[][],
): void {
  if (found.length >= MOST_GROUPS) return;
  if (open.length === 0 && tried.length === 0) found.push([...group]);
  open.forEach((one, i) => {
    const withOne = (others: readonly number[]): number[] => others.filter((other) => alike(one, other));
    const before = [...tried, ...open.slice(0, i)];
    largest([...group, one], withOne(open.slice(i + 1)), withOne(before), alike, found);
  });
}

function byFirst(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((one, i) => one !== b[i]);
  return (a[at] ?? -1) - (b[at] ?? -1);
}

function isSameValue(mark: Mark, one: Value, other: Value): boolean {
  if (one instanceof Fraction && other instanceof Fraction)
    return (
      one
        .sub(other)
        .abs()
        .compare(mark.tolerance ?? 0) <= 0
    );
  return !(one instanceof Fraction) && one === other;
}
