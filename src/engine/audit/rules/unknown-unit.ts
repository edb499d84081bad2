import { nearest } from "../../scope/nearest.ts";
import { findUnits } from "../../settings/find-unit.ts";
import { UNITS } from "../../settings/unit-table.ts";
import { placeOf } from "../place-of.ts";
import type { Rule } from "../rule.ts";

/** A unit is one of the table, or a word for something counted that is no slip of one of the table. */
export const unknownUnit: Rule = {
  id: "unknown-unit",
  gravity: "warning",
  about: "A unit that is not in the table is no slip of one that is.",
  why: "A reading cannot be judged, converted or compared: the figure stands there and answers nothing.",
  mend: "Write the unit that is meant. Counted things (turns, notches) may be called as they are.",
  example: {
    wrong: { "changes/1959/HY59-01.md": ["nominal: 130, unit: bar,", "nominal: 130, unit: barr,"] },
    right: {},
  },
  *find({ catalog, index }) {
    const words = UNITS.flatMap(({ id, says }) => [id, ...says]);
    for (const it of index.settings) {
      const meant = findUnits(it.unit).length > 0 ? undefined : nearest(it.unit, words);
      if (meant === undefined) continue;
      yield {
        at: placeOf(catalog, it, "unit"),
        message: `the unit '${it.unit}' of '${it.name}' is not known`,
        hint: `did you mean '${meant}'? If it is a thing that is counted, accept this with the reason`,
        records: [it.record],
        names: [it.name, it.unit],
      };
    }
  },
};
