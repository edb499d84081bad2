import { carsBuiltWith, whereHolds } from "../../interchange/part-index.ts";
import { NONE } from "../../scope/diagram.ts";
import { placeOf } from "../place-of.ts";
import type { Rule } from "../rule.ts";

/** Where a number is split into several, each built car that left the plant with it is in the scope of one of the rules. */
export const splitLeavesCarsOut: Rule = {
  id: "split-leaves-cars-out",
  gravity: "warning",
  about: "Where a number is delivered as several others, every car built with it gets one of them.",
  why: "For the cars left out the number that is no longer supplied stays current.",
  mend: "Widen a scope, or add the rule for the cars left out.",
  example: {
    wrong: {
      "changes/1959/HY59-01.md": [
        "{ old: HT-101, new: HT-102, with: [HT-201] }\nstands-in:",
        "{ old: HT-101, new: HT-102, with: [HT-201], scope: line=B; my<=1958 }\n  - { old: HT-101, new: HT-290, scope: line=H }\nstands-in:",
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
    for (const [old, rules] of index.ordersOf) {
      if (new Set(rules.map((rule) => rule.new)).size < 2) continue;
      const built = carsBuiltWith(index, old);
      const served = index.space.any(rules.map((rule) => whereHolds(index, rule, catalog.buildable)));
      const left = sets.minus(sets.and(catalog.buildable, built), served);
      const [first] = rules;
      if (left === NONE || !first) continue;
      yield {
        at: placeOf(catalog, first),
        message: `${old} is delivered as ${[...new Set(rules.map((rule) => rule.new))].join(" or ")}, but some cars built with it get neither`,
        hint: "widen a scope, or add the rule for these cars",
        records: [...new Set(rules.map(({ record }) => record))],
        names: [old, ...rules.map((rule) => rule.new)],
        also: rules.slice(1).map((it) => ({ ...placeOf(catalog, it), message: `${old} → ${it.new}` })),
        cars: left,
      };
    }
  },
};
