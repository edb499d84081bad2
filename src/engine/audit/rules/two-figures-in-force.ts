import { haveOtherConditions, overlappingFigures } from "../overlapping-figures.ts";
import type { Rule } from "../rule.ts";

/** No two figures of one name that say otherwise are in force on one built car, unless each says how it is measured, and otherwise. */
export const twoFiguresInForce: Rule = {
  id: "two-figures-in-force",
  gravity: "error",
  about: "Of every setting and every interval at most one figure is in force on a car.",
  why: "The mechanic finds two figures and takes the one that the reading agrees with.",
  mend: "End the scope of the one where that of the other begins, or cancel the earlier record. What is another quantity gets a name of its own.",
  example: {
    wrong: {
      "changes/1959/HY59-01.md": [
        "component: lift, scope: line=H }",
        "component: lift, scope: line=H }\n  - { name: oil pressure, window: ..95, unit: bar, component: lift, scope: my>=1960 }",
      ],
    },
    right: {
      "changes/1959/HY59-01.md": [
        "component: lift, scope: line=H }",
        "component: lift, scope: line=H }\n  - { name: oil pressure, window: ..95, unit: bar, component: lift, scope: line=B; my>=1960 }",
      ],
    },
  },
  find: (world) =>
    overlappingFigures(
      world,
      "end the one scope where the other begins, or give what is another quantity another name",
      (one, other) => !haveOtherConditions(one, other),
    ),
};
