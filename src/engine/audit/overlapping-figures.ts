/** Figures of one name that say otherwise of the same cars. */
import { groupBy } from "../records/group-by.ts";
import type { Interval, Setting } from "../records/statement.ts";
import { NONE } from "../scope/diagram.ts";
import { bothFitted } from "./both-fitted.ts";
import { inForce } from "./in-force.ts";
import { pairs } from "./pairs.ts";
import { placeOf } from "./place-of.ts";
import type { Fault, World } from "./rule.ts";
import { whose } from "./whose.ts";

type Figure = Setting | Interval;

/**
 * Of any two figures of one component and name, or intervals of one name, that say otherwise: the built cars in the scopes of both,
 * once records that were ended are left out. Where each asks for a part of the same component on the car today, each speaks
 * of its own part: a car with one of them left and the other right has both figures.
 *
 * `isMeant` picks among such pairs.
 */
export function* overlappingFigures(
  world: World,
  hint: string,
  isMeant: (one: Figure, other: Figure) => boolean,
): Generator<Fault> {
  const { catalog, index } = world;
  const { sets } = catalog.space;
  const intervals = [...catalog.records.values()].flatMap((record) =>
    record.statements.filter((it) => it.type === "interval"),
  );
  const groups = [
    ...groupBy(index.settings, (it) => [`${it.component} ${it.name}`]).values(),
    ...groupBy(intervals, (it) => [it.name]).values(),
  ];
  for (const group of groups as Iterable<Figure[]>) {
    const figures = group.map((it) => ({ it, figure: figureOf(it), cars: inForce(world, it, it.scope.cars) }));
    for (const [{ it: one, ...first }, { it: other, ...second }] of pairs(figures)) {
      if (first.figure === second.figure || !isMeant(one, other) || !sets.meet(first.cars, second.cars)) continue;
      const both = sets.minus(sets.and(first.cars, second.cars), bothFitted(catalog, one.scope, other.scope));
      if (both === NONE) continue;
      const by = `by ${whose(other.record, one.record)}`;
      yield {
        at: placeOf(catalog, other, "scope"),
        message: `'${other.name}' is ${sayFigure(other)} here, and ${sayFigure(one)} ${by} on the same cars`,
        hint,
        records: [other.record, one.record],
        names: [other.name],
        also: [{ ...placeOf(catalog, one, "scope"), message: `${sayFigure(one)} of the same name` }],
        cars: both,
      };
    }
  }
}

/** Both say how it is measured, and say otherwise. */
export function haveOtherConditions(one: Figure, other: Figure): boolean {
  if (one.type !== "setting" || other.type !== "setting") return false;
  const [a, b] = [one, other].map((it) => it.conditions?.toLowerCase().replace(/\s+/g, " "));
  return a !== undefined && b !== undefined && a !== b;
}

/** What is compared: 0.030 is the same limit as 0.03, whatever is shown. */
function figureOf(it: Figure): string {
  if (it.type === "interval") return sayFigure(it);
  const limit = (digits: string | undefined): number | undefined => (digits === undefined ? undefined : Number(digits));
  return [limit(it.low), limit(it.high), it.nominal, it.unit].join(" ");
}

function sayFigure(it: Figure): string {
  if (it.type === "setting") {
    const window = it.low !== undefined && it.low === it.high ? it.low : `${it.low ?? ""}..${it.high ?? ""}`;
    return `${window} ${it.unit}${it.nominal === undefined ? "" : `, to be set at ${it.nominal}`}`;
  }
  if (it.none) return "without an interval";
  const every = [it.months && `${it.months} months`, it.miles && `${it.miles} miles`].filter(Boolean).join(" or ");
  return `${it.once ? "once at" : "every"} ${every}`;
}
