import type { PartIndex } from "../../interchange/part-index.ts";
import { whereHolds } from "../../interchange/part-index.ts";
import type { Supersedes } from "../../records/statement.ts";
import { type CarSet, NONE } from "../../scope/diagram.ts";
import { placeOf } from "../place-of.ts";
import type { Rule, World } from "../rule.ts";

/**
 * From no number do the delivery rules of one car lead back to it.
 *
 * For each number the cars with which every other one can be reached from it grow until nothing is added; those that come back are
 * in a circle. The circle that is told is the shortest for one of these cars.
 */
export const deliveryCircle: Rule = {
  id: "delivery-circle",
  gravity: "error",
  about: "Delivery rules of a car never lead back to a number that they came from.",
  why: "There is no number to deliver: the order goes round for ever.",
  mend: "Take out the rule that points back, or give it a scope that the others do not share.",
  example: {
    wrong: {
      "changes/1959/HY59-01.md": [
        "with: [HT-201] }\nstands-in:",
        "with: [HT-201] }\n  - { old: HT-102, new: HT-101, scope: line=B }\nstands-in:",
      ],
    },
    right: {
      "changes/1959/HY59-01.md": [
        "{ old: HT-101, new: HT-102, with: [HT-201] }\nstands-in:",
        "{ old: HT-101, new: HT-102, scope: line=H }\n  - { old: HT-102, new: HT-101, scope: line=B }\nstands-in:",
      ],
    },
  },
  *find(world) {
    const { catalog, index } = world;
    const told = new Set<string>();
    for (const part of index.ordersOf.keys()) {
      if (told.has(part)) continue;
      const cars = comingBack(world, part);
      if (cars === NONE) continue;
      const circle = shortest(index, part, oneOf(world, cars));
      for (const { old } of circle) told.add(old);
      const last = circle.at(-1) as Supersedes;
      yield {
        at: placeOf(catalog, last, "new"),
        message: `the delivery rules run in a circle: ${[...circle.map(({ old }) => old), part].join(" → ")}`,
        hint: "take out the rule that points back, or give it a scope that the others do not share",
        records: [...new Set([last, ...circle].map(({ record }) => record))],
        names: circle.map(({ old }) => old),
        also: circle.slice(0, -1).map((it) => ({ ...placeOf(catalog, it), message: `${it.old} → ${it.new}` })),
        cars,
      };
    }
  },
};

function comingBack({ catalog, index }: World, part: string): CarSet {
  const { sets } = catalog.space;
  const reached = new Map<string, CarSet>([[part, catalog.buildable]]);
  let back: CarSet = NONE;
  const todo = [part];
  for (const at of todo)
    for (const rule of index.ordersOf.get(at) ?? []) {
      const sent = whereHolds(index, rule, reached.get(at) ?? NONE);
      if (rule.new === part) back = sets.or(back, sent);
      else {
        const before = reached.get(rule.new) ?? NONE;
        const now = sets.or(before, sent);
        if (now === before) continue;
        reached.set(rule.new, now);
        todo.push(rule.new);
      }
    }
  return back;
}

/** A set of cars that are alike in all that delivery rules ask for: one kind of car out of these. */
function oneOf({ catalog, index }: World, cars: CarSet): CarSet {
  let one = cars;
  for (const rules of index.ordersOf.values())
    for (const rule of rules) {
      const inside = whereHolds(index, rule, one);
      if (inside !== NONE) one = inside;
    }
  return catalog.space.sets.and(one, cars);
}

/** Breadth first; `cars` either all take a rule or none of them does. */
function shortest(index: PartIndex, part: string, cars: CarSet): Supersedes[] {
  const routes: Supersedes[][] = (index.ordersOf.get(part) ?? []).map((rule) => [rule]);
  const seen = new Set<string>();
  for (const route of routes) {
    const last = route.at(-1) as Supersedes;
    if (whereHolds(index, last, cars) === NONE) continue;
    if (last.new === part) return route;
    if (seen.has(last.new)) continue;
    seen.add(last.new);
    for (const rule of index.ordersOf.get(last.new) ?? []) routes.push([...route, rule]);
  }
  return [];
}
