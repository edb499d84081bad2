import { groupBy } from "../../records/group-by.ts";
import { findUnits } from "../../settings/find-unit.ts";
import { placeOf } from "../place-of.ts";
import type { Rule } from "../rule.ts";

/** All figures of one setting of one component are stated in one unit, in one spelling. */
export const mixedUnits: Rule = {
  id: "mixed-units",
  gravity: "error",
  about: "Every figure of a setting is stated in the same unit.",
  why: "Twelve times too tight: lb-in read as lb-ft because the years before were in lb-ft.",
  mend: "Convert the figure, or give it the unit of the others.",
  example: {
    wrong: { "changes/1959/HY59-01.md": ["unit: bar, component: lift, scope: line=H }", "unit: psi, scope: line=H }"] },
    right: { "changes/1959/HY59-01.md": ["unit: bar, component: lift, scope: line=H }", "unit: bar, scope: line=H }"] },
  },
  *find({ catalog, index }) {
    for (const [, group] of groupBy(index.settings, (it) => [`${it.component} ${it.name}`])) {
      const byUnit = groupBy(group, (it) => [it.unit]);
      if (byUnit.size < 2) continue;
      // The unit of most figures is taken for the right one; of equally many one that the table has, then the first.
      const [[usual, most] = ["", []], ...others] = [...byUnit].sort(
        ([a, as], [b, bs]) => bs.length - as.length || findUnits(b).length - findUnits(a).length,
      );
      for (const it of others.flatMap(([, figures]) => figures)) {
        const [first] = most;
        yield {
          at: placeOf(catalog, it, "unit"),
          message: `'${it.name}' is in ${it.unit} here, and in ${usual} elsewhere`,
          hint: `state it in ${usual}`,
          records: [it.record, ...(first ? [first.record] : [])],
          names: [it.name],
          ...(first ? { also: [{ ...placeOf(catalog, first, "unit"), message: `in ${usual}` }] } : {}),
        };
      }
    }
  },
};
