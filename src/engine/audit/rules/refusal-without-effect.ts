import { isPermission, type PartIndex, whereHolds } from "../../interchange/part-index.ts";
import { builtPlaces } from "../../interchange/places.ts";
import { takenBack } from "../../interchange/taken-back.ts";
import type { StandsIn } from "../../records/statement.ts";
import { type CarSet, NONE } from "../../scope/diagram.ts";
import { onOtherWays } from "../on-other-ways.ts";
import { placeOf } from "../place-of.ts";
import type { Rule, World } from "../rule.ts";

/**
 * A refusal of a part in the place of another one speaks of a built car in which the other one belongs, or may have come in another
 * way (delivered, in a kit, for repair).
 *   On cars that were built with the refused part itself it takes that part back, if it speaks of no car with the other one from the
 *   plant, and names its cars or the other one is delivered; or if it names its cars and the other one is delivered.
 *   So does a refusal where nothing belongs that is for cars only on which the plant fitted the part.
 */
export const refusalWithoutEffect: Rule = {
  id: "refusal-without-effect",
  gravity: "warning",
  about: "A refusal forbids the part on some car that it is about.",
  why: "What the plant fitted stays 'as built': a part that was to be taken back is put on again.",
  mend: "To take a part back, give the refusal its cars and let a delivery rule for the same cars lead from the part to the one that comes instead; else mend the number or the scope.",
  example: {
    wrong: {
      "parts/pump.yaml": [
        "  - number: HT-102",
        "  - { number: HT-103, name: pump with three ribs }\n  - number: HT-102",
      ],
      "changes/1959/HY59-01.md": [
        "why: It runs dry. }",
        "why: It runs dry. }\n  - { part: HT-102, for: HT-103, verdict: must-not-be-used, why: It cracks., scope: line=B; my=1960 }",
      ],
    },
    right: {
      "parts/pump.yaml": [
        "  - number: HT-102",
        "  - { number: HT-103, name: pump with three ribs }\n  - number: HT-102",
      ],
      "changes/1959/HY59-01.md": [
        "why: It runs dry. }",
        "why: It runs dry. }\n  - { part: HT-102, for: HT-103, verdict: must-not-be-used, why: It cracks., scope: line=B; my=1960 }",
        "supersedes:\n",
        "supersedes:\n  - { old: HT-102, new: HT-103, scope: line=B; my=1960 }\n",
      ],
    },
  },
  *find(world) {
    const { catalog, index } = world;
    const otherwise = onOtherWays(index);
    for (const statements of index.standInsOf.values())
      for (const it of statements) {
        // What was ended for all its cars is history.
        if (isPermission(it) || whereHolds(index, it, catalog.buildable, it.place) === NONE) continue;
        const isOfSome = forbids(world, it);
        const left = stillAsBuilt(world, it);
        const isDelivered = leadsTo(index, it.part, it.for);
        const isMeant = isOfSome
          ? it.scope !== undefined && isDelivered
          : it.scope !== undefined || (isDelivered && it.verdict === "must-not-be-used");
        const named = it.for === undefined ? [it.part] : [it.part, it.for];
        if (left !== NONE && isMeant)
          yield {
            at: placeOf(catalog, it),
            message: `${it.part} is refused, and stays 'as built' on the cars that were built with it`,
            hint: `${howToTakeBack(index, it)}; where only cars with ${it.for ?? "nothing there"} are meant, mend the number or the scope`,
            records: [it.record],
            names: named,
            cars: left,
          };
        else if (!isOfSome && it.for !== undefined && !otherwise.has(it.for) && hasPlaces(world, it.for))
          yield {
            at: placeOf(catalog, it, "for"),
            message: `${it.part} is refused in place of ${it.for}, and no car in the scope has ${it.for}`,
            hint: "mend the number or the scope",
            records: [it.record],
            names: named,
          };
      }
  },
};

/** Whether it speaks of a car in which the other part belongs, or nothing does. */
function forbids({ catalog, index }: World, it: StandsIn): boolean {
  const { sets } = catalog.space;
  if (it.for === undefined) {
    const cars = whereHolds(index, it, catalog.buildable, it.place);
    return sets.minus(cars, builtWithAt(index, it.part, it.place)) !== NONE;
  }
  const places = it.place === undefined ? builtPlaces(index, it.for) : [it.place];
  return places.some((place) =>
    sets.meet(whereHolds(index, it, catalog.buildable, place), builtWithAt(index, it.for as string, place)),
  );
}

/** The cars that were built with the part that is refused, and were not taken back. */
function stillAsBuilt({ catalog, index }: World, it: StandsIn): CarSet {
  const { sets } = catalog.space;
  const cars = sets.and(whereHolds(index, it, catalog.buildable, it.place), builtWithAt(index, it.part, it.place));
  return takenBack(index, it.part, cars).reduce((left, back) => sets.minus(left, back.cars), cars);
}

function builtWithAt({ builtWith, space }: PartIndex, part: string, place: string | undefined): CarSet {
  const there = (builtWith.get(part) ?? []).filter((it) => place === undefined || it.place === place);
  return space.any(there.map(({ scope }) => scope.cars));
}

/** Whether an order of the one part comes to the other, for any car, rule by rule. */
function leadsTo({ ordersOf }: PartIndex, part: string, other: string | undefined): boolean {
  const parts = [part];
  for (const one of parts)
    for (const rule of ordersOf.get(one) ?? []) if (!parts.includes(rule.new)) parts.push(rule.new);
  return other !== undefined && parts.slice(1).includes(other);
}

function howToTakeBack(index: PartIndex, { part, for: other, scope }: StandsIn): string {
  if (other === undefined)
    return "to take it back, refuse it in place of the part that comes instead, and deliver that for it";
  const steps = [
    ...(scope === undefined ? ["name its cars here with 'scope'"] : []),
    ...(leadsTo(index, part, other)
      ? []
      : [`say under 'supersedes' that ${other} is delivered for ${part} on these cars`]),
  ];
  return `to take it back, ${steps.length > 0 ? steps.join(" and ") : `let the delivery of ${other} for ${part} name these cars with 'scope'`}`;
}

function hasPlaces({ catalog }: World, part: string): boolean {
  return (catalog.components.get(catalog.parts.get(part)?.component ?? "")?.places.length ?? 0) > 0;
}
