import { groupBy } from "../../records/group-by.ts";
import type { Interval, Setting } from "../../records/statement.ts";
import { NONE } from "../../scope/diagram.ts";
import { bothFitted } from "../both-fitted.ts";
import { inForce } from "../in-force.ts";
import { pairs } from "../pairs.ts";
import { placeOf } from "../place-of.ts";
import type { Rule } from "../rule.ts";

/**
 * Of any two figures of one component and name, or intervals of one name, that say otherwise, no built car is in the scopes of both
 * once records that were ended are left out. Where each asks for a part of the same component on the car today, each speaks
 * of its own part: a car with one of them left and the other right has both figures. Other conditions are no way out: under one name there is one figure.
 */
export const twoFiguresInForce: Rule = {
  id: "two-figures-in-force",
  gravity: "error",
  about: "Of every setting and every interval at most one figure is in force on a car.",
  why: "The mechanic finds two figures and takes the one that the reading agrees with.",
  mend: "End the scope of the one where that of the other begins, or cancel the earlier record. What is another quantity, or is measured otherwise on the same car, gets a name of its own.",
  example: {
    wrong: {
      "changes/1959/HY59-01.md": [
        "component: lift, scope: line=H }",
        "component: lift, scope: line=H }\n  - { name: oil pressure, window: ..95, unit: bar, component: lift, scope: my>=1960 }",
      ],
    },
    right: {
      "changes/1959/HY59-01.md": [
        "component: lift, scope: line=H }",
        "component: lift, scope: line=H }\n  - { name: oil pressure, window: ..95, unit: bar, component: lift, scope: line=B; my>=1960 }",
      ],
    },
  },
  *find(world) {
    const { catalog, index } = world;
    const { sets } = catalog.space;
    const intervals = [...catalog.records.values()].flatMap((record) =>
      record.statements.filter((it) => it.type === "interval"),
    );
    const groups = [
      ...groupBy(index.settings, (it) => [`${it.component} ${it.name}`]).values(),
      ...groupBy(intervals, (it) => [it.name]).values(),
    ];
    for (const group of groups as Iterable<(Setting | Interval)[]>) {
      const figures = group.map((it) => ({
        it,
        said: say(it),
        figure: figureOf(it),
        cars: inForce(world, it, it.scope.cars),
      }));
      for (const [{ it: one, ...first }, { it: other, ...second }] of pairs(figures)) {
        if (first.figure === second.figure || !sets.meet(first.cars, second.cars)) continue;
        const both = sets.minus(sets.and(first.cars, second.cars), bothFitted(catalog, one.scope, other.scope));
        if (both === NONE) continue;
        const by = one.record === other.record ? "by another line of this record" : `by ${one.record}`;
        yield {
          at: placeOf(catalog, other, "scope"),
          message: `'${other.name}' is ${second.said} here, and ${first.said} ${by} on the same cars`,
          hint: "end the one scope where the other begins, or give what is another quantity another name",
          records: [other.record, one.record],
          names: [other.name],
          also: [{ ...placeOf(catalog, one, "scope"), message: `${first.said} of the same name` }],
          cars: both,
        };
      }
    }
  },
};

/** What is compared: 0.030 is the same limit as 0.03, whatever is shown. */
function figureOf(it: Setting | Interval): string {
  if (it.type === "interval") return say(it);
  const limit = (digits: string | undefined): number | undefined => (digits === undefined ? undefined : Number(digits));
  return [limit(it.low), limit(it.high), it.nominal, it.unit].join(" ");
}

function say(it: Setting | Interval): string {
  if (it.type === "setting") {
    const window = it.low !== undefined && it.low === it.high ? it.low : `${it.low ?? ""}..${it.high ?? ""}`;
    return `${window} ${it.unit}${it.nominal === undefined ? "" : `, to be set at ${it.nominal}`}`;
  }
  if (it.none) return "without an interval";
  const every = [it.months && `${it.months} months`, it.miles && `${it.miles} miles`].filter(Boolean).join(" or ");
  return `${it.once ? "once at" : "every"} ${every}`;
}
