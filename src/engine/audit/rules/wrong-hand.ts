import { placeOf } from "../place-of.ts";
import type { Rule } from "../rule.ts";

/**
 * No part for one hand was fitted in a place whose name says the other one, as English has it, and in no place parts for both hands
 * were fitted.
 */
export const wrongHand: Rule = {
  id: "wrong-hand",
  gravity: "error",
  about: "A part for one hand was fitted on that side only.",
  why: "The counter hands over the one for the other side.",
  mend: "Mend the number or the place; or take 'hand' from a part that sits on both sides.",
  example: {
    wrong: {
      "components/hydraulics.yaml": ["places: [pump gasket]", "places: [left gasket, right gasket]"],
      "parts/gasket.yaml": [
        "name: gasket kit }",
        "name: gasket kit }\n  - { number: HT-210L, name: seal, hand: left }",
      ],
      "changes/1959/HY59-01.md": ["built:\n", "built:\n  - { place: right gasket, part: HT-210L, scope: plant=K }\n"],
    },
    right: {
      "components/hydraulics.yaml": ["places: [pump gasket]", "places: [left gasket, right gasket]"],
      "parts/gasket.yaml": [
        "name: gasket kit }",
        "name: gasket kit }\n  - { number: HT-210L, name: seal, hand: left }",
      ],
      "changes/1959/HY59-01.md": ["built:\n", "built:\n  - { place: left gasket, part: HT-210L, scope: plant=K }\n"],
    },
  },
  *find({ catalog, index }) {
    for (const [place, statements] of index.builtAt) {
      const handed = statements.flatMap((it) =>
        (it.type === "mixed" ? it.parts : [it.part ?? ""]).flatMap((number) => {
          const hand = catalog.parts.get(number)?.hand;
          return hand === undefined ? [] : [{ it, number, hand }];
        }),
      );
      // Without a word for it the side is that of the part which is told first.
      const side = sideOf(place) ?? handed[0]?.hand;
      for (const { it, number, hand } of handed) {
        if (hand === side) continue;
        yield {
          at: placeOf(catalog, it),
          message: `${number} is for the ${hand} side, and fitted in '${place}'`,
          hint: "mend the number or the place; or take 'hand' from a part that sits on both sides",
          records: [it.record],
          names: [number, place],
          cars: catalog.space.sets.and(catalog.buildable, it.scope.cars),
        };
      }
    }
  },
};

function sideOf(place: string): "left" | "right" | undefined {
  const [side, ...others] = new Set(place.toLowerCase().match(/\b(?:left|right)\b/g) ?? []);
  return others.length > 0 ? undefined : (side as "left" | "right" | undefined);
}
