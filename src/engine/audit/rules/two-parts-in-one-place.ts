import type { Built, Mixed } from "../../records/statement.ts";
import { NONE } from "../../scope/diagram.ts";
import { pairs } from "../pairs.ts";
import { placeOf } from "../place-of.ts";
import type { Rule } from "../rule.ts";
import { whose } from "../whose.ts";

/** Of any two statements about a place that name other parts, no built car is in the scopes of both. */
export const twoPartsInOnePlace: Rule = {
  id: "two-parts-in-one-place",
  gravity: "error",
  about: "Of every place of every car at most one statement says what the plant fitted there.",
  why: "Two true-looking records contradict each other: the counter orders by the one, the car has the other.",
  mend: "End the scope of the one where that of the other begins; a stretch in which the plant used either is 'mixed'.",
  example: {
    wrong: {
      "changes/1959/HY59-01.md": ["part: HT-101, scope: line=B; at=K59#0412- }", "part: HT-101, scope: line=B }"],
    },
    right: {},
  },
  *find({ catalog, index }) {
    const { sets } = catalog.space;
    for (const [place, statements] of index.builtAt)
      for (const [one, other] of pairs(statements)) {
        if (sayParts(one) === sayParts(other)) continue;
        const both = sets.and(catalog.buildable, sets.and(one.scope.cars, other.scope.cars));
        if (both === NONE) continue;
        yield {
          at: placeOf(catalog, other, "scope"),
          message: `'${place}' holds ${sayParts(other)} here, and ${sayParts(one)} by ${whose(other.record, one.record)} on the same cars`,
          hint: "end the one scope where the other begins",
          records: [other.record, one.record],
          names: [place, ...partsOf(other), ...partsOf(one)],
          also: [{ ...placeOf(catalog, one, "scope"), message: `${sayParts(one)} in the same place` }],
          cars: both,
        };
      }
  },
};

function partsOf(it: Built | Mixed): string[] {
  return it.type === "mixed" ? [...it.parts] : it.part === undefined ? [] : [it.part];
}

function sayParts(it: Built | Mixed): string {
  return it.type === "mixed" ? `any of ${[...it.parts].sort().join(", ")}` : (it.part ?? "nothing");
}
