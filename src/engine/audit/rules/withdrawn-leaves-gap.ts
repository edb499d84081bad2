import { NONE } from "../../scope/diagram.ts";
import { placeOf } from "../place-of.ts";
import type { Rule } from "../rule.ts";

/** For every built car for which a withdrawn record said what the plant fitted, another record says so. */
export const withdrawnLeavesGap: Rule = {
  id: "withdrawn-leaves-gap",
  gravity: "warning",
  about: "What a withdrawn record said of a place is said by another record now.",
  why: "The old statement may have ended where the withdrawn one began: then nobody says what these cars have.",
  mend: "Let the record that holds instead cover these cars; or accept the finding, where nobody knows.",
  example: {
    wrong: { "changes/1959/HY59-01.md": ["issued:", "withdrawn: It was never built.\nissued:"] },
    right: {
      "changes/1959/HY59-01.md": ["issued:", "withdrawn: It was never built.\nissued:"],
      "changes/1958/FR58-01.md": [
        "scope: my>=1958\n",
        "components: [pump]\nscope: my>=1958\nbuilt:\n  - { place: pump, part: HT-101, scope: all }\n  - { place: lift arms, part: none, scope: line=H }\n",
      ],
    },
  },
  *find({ catalog, index }) {
    const { space, buildable } = catalog;
    for (const record of catalog.records.values()) {
      if (record.facts.withdrawn === undefined) continue;
      for (const it of record.stated) {
        if (it.type !== "built" && it.type !== "mixed") continue;
        const said = space.any((index.builtAt.get(it.place) ?? []).map((other) => other.scope.cars));
        const left = space.sets.minus(space.sets.and(buildable, it.scope.cars), said);
        if (left === NONE) continue;
        yield {
          at: placeOf(catalog, it, "scope"),
          message: `with ${record.id} withdrawn, no record says what sits in '${it.place}' on some of these cars`,
          hint: "let the record that holds instead cover these cars",
          records: [record.id, ...record.facts.instead],
          names: [it.place],
          cars: left,
        };
      }
    }
  },
};
