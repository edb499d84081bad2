import { groupBy } from "../../records/group-by.ts";
import type { Setting } from "../../records/statement.ts";
import { placeOf } from "../place-of.ts";
import type { Fault, Rule, World } from "../rule.ts";

/** So many times another figure of the same name: nothing that is set on a car changes so from one year to the next. */
const TOO_MANY_TIMES = 6;

/**
 * A figure lies within the limits that checks.yaml states for its kind; and of the figures of one setting in one unit none is six times or
 * more, or a sixth or less, of the middle one. Where there are only two, the later record's is the one in doubt.
 */
export const implausibleFigure: Rule = {
  id: "implausible-figure",
  gravity: "warning",
  about: "A figure is of the size that figures of its kind have.",
  why: "A point in the wrong place, or millimetres written for inches, is set on the car as it stands.",
  mend: "Correct the figure; if it is right, accept the finding with its reason.",
  example: {
    wrong: {
      "changes/1959/HY59-01.md": [
        "scope: line=B }\n  - { name: oil pressure, window: ..90,",
        "scope: line=B; my<=1959 }\n  - { name: oil pressure, window: 1200..1350, unit: bar, scope: line=B; my>=1960 }\n  - { name: oil pressure, window: ..90,",
      ],
    },
    right: {
      "changes/1959/HY59-01.md": [
        "scope: line=B }\n  - { name: oil pressure, window: ..90,",
        "scope: line=B; my<=1959 }\n  - { name: oil pressure, window: 120..140, unit: bar, scope: line=B; my>=1960 }\n  - { name: oil pressure, window: ..90,",
      ],
    },
  },
  *find(world) {
    yield* outsideLimits(world);
    const issued = ({ record }: Setting): string => world.catalog.records.get(record)?.facts.issued ?? "";
    for (const [, group] of groupBy(world.index.settings, (it) => [`${it.component} ${it.name} ${it.unit}`])) {
      const known = group.flatMap((it) => {
        const size = middle(it);
        return size !== undefined && size > 0 ? [{ it, size }] : [];
      });
      const inTime = [...known].sort((a, b) =>
        issued(a.it) < issued(b.it) ? -1 : issued(a.it) > issued(b.it) ? 1 : a.it.index - b.it.index,
      );
      // With two figures the earlier one is the measure.
      const measure =
        known.length > 2 ? [...known].sort((a, b) => a.size - b.size)[(known.length - 1) >> 1] : inTime[0];
      if (!measure) continue;
      for (const { it, size } of known) {
        const times = Math.max(size / measure.size, measure.size / size);
        if (times < TOO_MANY_TIMES) continue;
        yield {
          at: placeOf(world.catalog, it, "window"),
          message: `'${it.name}' is ${size} ${it.unit} here and ${measure.size} ${it.unit} elsewhere: ${Number(times.toPrecision(3))} times ${size > measure.size ? "as much" : "less"}`,
          hint: `look for a point in the wrong place, or for another unit${times > 20 && times < 30 ? ": 25.4 mm are an inch" : ""}; if the figure is right, accept this with the reason`,
          records: [it.record, measure.it.record],
          names: [it.name],
          also: [{ ...placeOf(world.catalog, measure.it, "window"), message: `${measure.size} ${it.unit}` }],
        };
      }
    }
  },
};

function* outsideLimits({ catalog, checks, index }: World): Generator<Fault> {
  for (const it of index.settings)
    for (const { setting, unit, least, most } of checks.plausible) {
      if (it.unit !== unit || !it.name.toLowerCase().includes(setting.toLowerCase())) continue;
      const figures = [it.low, it.high, it.nominal].filter((value) => value !== undefined).map(Number);
      const odd = figures.find((figure) => figure < least || figure > most);
      if (odd === undefined) continue;
      yield {
        at: placeOf(catalog, it, "window"),
        message: `'${it.name}' has ${odd} ${unit}; for '${setting}' checks.yaml has ${least} to ${most} ${unit}`,
        hint: "look for a point in the wrong place; if the figure is right, widen the limits there",
        records: [it.record],
        names: [it.name],
      };
    }
}

/** The figure to aim for, or the middle of the window, or its one limit. */
function middle({ nominal, low, high }: Setting): number | undefined {
  if (nominal !== undefined) return nominal;
  if (low !== undefined && high !== undefined) return (Number(low) + Number(high)) / 2;
  const limit = low ?? high;
  return limit === undefined ? undefined : Number(limit);
}
