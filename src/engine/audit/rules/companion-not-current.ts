import { companionStanding } from "../../interchange/companion-standing.ts";
import { askedFor, type Current, currentOf } from "../../interchange/current.ts";
import { isPermission, type PartIndex, whereHolds } from "../../interchange/part-index.ts";
import { nothingReported } from "../../interchange/reported.ts";
import type { ChangeRecord } from "../../records/catalog.ts";
import type { StandsIn, Supersedes } from "../../records/statement.ts";
import { type CarSet, NONE } from "../../scope/diagram.ts";
import { placeOf } from "../place-of.ts";
import { reachedBy } from "../reached-by.ts";
import type { Rule } from "../rule.ts";
import { stillToFit } from "../still-to-fit.ts";

/**
 * What must go along, by a permission or a delivery rule, is still what an order of it gets, on every car on which it is to be fitted
 *   if not, the part that comes instead is named along with it, or is in a kit that is,
 *   or it is a kit that holds what must go along,
 *   or the part itself comes as another one, and what comes instead is that or is sent along with it: the set has moved on as a whole.
 * The car is taken as it is when the work is done: with all that is named on it. A delivery rule that asks for another part of one of
 * these components on the car speaks of other cars. Where what comes instead is refused in its place, that is told of the delivery
 * rule.
 */
export const companionNotCurrent: Rule = {
  id: "companion-not-current",
  gravity: "warning",
  about: "What must go along is still delivered under its own number, or the part that comes for it is named too.",
  why: "Who orders by the record gets another part than the record says, and it may not do what the set needs.",
  mend: "Name the part that is delivered now; or accept the finding, where the old one is still to be had.",
  example: {
    wrong: {
      "parts/gasket.yaml": ["name: gasket kit }", "name: gasket kit }\n  - { number: HT-205, name: thicker gasket }"],
      "changes/1958/FR58-01.md": [
        "scope: my>=1958\n",
        "scope: my>=1958\nsupersedes:\n  - { old: HT-201, new: HT-205, scope: line=H }\n",
      ],
    },
    right: {
      "parts/gasket.yaml": ["name: gasket kit }", "name: gasket kit }\n  - { number: HT-205, name: thicker gasket }"],
      "changes/1958/FR58-01.md": [
        "scope: my>=1958\n",
        "scope: my>=1958\nsupersedes:\n  - { old: HT-201, new: HT-205, scope: line=H }\n",
      ],
      "changes/1959/HY59-01.md": [
        "{ old: HT-101, new: HT-102, with: [HT-201] }\nstands-in:",
        "{ old: HT-101, new: HT-102, with: [HT-201], scope: line=B }\n  - { old: HT-101, new: HT-102, with: [HT-205], scope: line=H }\nstands-in:",
      ],
    },
  },
  *find({ catalog, index }) {
    for (const record of catalog.records.values())
      for (const [companion, asked] of askedAlong(record)) {
        if (!index.ordersOf.has(companion)) continue;
        const sent = asked.flatMap(({ it, i }) =>
          sentInstead(index, it, companion).map((current) => ({ it, i, ...current })),
        );
        const [first] = sent;
        if (!first) continue;
        const instead = [...new Set(sent.map(({ part }) => part))];
        const rules = [...new Set(sent.flatMap(({ steps }) => steps))];
        const lines = [...new Set(sent.map(({ it }) => it))];
        const refusals = [...new Set(sent.flatMap(({ part, cars }) => refusedAlong(index, part, cars)))];
        yield {
          at: placeOf(catalog, first.it, "with", first.i),
          message: `${companion} is to go along, and who orders it for these cars gets ${instead.join(" or ")}${refusals
            .map((it) => `, which ${it.record} refuses there (${it.why})`)
            .join("")}`,
          hint: `name ${instead.join(" or ")} in 'with', or take these cars out; where ${companion} is still to be had, accept this`,
          records: [record.id, ...rules.map((it) => it.record), ...refusals.map((it) => it.record)],
          names: [companion, ...instead, partOf(first.it)],
          also: [
            ...lines
              .filter((it) => it !== first.it)
              .map((it) => ({ ...placeOf(catalog, it, "with"), message: `${companion} goes along here too` })),
            ...rules.map((it) => ({ ...placeOf(catalog, it), message: `${it.old} → ${it.new}` })),
          ],
          cars: index.space.any(sent.map(({ cars }) => cars)),
        };
      }
  },
};

