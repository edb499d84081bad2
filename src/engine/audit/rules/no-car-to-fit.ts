import { carsBuiltWith, isPermission, whereHolds } from "../../interchange/part-index.ts";
import { NONE } from "../../scope/diagram.ts";
import { onOtherWays } from "../on-other-ways.ts";
import { placeOf } from "../place-of.ts";
import type { Rule } from "../rule.ts";

/**
 * Within the scope of a permission there is a built car with the part that it speaks of, and within that of a delivery rule one with
 * the number that is ordered, if any car was built with it. Where that part may have come to a car in
 * another way (delivered, in a kit, for repair, in place of yet another one), nothing is said.
 */
export const noCarToFit: Rule = {
  id: "no-car-to-fit",
  gravity: "warning",
  about: "A permission, or a delivery rule, speaks of a part that some car in its scope has.",
  why: "The statement reaches no car; the one that it was meant for is told 'not on record', or gets the old number.",
  mend: "Mend the number or the scope, or say with 'built' which cars had the part.",
  example: {
    wrong: {
      "changes/1959/HY59-01.md": [
        "why: It runs dry. }",
        'why: It runs dry. }\n  - { part: HT-201, for: HT-101, verdict: "yes", scope: line=H; my>=1960 }',
      ],
    },
    right: {
      "changes/1959/HY59-01.md": [
        "why: It runs dry. }",
        'why: It runs dry. }\n  - { part: HT-201, for: HT-101, verdict: "yes", scope: line=H; my=1959 }',
      ],
    },
  },
  *find({ catalog, index }) {
    const otherwise = onOtherWays(index);
    for (const [part, statements] of index.standInsOf)
      for (const it of statements) {
        if (it.for === undefined || !isPermission(it) || otherwise.has(it.for)) continue;
        // What has no place on the car (oil, brake fluid) is never said to be built in.
        if (catalog.components.get(catalog.parts.get(it.for)?.component ?? "")?.places.length === 0) continue;
        const built = carsBuiltWith(index, it.for);
        const cars = catalog.space.sets.and(catalog.buildable, whereHolds(index, it, built, it.place));
        // A statement that was ended for all its cars is history.
        if (cars !== NONE || whereHolds(index, it, catalog.buildable, it.place) === NONE) continue;
        yield {
          at: placeOf(catalog, it, "for"),
          message: `${part} is permitted in place of ${it.for}, and no car in the scope has ${it.for}`,
          hint:
            built === NONE
              ? `say with 'built' which cars had ${it.for}, or mend the number`
              : "mend the number or the scope",
          records: [it.record],
          names: [part, it.for],
        };
      }
    for (const [old, rules] of index.ordersOf) {
      const built = carsBuiltWith(index, old);
      if (built === NONE || otherwise.has(old)) continue;
      for (const rule of rules) {
        const cars = whereHolds(index, rule, catalog.buildable);
        if (cars === NONE || catalog.space.sets.meet(cars, built)) continue;
        yield {
          at: placeOf(catalog, rule, "old"),
          message: `${rule.new} is delivered for ${old}, and no car in the scope has ${old}`,
          hint: "mend the number or the scope",
          records: [rule.record],
          names: [rule.new, old],
        };
      }
    }
  },
};
