/**
 * What else a reading tells: under which other figures of the setting it would pass, and whether a look-alike part explains it.
 *
 *   Another figure is any figure of the same name that is not in force for this car. It is the figure of *this car in another year* if it
 *   holds for cars like this one, of any year, as they were built.
 *   A part explains a reading that does not pass
 *     if another figure admits it, and the cars of that figure were built with this part where this car has another one;
 *     or if, by a mark that moves the setting (a thicker washer leaves less play), it would shift the limits so that they admit it.
 */
import Fraction from "fraction.js";
import type { Feature, Part } from "../records/catalog.ts";
import { type Setting, statementsOf } from "../records/statement.ts";
import { judge, type Read } from "../settings/judge.ts";
import { sayNumber } from "../settings/say-quantity.ts";
import type { KnownCar } from "./car.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { differingMarks } from "./differing-marks.ts";
import { carsLikeIt, partsBuilt } from "./figures-for-car.ts";
import { componentOf, type SettingMatter, settingsOf } from "./find-settings.ts";
import { reasonFor, reasonForRecord, sayScope } from "./say.ts";
import type { ReadingAnswer } from "./shapes/setting.ts";
import { viewFigure } from "./view-figures.ts";
import { viewMarks } from "./view-marks.ts";

type Other = ReadingAnswer["passesUnder"][number];
type Explained = ReadingAnswer["explainedBy"][number];

export interface Reading {
  readonly read: Read;
  /** In the unit of the record. */
  readonly error: Fraction;
  readonly unit: string;
}

/** Figures of the same name, in the unit of the reading, other than those in force, each once. */
export function otherFigures(
  knowledge: CarKnowledge,
  car: KnownCar,
  matter: SettingMatter,
  inForce: readonly Setting[],
  unit: string,
): { readonly setting: Setting; readonly sameCar: boolean }[] {
  const { catalog } = knowledge;
  const { space } = catalog;
  const names = new Set(matter.statements.map((it) => it.name));
  const keyOf = (it: Setting): string => `${it.low}..${it.high} ${it.unit} ${it.conditions ?? ""}`;
  const seen = new Set(inForce.map(keyOf));
  const alike = carsLikeIt(knowledge, car);
  const all = settingsOf(catalog)
    .flatMap((it) => it.statements)
    .filter((it) => names.has(it.name) && !seen.has(keyOf(it)) && it.unit === unit)
    .map((setting) => ({ setting, sameCar: space.sets.meet(alike, setting.scope.cars) }));
  // Of figures that say the same for different cars, the one for a car like this.
  const firsts = new Map<string, (typeof all)[number]>();
  for (const one of [...all].sort((a, b) => Number(b.sameCar) - Number(a.sameCar)))
    if (!firsts.has(keyOf(one.setting))) firsts.set(keyOf(one.setting), one);
  return [...firsts.values()];
}

export function viewOther(
  { catalog }: CarKnowledge,
  { read, error }: Reading,
  { setting, sameCar }: ReturnType<typeof otherFigures>[number],
): Other {
  return {
    figure: viewFigure(setting, [setting.record], sayScope(catalog, setting.scope).words),
    verdict: judge(read, setting, error).verdict,
    sameCar,
    because: reasonFor(catalog, setting),
  };
}

export function explainedBy(
  knowledge: CarKnowledge,
  car: KnownCar,
  matter: SettingMatter,
  inForce: Setting,
  reading: Reading,
): Explained[] {
  const mine = partsOnCar(knowledge, car, componentOf(knowledge.catalog, inForce)?.id);
  const found = [
    ...byFigure(knowledge, car, matter, mine, inForce, reading),
    ...byMark(knowledge, car, inForce, reading),
  ];
  return [...new Map(found.map((it) => [`${it.part} ${it.inPlaceOf}`, it])).values()];
}

/** The parts of a component that were found on the car, or else those that it may have left the plant with. */
function partsOnCar(knowledge: CarKnowledge, car: KnownCar, component: string | undefined): string[] {
  const found = car.fitted.filter((part) => knowledge.catalog.parts.get(part)?.component === component);
  return found.length > 0 || component === undefined ? found : partsBuilt(knowledge, component, car.cars);
}

