import { type CarSet, NONE } from "../../scope/diagram.ts";
import { inRecord, placeOf } from "../place-of.ts";
import type { Rule } from "../rule.ts";
import { runningNumbers } from "../running-numbers.ts";

/**
 * Where statements about a place part the cars of one kind by running numbers or dates, they leave none of that kind out. Cars are
 * of one kind when they are alike in everything but such numbers. And a record of the kind 'running' that says what the plant
 * fitted leaves out none of the cars that it is about: of each something is said in one of its places.
 */
export const runningChangeGap: Rule = {
  id: "running-change-gap",
  gravity: "error",
  about:
    "Between the last car with the old part and the first one with the new part there is no gap, and no car that the change is about is left out.",
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
    let told: CarSet = NONE;
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
      told = space.sets.or(told, gap);
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
    for (const record of catalog.records.values()) {
      const built = record.statements.filter((it) => it.type === "built" || it.type === "mixed");
      if (!record.facts.kinds.includes("running") || built.length === 0) continue;
      const places = new Set(built.map(({ place }) => place));
      const said = [...places].flatMap((place) => (index.builtAt.get(place) ?? []).map((it) => it.scope.cars));
      const left = space.sets.minus(space.sets.and(buildable, record.scope.cars), space.any([told, ...said]));
      if (left === NONE) continue;
      yield {
        at: inRecord(record, "scope"),
        message: `this running change is about cars of which nothing is said in ${[...places].map((place) => `'${place}'`).join(", ")}`,
        hint: "say with 'built' what these cars have, or take them out of the scope of the record",
        records: [record.id],
        names: [...places],
        cars: left,
      };
    }
  },
};
