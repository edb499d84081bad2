import type { Catalog, Component } from "../../records/catalog.ts";
import { placeOf } from "../place-of.ts";
import type { Rule } from "../rule.ts";

/** What the plant fitted in a place of a component that goes by a number of its own is never told by the car's number or date. */
export const ownNumberNotUsed: Rule = {
  id: "own-number-not-used",
  gravity: "error",
  about: "Parts of a component that goes by a number of its own are told by that number, not by the car's.",
  why: "Units go to several plants and are swapped: the number on the car's plate then says nothing about them.",
  mend: "Write the scope with the component's number; 'goes-by' at the component names the trait.",
  example: {
    wrong: {
      "components/hydraulics.yaml": [
        "{ id: pump, name: hydraulic pump,",
        "{ id: pump, goes-by: pumpno, name: hydraulic pump,",
      ],
      "vehicles/traits.yaml": [
        "  - { id: PT,",
        '  - { id: pumpno, kind: whole, of: line, from: 1, to: 9999, label: pump number, find: the flange, effort: 3, phrase: "with pump number {}", otherwise: "not with pump number {}" }\n  - { id: PT,',
      ],
    },
    right: {
      "components/hydraulics.yaml": [
        "{ id: pump, name: hydraulic pump,",
        "{ id: pump, goes-by: number, name: hydraulic pump,",
      ],
    },
  },
  *find({ catalog, index }) {
    const { space } = catalog;
    const ofTheCar = (["sequence", "date"] as const).flatMap((role) => space.role(role) ?? []);
    for (const [place, statements] of index.builtAt) {
      const goesBy = numberOf(catalog, catalog.places.get(place));
      const own = goesBy === undefined ? undefined : space.find(goesBy);
      if (own === undefined) continue;
      for (const it of statements) {
        const asks = space.sets.traitsOf(it.scope.cars);
        if (!ofTheCar.some((trait) => trait !== own && asks.has(trait))) continue;
        yield {
          at: placeOf(catalog, it, "scope"),
          message: `'${place}' goes by ${space.trait(own).label}, and this scope asks for the car's own number or date`,
          hint: `write it with ${space.trait(own).id}`,
          records: [it.record],
          names: [place],
          cars: space.sets.and(catalog.buildable, it.scope.cars),
        };
      }
    }
  },
};

/** Its own, or that of the component which it is part of. */
function numberOf({ components }: Catalog, component: Component | undefined): string | undefined {
  const seen = new Set<Component>();
  for (let at = component; at && !seen.has(at); at = at.under === undefined ? undefined : components.get(at.under)) {
    if (at["goes-by"] !== undefined) return at["goes-by"];
    seen.add(at);
  }
  return undefined;
}