function byFigure(
  knowledge: CarKnowledge,
  car: KnownCar,
  matter: SettingMatter,
  mine: readonly string[],
  inForce: Setting,
  { read, error, unit }: Reading,
): Explained[] {
  const { catalog } = knowledge;
  return otherFigures(knowledge, car, matter, [inForce], unit)
    .filter(({ setting }) => judge(read, setting, error).verdict === "within")
    .flatMap(({ setting }) =>
      partsBuilt(knowledge, componentOf(catalog, setting)?.id ?? "", setting.scope.cars)
        .filter((part) => !mine.includes(part))
        .flatMap((part) =>
          mine
            .filter((other) => isSameHand(knowledge, part, other))
            .map(
              (inPlaceOf): Explained => ({
                part,
                inPlaceOf,
                why: `${part} belongs to the figure ${viewFigure(setting, []).said}.`,
                tell: tellApart(knowledge, part, inPlaceOf),
                because: [reasonFor(catalog, setting), ...builtReasons(knowledge, part)],
              }),
            ),
        ),
    );
}

function isSameHand({ catalog }: CarKnowledge, one: string, other: string): boolean {
  return catalog.parts.get(one)?.hand === catalog.parts.get(other)?.hand;
}

function byMark(knowledge: CarKnowledge, car: KnownCar, inForce: Setting, { read, error, unit }: Reading): Explained[] {
  const { catalog } = knowledge;
  const moving = [...catalog.parts.values()].flatMap((part) =>
    part.features.flatMap((feature) =>
      (feature.moves ?? [])
        .filter((it) => it.setting === inForce.name && feature.unit === unit)
        .map(({ by, count }) => ({ part, feature, by: by * count })),
    ),
  );
  return moving.flatMap(({ part, feature, by }) =>
    partsOnCar(knowledge, car, part.component).flatMap((number): Explained[] => {
      const right = catalog.parts.get(number);
      if (!right || right.component !== part.component || right.number === part.number) return [];
      const shift = difference(feature, part, right)?.mul(by);
      if (!shift || shift.equals(0)) return [];
      const moved = (limit: string | undefined): string | undefined =>
        limit === undefined ? undefined : sayNumber(new Fraction(limit).add(shift));
      const limits = { low: moved(inForce.low), high: moved(inForce.high) };
      if (judge(read, limits, error).verdict !== "within") return [];
      return [
        {
          part: part.number,
          inPlaceOf: number,
          why: `With ${part.number} (${feature.name}: ${part.marks[feature.id]} ${unit}) in place of ${number} (${right.marks[feature.id]} ${unit}) it would be ${limits.low ?? ""}..${limits.high ?? ""} ${unit}.`,
          tell: tellApart(knowledge, part.number, number),
          because: [reasonForRecord(catalog, feature.record)],
        },
      ];
    }),
  );
}

function difference(feature: Feature, part: Part, right: Part): Fraction | undefined {
  const [a, b] = [part.marks[feature.id], right.marks[feature.id]];
  return typeof a === "number" && typeof b === "number" ? new Fraction(String(a)).sub(String(b)) : undefined;
}

function tellApart({ catalog }: CarKnowledge, one: string, other: string): string[] {
  return differingMarks(viewMarks(catalog, [one, other]), [one, other]).flatMap((group) =>
    group.features.map(
      ({ name, values, unit, wearsOff }) =>
        `${name}: ${one} ${values[one]}${unit ? ` ${unit}` : ""}, ${other} ${values[other]}${unit ? ` ${unit}` : ""}${wearsOff ? " (wears off: its absence proves nothing)" : ""}`,
    ),
  );
}

function builtReasons({ catalog, statementsByPart }: CarKnowledge, part: string) {
  const [first] = statementsOf(statementsByPart.get(part) ?? [], "built");
  return first ? [reasonFor(catalog, first)] : [];
}
