import { haveOtherConditions, overlappingFigures } from "../overlapping-figures.ts";
import type { Rule } from "../rule.ts";

/** Two figures with other conditions are two settings. Where one car has both, they are called by two names. */
export const oneNameTwoConditions: Rule = {
  id: "one-name-two-conditions",
  gravity: "warning",
  about: "Figures that are measured in two ways on one car have two names.",
  why: "Under one name the figure of the one way is set in the other; or a scope runs on where it should have ended.",
  mend: "End the scope of the one where that of the other begins, or give the two ways two names.",
  example: {
    wrong: {
      "changes/1959/HY59-01.md": [
        "scope: line=B }\n  - { name: oil pressure, window: ..90,",
        "scope: line=B }\n  - { name: oil pressure, window: 150..165, unit: bar, conditions: cold, scope: line=B; my>=1959 }\n  - { name: oil pressure, window: ..90,",
      ],
    },
    right: {
      "changes/1959/HY59-01.md": [
        "scope: line=B }\n  - { name: oil pressure, window: ..90,",
        'scope: line=B }\n  - { name: "oil pressure, cold", window: 150..165, unit: bar, conditions: cold, scope: line=B; my>=1959 }\n  - { name: oil pressure, window: ..90,',
      ],
    },
  },
  find: (world) =>
    overlappingFigures(
      world,
      "end the one scope where the other begins, or give the two ways two names",
      haveOtherConditions,
    ),
};
