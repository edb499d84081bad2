import { whereHolds } from "../../interchange/part-index.ts";
import type { StandsIn } from "../../records/statement.ts";
import { NONE } from "../../scope/diagram.ts";
import { placeOf } from "../place-of.ts";
import type { Rule } from "../rule.ts";

/**
 * Of every two parts of which one direction is stated, the other one is too; what another record has ended for all cars states
 * nothing. A kit is never what belongs on a car.
 */
export const otherDirectionUnsaid: Rule = {
  id: "other-direction-unsaid",
  gravity: "warning",
  about: "Where a record says whether one part may stand in for another, a record also says it the other way round.",
  why: "Whoever has the other part in the hand finds nothing, and tries it.",
  mend: "State the other direction, or accept the finding here with the reason: not tried.",
  example: {
    wrong: {
      "changes/1959/HY59-01.md": [
        "  - { part: HT-101, for: HT-102, verdict: must-not-be-used, why: It runs dry. }\n",
        "",
      ],
    },
    right: {},
  },
  *find({ catalog, index }) {
    const stated = new Set<string>();
    const states = (it: StandsIn): boolean => whereHolds(index, it, catalog.buildable, it.place) !== NONE;
    for (const [part, statements] of index.standInsOf)
      for (const it of statements) if (it.for !== undefined && states(it)) stated.add(`${part} ${it.for}`);
    const told = new Set<string>();
    for (const [part, statements] of index.standInsOf)
      for (const it of statements) {
        if (it.for === undefined || index.contentsOf.has(part) || index.contentsOf.has(it.for)) continue;
        const turned = `${it.for} ${part}`;
        if (stated.has(turned) || told.has(turned) || !states(it)) continue;
        told.add(turned);
        yield {
          at: placeOf(catalog, it),
          message: `nothing is said of ${it.for} where ${part} belongs`,
          hint: `state the other direction too, or accept this with the reason that it was not tried`,
          records: [it.record],
          names: [part, it.for],
        };
      }
  },
};
