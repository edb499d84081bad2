import { carsBuiltWith, isPermission, type PartIndex, whereHolds } from "../../interchange/part-index.ts";
import type { Supersedes } from "../../records/statement.ts";
import { type CarSet, NONE } from "../../scope/diagram.ts";
import { placeOf } from "../place-of.ts";
import type { Rule } from "../rule.ts";

/**
 * On no built car with the old number does a record refuse in its place what delivery rules send for it, at once or rule by rule. A
 * number that no plant fitted may be on any car.
 */
export const deliveredButRefused: Rule = {
  id: "delivered-but-refused",
  gravity: "error",
  about: "What is delivered for a number is not refused in its place on the same car.",
  why: "The counter hands over a part that must not go on.",
  mend: "Take the refused cars out of the delivery rule, or mend the refusal.",
  example: {
    wrong: {
      "changes/1959/HY59-01.md": [
        "why: It runs dry. }",
        "why: It runs dry. }\n  - { part: HT-102, for: HT-101, verdict: does-not-go-on, why: The pedal is in the way., scope: my=1957 }",
      ],
    },
    right: {
      "changes/1959/HY59-01.md": [
        "{ old: HT-101, new: HT-102, with: [HT-201] }\nstands-in:",
        "{ old: HT-101, new: HT-102, with: [HT-201], scope: my>=1958 }\nstands-in:\n  - { part: HT-102, for: HT-101, verdict: does-not-go-on, why: The pedal is in the way., scope: my=1957 }",
      ],
    },
  },
  *find({ catalog, index }) {
    for (const old of index.ordersOf.keys())
      for (const { rule, cars } of sentFor(index, old))
        for (const refusal of index.standInsOf.get(rule.new) ?? []) {
          if (refusal.for !== old || isPermission(refusal)) continue;
          const both = whereHolds(index, refusal, cars, refusal.place);
          if (both === NONE) continue;
          yield {
            at: placeOf(catalog, rule),
            message: `${rule.new} is delivered for ${old}, and refused in its place by ${refusal.record === rule.record ? "this record itself" : refusal.record} on the same cars`,
            hint: "take these cars out of the delivery rule, or mend the refusal",
            records: [rule.record, refusal.record],
            names: [old, rule.new],
            also: [{ ...placeOf(catalog, refusal), message: `the refusal: ${refusal.why ?? refusal.verdict}` }],
            cars: both,
          };
        }
  },
};

/** Every rule that an order of a number comes by, with the cars for which it does. Each rule once; a circle comes to an end. */
function sentFor(index: PartIndex, old: string): { rule: Supersedes; cars: CarSet }[] {
  const { sets } = index.space;
  const { buildable } = index.catalog;
  const fitted = carsBuiltWith(index, old);
  const built = sets.and(buildable, fitted);
  const reached = new Map<string, CarSet>([[old, built === NONE ? buildable : built]]);
  const sent = new Map<Supersedes, CarSet>();
  const todo = [old];
  for (const at of todo)
    for (const rule of index.ordersOf.get(at) ?? []) {
      const cars = whereHolds(index, rule, reached.get(at) ?? NONE);
      sent.set(rule, cars);
      const before = reached.get(rule.new) ?? NONE;
      const now = sets.or(before, cars);
      if (now === before) continue;
      reached.set(rule.new, now);
      todo.push(rule.new);
    }
  return [...sent].map(([rule, cars]) => ({ rule, cars }));
}
