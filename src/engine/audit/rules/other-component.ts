import { isPermission, type PartIndex } from "../../interchange/part-index.ts";
import type { Built, Mixed, StandsIn, Supersedes } from "../../records/statement.ts";
import { homesOf, sayKind, shareHome } from "../homes-of.ts";
import { placeOf } from "../place-of.ts";
import type { Fault, Rule, World } from "../rule.ts";

/**
 * A part that is permitted or delivered in the place of another one is of the same component, or both were fitted in places of one
 * component, or it is a kit that holds a part of it; where nothing belongs, the place that is named is one of its own. What a plant
 * fitted in a place is of the component of that place.
 */
export const otherComponent: Rule = {
  id: "other-component",
  gravity: "error",
  about:
    "What is fitted, permitted or delivered in the place of a part is a part of the same component, or a kit with one.",
  why: "One wrong digit makes a permission for something else, and the answer says yes.",
  mend: "Mend the number; or accept the finding with the reason: it really goes there.",
  example: {
    wrong: {
      "changes/1959/HY59-01.md": [
        "why: It runs dry. }",
        'why: It runs dry. }\n  - { part: HT-102, for: HT-201, verdict: "yes", scope: line=B }',
      ],
    },
    right: {
      "changes/1959/HY59-01.md": [
        "why: It runs dry. }",
        'why: It runs dry. }\n  - { part: HT-102, for: HT-101, verdict: "yes", scope: line=B }',
      ],
    },
  },
  *find(world) {
    for (const record of world.catalog.records.values())
      for (const it of record.statements)
        if (it.type === "built" || it.type === "mixed") yield* fittedElsewhere(world, it);
        else if (it.type === "supersedes") yield* delivered(world, it);
        else if (it.type === "stands-in" && isPermission(it)) yield* permitted(world, it);
  },
};

function* fittedElsewhere({ catalog, index }: World, it: Built | Mixed): Generator<Fault> {
  const home = catalog.places.get(it.place);
  for (const [i, part] of (it.type === "mixed" ? it.parts : [it.part]).entries()) {
    if (part === undefined || !home || ownHomes(index, part).has(home.id)) continue;
    yield {
      at: it.type === "mixed" ? placeOf(catalog, it, "parts", i) : placeOf(catalog, it, "part"),
      message: `${sayKind(index, part)} was fitted in '${it.place}', a place of another component (${home.name})`,
      hint: "mend the number or the place; where it really goes there, accept this",
      records: [it.record],
      names: [part, it.place],
      cars: catalog.space.sets.and(catalog.buildable, it.scope.cars),
    };
  }
}

/** Without the places where a plant put it: these are what is asked about. */
function ownHomes(index: PartIndex, part: string): ReadonlySet<string> {
  return homesOf({ ...index, builtWith: new Map() }, part);
}

function* delivered({ catalog, index }: World, it: Supersedes): Generator<Fault> {
  if (shareHome(index, it.old, it.new)) return;
  yield {
    at: placeOf(catalog, it, "new"),
    message: `${sayKind(index, it.new)} is delivered for a part of another component: ${sayKind(index, it.old)}`,
    hint: "mend the number; where it is really sent, accept this",
    records: [it.record],
    names: [it.new, it.old],
  };
}

function* permitted({ catalog, index }: World, it: StandsIn): Generator<Fault> {
  const fault = (field: "for" | "place", other: string, names: readonly string[]): Fault => ({
    at: placeOf(catalog, it, field),
    message: `${sayKind(index, it.part)} is permitted in a place of another component: ${other}`,
    hint: "mend the number or the place; where it really goes there, accept this",
    records: [it.record],
    names: [it.part, ...names],
  });
  if (it.for !== undefined) {
    if (!shareHome(index, it.part, it.for)) yield fault("for", sayKind(index, it.for), [it.for]);
  } else if (it.place !== undefined) {
    const home = catalog.places.get(it.place);
    if (home && !homesOf(index, it.part).has(home.id)) yield fault("place", `'${it.place}' (${home.name})`, [it.place]);
  }
}
