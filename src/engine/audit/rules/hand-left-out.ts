import type { Hand } from "../../interchange/places.ts";
import { sitsAt } from "../../interchange/places.ts";
import type { Catalog, Part } from "../../records/catalog.ts";
import { groupBy } from "../../records/group-by.ts";
import { inPart } from "../place-of.ts";
import type { Fault, Rule, World } from "../rule.ts";

/**
 * In a component with a left and a right, by its places or by the hand of a part, a part without a hand is for both sides:
 *   its name does not say one of the two, as English has it;
 *   nor its number, beside one that differs in nothing but an L for an R;
 *   nor do the records put it on one side only, built or permitted, where there are places on both.
 */
export const handLeftOut: Rule = {
  id: "hand-left-out",
  gravity: "error",
  about: "A part for one side says so with 'hand'.",
  why: "Without a hand it is permitted on the other side too.",
  mend: "Say 'hand: left' or 'hand: right'; where the part goes on both sides, accept the finding with the reason.",
  example: {
    wrong: {
      "components/hydraulics.yaml": ["places: [pump gasket]", "places: [left gasket, right gasket]"],
      "parts/gasket.yaml": ["name: gasket kit }", "name: gasket kit }\n  - { number: HT-210, name: left seal }"],
    },
    right: {
      "components/hydraulics.yaml": ["places: [pump gasket]", "places: [left gasket, right gasket]"],
      "parts/gasket.yaml": [
        "name: gasket kit }",
        "name: gasket kit }\n  - { number: HT-210, name: left seal, hand: left }",
      ],
    },
  },
  *find(world) {
    for (const [id, parts] of groupBy([...world.catalog.parts.values()], (part) => [part.component])) {
      const places = (world.catalog.components.get(id)?.places ?? []).map(sideIn);
      const hasBoth = places.includes("left") && places.includes("right");
      if (!hasBoth && parts.every(({ hand }) => hand === undefined)) continue;
      for (const part of parts)
        if (part.hand === undefined)
          yield* [
            ...byName(world, part),
            ...byNumber(world, part, parts),
            ...(hasBoth ? byPlaces(world, part) : []),
          ].slice(0, 1);
    }
  },
};

function byName({ catalog }: World, part: Part): Fault[] {
  const side = sideIn(part.name.replace(OTHER_HAND, ""));
  return side ? [fault(catalog, part, "name", side, "its name says")] : [];
}

/** A thread and a car have a hand too. */
const OTHER_HAND = /\b(?:left|right)[- ]?(?:hand(?:ed)?)?[- ](?:thread(?:s|ed)?|drive|steering|turn|twist)\b/gi;

function byNumber({ catalog }: World, part: Part, parts: readonly Part[]): Fault[] {
  return parts.flatMap((other) => {
    const sign = signBeside(part.number, other.number);
    if (sign === undefined) return [];
    const side = sign === "L" ? "left" : "right";
    return [fault(catalog, part, "number", side, `beside ${other.number} its number says`, [other.number])];
  });
}

/** The L or R of a number that differs from another one in this sign only. */
function signBeside(number: string, other: string): "L" | "R" | undefined {
  if (number.length !== other.length) return undefined;
  const [at, ...more] = [...number].flatMap((sign, i) => (sign === other[i] ? [] : [i]));
  if (at === undefined || more.length > 0) return undefined;
  const signs = `${number[at]}${other[at]}`.toUpperCase();
  if (signs === "LR") return "L";
  return signs === "RL" ? "R" : undefined;
}

function byPlaces({ catalog, index }: World, part: Part): Fault[] {
  const places = sitsAt(index, part.number);
  const [side, ...others] = new Set(places.map(sideIn));
  if (side === undefined || others.length > 0) return [];
  return [fault(catalog, part, "number", side, "the records put it only", places)];
}

function sideIn(text: string): Hand | undefined {
  const [side, ...others] = new Set(text.toLowerCase().match(/\b(?:left|right)\b/g) ?? []);
  return others.length > 0 ? undefined : (side as Hand | undefined);
}

function fault(
  catalog: Catalog,
  part: Part,
  field: string,
  side: Hand,
  says: string,
  names: readonly string[] = [],
): Fault {
  return {
    at: inPart(catalog, part, field),
    message: `${part.number} has no hand, and ${says} ${side}`,
    hint: `add 'hand: ${side}'; where it goes on both sides, accept this`,
    records: [],
    names: [part.number, ...names],
  };
}
