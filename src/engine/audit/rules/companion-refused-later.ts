import { belongsAt, isPart } from "../../interchange/belongs.ts";
import { isPermission, type PartIndex, whereHolds } from "../../interchange/part-index.ts";
import { builtPlaces } from "../../interchange/places.ts";
import type { ChangeRecord } from "../../records/catalog.ts";
import type { StandsIn } from "../../records/statement.ts";
import { type CarSet, NONE } from "../../scope/diagram.ts";
import { placeOf } from "../place-of.ts";
import { reachedBy } from "../reached-by.ts";
import type { Rule } from "../rule.ts";

/**
 * What goes along by a permission is not refused without a scope, in place of what it takes the place of on these cars, by another
 * record that was issued no earlier. Such a refusal speaks of the part by itself, and the set stays permitted: who wrote the permission
 * later knew of it, who wrote the refusal later may have meant the set too.
 */
export const companionRefusedLater: Rule = {
  id: "companion-refused-later",
  gravity: "warning",
  about: "A part that goes along is not refused everywhere by a later record.",
  why: "The refusal without a scope leaves the set permitted; if the part is bad, it still goes on with the set.",
  mend: "Give the refusal its cars, if the set is meant too: then it closes the set; else accept the finding in the refusing record.",
  example: {
    wrong: {
      "parts/gasket.yaml": ["name: gasket kit }", "name: gasket kit }\n  - { number: HT-205, name: thicker gasket }"],
      "changes/1958/FR58-01.md": [
        "issued: 1958-03-01",
        "issued: 1960-03-01",
        "scope: my>=1958\n",
        "scope: my>=1958\nbuilt:\n  - { place: pump gasket, part: HT-205, scope: line=B }\nstands-in:\n  - { part: HT-201, for: HT-205, verdict: must-not-be-used, why: It leaks. }\n",
      ],
    },
    right: {
      "parts/gasket.yaml": ["name: gasket kit }", "name: gasket kit }\n  - { number: HT-205, name: thicker gasket }"],
      "changes/1958/FR58-01.md": [
        "issued: 1958-03-01",
        "issued: 1960-03-01",
        "scope: my>=1958\n",
        "scope: my>=1958\nbuilt:\n  - { place: pump gasket, part: HT-205, scope: line=B }\nstands-in:\n  - { part: HT-201, for: HT-205, verdict: must-not-be-used, why: It leaks., scope: line=B }\n",
      ],
    },
  },
  *find({ catalog, index }) {
    const record = ({ record: id }: StandsIn): ChangeRecord => catalog.records.get(id) as ChangeRecord;
    for (const statements of index.standInsOf.values())
      for (const it of statements) {
        if (!isPermission(it)) continue;
        for (const companion of it.with)
          for (const refusal of index.standInsOf.get(companion) ?? []) {
            if (isPermission(refusal) || refusal.scope !== undefined || refusal.record === it.record) continue;
            if (lastSaid(record(refusal)) < record(it).facts.issued) continue;
            const cars = replaced(index, refusal, reachedBy(index, it));
            if (cars === NONE) continue;
            yield {
              at: placeOf(catalog, refusal),
              message: `${companion} is refused here whatever the car, and stays permitted in the set of ${it.part}, which ${it.record} permits`,
              hint: `if the set is meant too, give the refusal a scope; else accept this with the reason`,
              records: [refusal.record, it.record],
              names: [companion, it.part, ...(refusal.for === undefined ? [] : [refusal.for])],
              also: [
                {
                  ...placeOf(catalog, it, "with", it.with.indexOf(companion)),
                  message: `${companion} goes along here`,
                },
              ],
              cars,
            };
          }
      }
  },
};

function lastSaid({ facts }: ChangeRecord): string {
  return facts.revised ?? facts.issued;
}

/** Those of the cars on which the companion takes the place that the refusal is about. */
function replaced(index: PartIndex, refusal: StandsIn, cars: CarSet): CarSet {
  const held = (place: string | undefined): CarSet => whereHolds(index, refusal, cars, place);
  if (refusal.for === undefined) return held(refusal.place);
  const places = refusal.place === undefined ? builtPlaces(index, refusal.for) : [refusal.place];
  return index.space.any(
    places.flatMap((place) =>
      belongsAt(index, place, held(place)).flatMap((it) => (isPart(it.belonging, refusal.for) ? [it.cars] : [])),
    ),
  );
}
