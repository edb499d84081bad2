import { isPermission, whereHolds } from "../../interchange/part-index.ts";
import { NONE } from "../../scope/diagram.ts";
import { placeOf } from "../place-of.ts";
import type { Rule } from "../rule.ts";

/** On no built car with the old number does a record refuse the new one in its place that a delivery rule sends for it. */
export const deliveredButRefused: Rule = {
  id: "delivered-but-refused",
  gravity: "error",
  about: "What is delivered for a number is not refused in its place on the same car.",
  why: "The counter hands over a part that must not go on.",
  mend: "Take the refused cars out of the delivery rule, or mend the refusal.",
  example: {
    wrong: {
      "changes/1959/HY59-01.md": [
        "why: It runs dry. }",
        "why: It runs dry. }\n  - { part: HT-102, for: HT-101, verdict: does-not-go-on, why: The pedal is in the way., scope: my=1957 }",
      ],
    },
    right: {
      "changes/1959/HY59-01.md": [
        "{ old: HT-101, new: HT-102, with: [HT-201] }\nstands-in:",
        "{ old: HT-101, new: HT-102, with: [HT-201], scope: my>=1958 }\nstands-in:\n  - { part: HT-102, for: HT-101, verdict: does-not-go-on, why: The pedal is in the way., scope: my=1957 }",
      ],
    },
  },
  *find({ catalog, index }) {
    const { sets } = catalog.space;
    for (const [old, rules] of index.ordersOf) {
      const built = sets.and(
        catalog.buildable,
        index.space.any((index.builtWith.get(old) ?? []).map((it) => it.scope.cars)),
      );
      for (const rule of rules)
        for (const refusal of index.standInsOf.get(rule.new) ?? []) {
          if (refusal.for !== old || isPermission(refusal)) continue;
          const both = sets.and(whereHolds(index, rule, built), whereHolds(index, refusal, built, refusal.place));
          if (both === NONE) continue;
          yield {
            at: placeOf(catalog, rule),
            message: `${rule.new} is delivered for ${old}, and refused in its place by ${refusal.record === rule.record ? "this record itself" : refusal.record} on the same cars`,
            hint: "take these cars out of the delivery rule, or mend the refusal",
            records: [rule.record, refusal.record],
            names: [old, rule.new],
            also: [{ ...placeOf(catalog, refusal), message: `the refusal: ${refusal.why ?? refusal.verdict}` }],
            cars: both,
          };
        }
    }
  },
};
