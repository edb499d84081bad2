import { whereHolds } from "../../interchange/part-index.ts";
import { NONE } from "../../scope/diagram.ts";
import { bothFitted } from "../both-fitted.ts";
import { pairs } from "../pairs.ts";
import { placeOf } from "../place-of.ts";
import type { Rule } from "../rule.ts";
import { whose } from "../whose.ts";

/**
 * Of any two rules for one number that deliver other numbers, no built car is in the scopes of both. Where each asks for a part of
 * the same component on the car today, each speaks of its own part.
 */
export const twoDeliveries: Rule = {
  id: "two-deliveries",
  gravity: "error",
  about: "Who orders a number for a car gets one other number, not several.",
  why: "A rule without a scope overrules one with a scope, and the car that was to be spared gets the wrong part.",
  mend: "Give each rule the scope that it is meant for. What is to be delivered together goes into 'with'.",
  example: {
    wrong: {
      "changes/1959/HY59-01.md": [
        "with: [HT-201] }\nstands-in:",
        "with: [HT-201] }\n  - { old: HT-101, new: HT-290, scope: line=H }\nstands-in:",
      ],
    },
    right: {
      "changes/1959/HY59-01.md": [
        "{ old: HT-101, new: HT-102, with: [HT-201] }\nstands-in:",
        "{ old: HT-101, new: HT-102, with: [HT-201], scope: line=B }\n  - { old: HT-101, new: HT-290, scope: line=H }\nstands-in:",
      ],
    },
  },
  *find({ catalog, index }) {
    const { sets } = catalog.space;
    for (const [old, rules] of index.ordersOf)
      for (const [one, other] of pairs(rules)) {
        if (one.new === other.new) continue;
        const both = sets.minus(
          sets.and(whereHolds(index, one, catalog.buildable), whereHolds(index, other, catalog.buildable)),
          bothFitted(catalog, one.scope, other.scope),
        );
        if (both === NONE) continue;
        const by = whose(other.record, one.record);
        yield {
          at: placeOf(catalog, other),
          message: `who orders ${old} gets ${other.new} here, and ${one.new} by ${by} for the same cars`,
          hint: "give each rule the scope that it is meant for; what is delivered together goes into 'with'",
          records: [other.record, one.record],
          names: [old, other.new, one.new],
          also: [{ ...placeOf(catalog, one), message: `${old} → ${one.new}` }],
          cars: both,
        };
      }
  },
};
