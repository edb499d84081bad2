import type { Catalog } from "../records/catalog.ts";
import type { Setting } from "../records/statement.ts";
import { describe } from "../scope/describe.ts";
import { type CarSet, NONE } from "../scope/diagram.ts";
import { inOtherUnits } from "../settings/in-other-units.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { NOT_ON_RECORD } from "./compare-years.ts";
import { type FiguresForCar, silentAmong } from "./figures-for-car.ts";
import { componentOf, type SettingMatter } from "./find-settings.ts";
import type { Value } from "./net-change.ts";
import { onThisCar, sayRefusal, viewRefusal } from "./on-this-car.ts";
import { sayWindow } from "./say.ts";
import { sayCars } from "./say-cars.ts";
import type { FigureView, SettingView } from "./shapes/setting.ts";

/** More kinds of cars than this are not named one by one. */
const MOST_KINDS = 4;

/** One figure with its conditions clause by clause; `cars` in words, where they are to be said. */
export function viewFigure(setting: Setting, records: readonly string[], cars?: string): FigureView {
  const { low, high, unit, nominal, stated, conditions } = setting;
  const aim = stated ?? (nominal === undefined || low === high ? undefined : String(nominal));
  const converted = inOtherUnits(low, high, unit);
  return {
    said: `${sayWindow(low, high)} ${unit}`,
    ...(low === undefined ? {} : { low }),
    ...(high === undefined ? {} : { high }),
    unit,
    ...(aim === undefined ? {} : { aimFor: aim }),
    conditions: clausesOf(conditions),
    ...(converted ? { converted: shown(converted) } : {}),
    ...(cars === undefined ? {} : { cars }),
    records: [...records],
  };
}

function shown({ low, high, unit }: NonNullable<ReturnType<typeof inOtherUnits>>): FigureView["converted"] {
  return { ...(low === undefined ? {} : { low }), ...(high === undefined ? {} : { high }), unit };
}

/** Conditions as one ticks them off. A comma within a number divides nothing. */
export function clausesOf(conditions: string | undefined): string[] {
  return (conditions ?? "")
    .split(/[;,](?!\d{3}\b)/)
    .map((clause) => clause.trim())
    .filter((clause) => clause !== "");
}

/** The settings of some values, with the cars of each where they are not all of them. */
export function viewValues(catalog: Catalog, values: readonly Value[], among: CarSet): FigureView[] {
  const stated = values.filter((value) => value.said !== NOT_ON_RECORD);
  return stated.flatMap((value) => {
    const [first] = value.statements as readonly Setting[];
    if (!first) return [];
    const records = [...new Set(value.statements.map((it) => it.record))];
    const whole = values.length === 1 && value.cars === among;
    const cars = whole ? undefined : sayCars(catalog, value.cars, among, MOST_KINDS)?.words;
    return viewFigure(first, records, whole ? undefined : (cars ?? describe(catalog.space, first.scope)));
  });
}

export function viewSetting(
  knowledge: CarKnowledge,
  matter: SettingMatter,
  { values, movedWith, unsaid }: FiguresForCar,
  cars: CarSet,
): SettingView {
  const { catalog } = knowledge;
  const [first] = matter.statements;
  const component = first && componentOf(catalog, first);
  return {
    name: matter.name,
    ...(component ? { component: component.name } : {}),
    verdict: verdictOf(catalog, values, cars),
    figures: viewValues(catalog, values, cars),
    perhapsNone: cars !== NONE && silentAmong(values) !== NONE,
    ...(movedWith === undefined ? {} : { movedWith }),
    refused: movedWith === undefined || cars === NONE ? [] : refusedOn(knowledge, movedWith, cars),
    unsaid: [...unsaid],
  };
}

/** A figure comes with its part, be the part permitted on the car or not: what the records say against it is said with the figure. */
function refusedOn(knowledge: CarKnowledge, part: string, cars: CarSet): string[] {
  return onThisCar(knowledge, { part, cars }).refusals.map((it) => sayRefusal(part, viewRefusal(it)));
}

/**
 *   No car left: no such car was built.
 *   No record gives a figure for any of the cars: no such setting.
 *   Two figures for one and the same car: the records contradict each other. Where a part was found and may sit in one of
 *   several places that is no contradiction: which figure holds is told by looking.
 *   One figure for all of them: in force. Otherwise: look first.
 */
export function verdictOf({ space }: Catalog, values: readonly Value[], cars: CarSet): SettingView["verdict"] {
  if (cars === NONE) return "no such car";
  const stated = values.filter((value) => value.said !== NOT_ON_RECORD);
  if (stated.length === 0) return "no such setting";
  if (values.length === 1) return "in force";
  const isTwice = stated.some((a, i) => stated.slice(i + 1).some((b) => space.sets.meet(a.cars, b.cars)));
  return isTwice && !stated.some((value) => value.asFound) ? "contradiction" : "look first";
}
