import { type CarSet, NONE } from "../../scope/diagram.ts";
import type { Space } from "../../scope/space.ts";
import { placeOf } from "../place-of.ts";
import type { Rule } from "../rule.ts";

/**
 * Where statements about a place part the cars of one kind by running numbers or dates, they leave none of that kind out. Cars are
 * of one kind when they are alike in everything but such numbers.
 */
export const runningChangeGap: Rule = {
  id: "running-change-gap",
  gravity: "error",
  about: "Between the last car with the old part and the first one with the new part there is no gap.",
  why: "A car built in the gap has no part on record, and every question about it ends there.",
  mend: "Let the later stretch begin where the earlier one ends; where the plant used either, say so with 'mixed'.",
  example: {
    wrong: {
      "changes/1959/HY59-01.md": [
        "part: HT-101, scope: line=B; at=K59#0412- }",
        "part: HT-101, scope: line=B; at=K59#0400- }",
      ],
    },
    right: {
      "changes/1959/HY59-01.md": [
        "mixed:\n",
        "mixed:\n  - { place: pump, parts: [HT-101, HT-102], scope: line=B; at=K59#0412+; at=K59#0420- }\n",
      ],
    },
  },
  *find({ catalog, index }) {
    const { space, buildable } = catalog;
    const numbers = runningNumbers(space);
    for (const [place, statements] of index.builtAt) {
      const parted = statements.filter((it) =>
        [...space.sets.traitsOf(it.scope.cars)].some((trait) => numbers.has(trait)),
      );
      if (parted.length === 0) continue;
      const kinds = parted.map((it) => space.sets.forget(space.sets.and(buildable, it.scope.cars), numbers));
      const said = space.any(statements.map((it) => it.scope.cars));
      const gap: CarSet = space.sets.minus(space.sets.and(buildable, space.any(kinds)), said);
      const [first] = parted;
      if (gap === NONE || !first) continue;
      yield {
        at: placeOf(catalog, first, "scope"),
        message: `of '${place}' nothing is said for some cars between or beside the stretches of this running change`,
        hint: "let one stretch begin where the other ends; where the plant used either part, say so with 'mixed'",
        records: [...new Set(parted.map(({ record }) => record))],
        names: [place],
        also: parted.slice(1).map((it) => ({ ...placeOf(catalog, it, "scope"), message: "another stretch" })),
        cars: gap,
      };
    }
  },
};

/** Sequence numbers and dates of the car, and the serials of its components. */
function runningNumbers(space: Space): ReadonlySet<number> {
  return new Set(
    [...space.declared.entries()].flatMap(([trait, { role, kind, of }]) =>
      role === "sequence" || role === "date" || kind === "serial" || (kind === "whole" && of !== undefined)
        ? [trait]
        : [],
    ),
  );
}