interface Asked {
  readonly it: StandsIn | Supersedes;
  /** Which one of its companions. */
  readonly i: number;
}

/** By companion the lines of a record that ask for it. */
function askedAlong({ statements }: ChangeRecord): Map<string, Asked[]> {
  const asked = new Map<string, Asked[]>();
  for (const it of statements)
    if (it.type === "supersedes" || (it.type === "stands-in" && isPermission(it)))
      for (const [i, companion] of it.with.entries())
        asked.set(companion, [...(asked.get(companion) ?? []), { it, i }]);
  return asked;
}

function partOf(it: StandsIn | Supersedes): string {
  return it.type === "supersedes" ? it.new : it.part;
}

/** What an order of a companion gets in its place, for the cars on which it is to be fitted. A circle is told by another rule. */
function sentInstead(index: PartIndex, it: StandsIn | Supersedes, companion: string): Current[] {
  const { sets } = index.space;
  const cars = stillToFit(index, companion, whenDone(index, it, companion));
  if (cars === NONE) return [];
  const named = new Set([partOf(it), ...it.with].flatMap((part) => [part, ...inKit(index, part)]));
  const moved = currentOf(index, partOf(it), cars).filter(({ circle }) => !circle);
  return currentOf(index, companion, cars).flatMap((current): Current[] => {
    if (current.circle || named.has(current.part) || inKit(index, current.part).includes(companion)) return [];
    const along = moved.filter(({ steps }) => steps.some((step) => [step.new, ...step.with].includes(current.part)));
    const told = [refusedInstead(index, companion, current), ...along.map((one) => one.cars)];
    const left = sets.minus(current.cars, index.space.any(told));
    return left === NONE ? [] : [{ ...current, cars: left }];
  });
}

/** The cars that a line is about, with the rest of the set on them and no other part of the same components. */
function whenDone(index: PartIndex, it: StandsIn | Supersedes, companion: string): CarSet {
  const { space, catalog } = index;
  const set = [partOf(it), ...it.with].filter((part) => part !== companion);
  const componentOf = (part: string): string | undefined => catalog.parts.get(part)?.component;
  const components = new Set([...set, companion].map(componentOf));
  const asked = it.scope ? space.sets.traitsOf(it.scope.cars) : new Set<number>();
  let cars = reachedBy(index, it);
  for (const part of catalog.parts.keys()) {
    const trait = part === companion || !components.has(componentOf(part)) ? undefined : space.askedFitted(part);
    const isInSet = set.includes(part);
    if (trait === undefined || (asked.has(trait) && !isInSet)) continue;
    const value = isInSet ? 1 : 0;
    cars = space.sets.and(cars, space.where(trait, [[value, value]]));
  }
  return cars;
}

function inKit(index: PartIndex, kit: string): string[] {
  return (index.contentsOf.get(kit) ?? []).flatMap(({ part }) => part ?? []);
}

/** The cars for which a part on the way is refused in place of the companion, by a refusal that the rule about deliveries tells. */
function refusedInstead(index: PartIndex, companion: string, { steps, cars }: Current): CarSet {
  const refusals = (part: string, on: CarSet): { it: StandsIn; cars: CarSet }[] =>
    (index.standInsOf.get(part) ?? [])
      .filter((it) => it.for === companion && !isPermission(it))
      .map((it) => ({ it, cars: whereHolds(index, it, on, it.place) }))
      .filter((one) => one.cars !== NONE);
  const here = steps.flatMap((step) => refusals(step.new, cars));
  if (here.length === 0) return NONE;
  const sent = currentOf(index, companion, askedFor(index, companion, index.catalog.buildable));
  const told = new Set(
    sent.flatMap((one) => one.steps.flatMap((step) => refusals(step.new, one.cars).map(({ it }) => it))),
  );
  return index.space.any(here.filter(({ it }) => told.has(it)).map((one) => one.cars));
}

/** Who refuses what comes instead on these cars. */
function refusedAlong(index: PartIndex, part: string, cars: CarSet): readonly StandsIn[] {
  return companionStanding(index, part, cars, nothingReported()).flatMap((it) => (it.how === "closed" ? it.by : []));
}
