import { distance } from "fastest-levenshtein";
import { isPermission } from "../../interchange/part-index.ts";
import { builtPlaces } from "../../interchange/places.ts";
import type { Catalog, Part } from "../../records/catalog.ts";
import type { StandsIn, Supersedes } from "../../records/statement.ts";
import { partsIn } from "../parts-in.ts";
import { placeOf } from "../place-of.ts";
import type { Fault, Rule, World } from "../rule.ts";

/**
 * A part for one hand that takes the place of one for both brings its twin along. Where a part for one hand has to go along, its twin for the other hand goes along too, or is the part itself. The twin is the part of
 * the same component for the other hand whose number differs in one sign. What goes along with a part for the same hand is its own matter.
 */
export const oneHandOnly: Rule = {
  id: "one-hand-only",
  gravity: "error",
  about: "A part for one hand that goes along brings the one for the other hand.",
  why: "Half a pair is ordered, and the car stands with two kinds on one axle.",
  mend: "Add the other hand to 'with' or to what is to be done.",
  example: {
    wrong: {
      "parts/gasket.yaml": [
        "name: gasket kit }",
        "name: gasket kit }\n  - { number: HT-210L, name: seal, hand: left }\n  - { number: HT-210R, name: seal, hand: right }",
      ],
      "changes/1959/HY59-01.md": ["service-only: [HT-201]", "service-only: [HT-201, HT-210L, HT-210R]"],
      "changes/1958/FR58-01.md": [
        "scope: my>=1958\n",
        "scope: my>=1958\nsupersedes:\n  - { old: HT-201, new: HT-290, with: [HT-210L] }\n",
      ],
    },
    right: {
      "parts/gasket.yaml": [
        "name: gasket kit }",
        "name: gasket kit }\n  - { number: HT-210L, name: seal, hand: left }\n  - { number: HT-210R, name: seal, hand: right }",
      ],
      "changes/1959/HY59-01.md": ["service-only: [HT-201]", "service-only: [HT-201, HT-210L, HT-210R]"],
      "changes/1958/FR58-01.md": [
        "scope: my>=1958\n",
        "scope: my>=1958\nsupersedes:\n  - { old: HT-201, new: HT-290, with: [HT-210L, HT-210R] }\n",
      ],
    },
  },
  *find(world) {
    for (const record of world.catalog.records.values())
      for (const it of record.statements)
        if (it.type === "supersedes" || it.type === "stands-in") {
          yield* forOneSideOf(world, it);
          yield* alongForOneSide(world, it);
        }
  },
};

function brings(catalog: Catalog, it: Supersedes | StandsIn): { itself: string; along: readonly string[] } {
  return it.type === "supersedes"
    ? { itself: it.new, along: it.with }
    : { itself: it.part, along: [...it.with, ...partsIn(catalog, it.do ?? "").map(({ number }) => number)] };
}

/** The part itself, where it takes the place of one that sits on both sides. */
function* forOneSideOf({ catalog, index }: World, it: Supersedes | StandsIn): Generator<Fault> {
  if (it.type === "stands-in" && !isPermission(it)) return;
  const { itself, along } = brings(catalog, it);
  const replaced = it.type === "supersedes" ? it.old : it.for;
  const part = catalog.parts.get(itself);
  const twin = part && twinOf(catalog, part);
  if (!part || !twin || replaced === undefined || along.includes(twin.number)) return;
  if (catalog.parts.get(replaced)?.hand !== undefined || builtPlaces(index, replaced).length < 2) return;
  yield {
    at: placeOf(catalog, it),
    message: `${itself} is for the ${part.hand} side only, and takes the place of ${replaced}, which sits on both`,
    hint: `name ${twin.number} in 'with'`,
    records: [it.record],
    names: [itself, twin.number, replaced],
  };
}

function* alongForOneSide({ catalog }: World, it: Supersedes | StandsIn): Generator<Fault> {
  const { itself, along } = brings(catalog, it);
  for (const number of along) {
    const part = catalog.parts.get(number);
    const twin = part && twinOf(catalog, part);
    if (!part || !twin || number === itself || [itself, ...along].includes(twin.number)) continue;
    if (catalog.parts.get(itself)?.hand === part.hand) continue;
    const at = it.with.indexOf(number);
    yield {
      at: at >= 0 ? placeOf(catalog, it, "with", at) : placeOf(catalog, it, "do"),
      message: `${number} goes along for the ${part.hand} side only`,
      hint: `add ${twin.number}`,
      records: [it.record],
      names: [number, twin.number, itself],
    };
  }
}

function twinOf({ parts }: Catalog, part: Part): Part | undefined {
  if (part.hand === undefined) return undefined;
  return [...parts.values()].find(
    (other) =>
      other.component === part.component &&
      other.hand !== undefined &&
      other.hand !== part.hand &&
      other.number.length === part.number.length &&
      distance(other.number, part.number) === 1,
  );
}
