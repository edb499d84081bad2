import type { Space } from "../scope/space.ts";

/** The traits by which cars of one kind are counted: sequence numbers and dates of the car, and the serials of its components. */
export function runningNumbers(space: Space): ReadonlySet<number> {
  return new Set(
    [...space.declared.entries()].flatMap(([trait, { role, kind, of }]) =>
      role === "sequence" || role === "date" || kind === "serial" || (kind === "whole" && of !== undefined)
        ? [trait]
        : [],
    ),
  );
}
