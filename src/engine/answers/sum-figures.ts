/**
 * What the records fill into a shop sum for a car.
 *
 *   A figure that is typed into the sum: so says the record of the sum.
 *   The mark of a part named by its number: so says the record of the mark.
 *   The mark of the part that is on the car: of the part found there, or else of the one that the plant fitted. Where several
 *   parts are possible, only what all of them show is taken.
 *   A setting: the value in force for every car that this can be, by the rule of `figures-for-car.ts`. Where it differs among them, or
 *   is not on record for some, nothing is filled in.
 */
import type { Part } from "../records/catalog.ts";
import type { SumJob } from "../records/shapes/sums.ts";
import type { Setting } from "../records/statement.ts";
import { list } from "../scope/describe.ts";
import { NONE } from "../scope/diagram.ts";
import type { Reason } from "./answer.ts";
import { answerBuilt } from "./answer-built.ts";
import { settingOn } from "./answer-setting.ts";
import { readCar } from "./car.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { settingsOf } from "./find-settings.ts";
import { reasonFor, reasonForRecord, uniqueReasons } from "./say.ts";
import type { CarInput } from "./shapes/car.ts";
import type { JobShown, Prefilled } from "./shapes/sum.ts";

type Figure = Omit<Prefilled, "input">;

export function sumFigures(knowledge: CarKnowledge, job: SumJob, car: CarInput): JobShown {
  const { title, sum, component, record } = job;
  const inputs = Object.entries(job.inputs).map(([input, given]): Prefilled => {
    if (typeof given === "string") {
      const because = [reasonForRecord(knowledge.catalog, record)];
      return { input, typed: given, why: `${record} says so`, because };
    }
    if ("setting" in given) return { input, ...settingFigure(knowledge, given, car) };
    return "part" in given
      ? { input, ...markOf(knowledge, [given.part], given.mark, `of ${given.part}`) }
      : { input, ...markOnCar(knowledge, given, car) };
  });
  return { title, sum, component, record, inputs };
}

function markOnCar(
  knowledge: CarKnowledge,
  { mark, component: id }: { mark: string; component: string },
  car: CarInput,
): Figure {
  const { catalog } = knowledge;
  const known = readCar(knowledge, car);
  if (known.cars === NONE) return { why: "no such car was built", because: [] };
  const found = known.fitted.filter((part) => catalog.parts.get(part)?.component === id);
  if (found.length > 0) return markOf(knowledge, found, mark, `of ${list(found, "and")}, found on the car`);
  const built = (catalog.components.get(id)?.places ?? []).map((place) => answerBuilt(knowledge, { place, car }));
  const parts = [...new Set(built.flatMap((it) => it.parts))].filter((part) => part !== "none");
  const because = uniqueReasons(built.flatMap((it) => it.because));
  if (parts.length === 0) return { why: "no record says which part this car was built with", because };
  if (built.some((it) => it.perhapsNotOnRecord))
    return { why: "for some of the cars that this can be, no record says which part was fitted", because };
  return markOf(knowledge, parts, mark, `of ${list(parts, "and")}, as built`, because);
}

/** What all of these parts show. */
function markOf(
  { catalog }: CarKnowledge,
  numbers: readonly string[],
  mark: string,
  of: string,
  because: readonly Reason[] = [],
): Figure {
  const parts = numbers.map((number) => catalog.parts.get(number)).filter((part) => part !== undefined);
  const feature = parts[0]?.features.find((it) => it.id === mark);
  const name = feature?.name ?? mark;
  const records = feature ? [reasonForRecord(catalog, feature.record)] : [];
  const said = { because: uniqueReasons([...records, ...because]) };
  const shown = [...new Set(parts.map((part: Part) => part.marks[mark]))];
  const [only] = shown;
  if (shown.length !== 1) return { why: `${name}: it depends on the part, ${list(numbers, "or")}`, ...said };
  if (only === undefined || only === "none") return { why: `${name}: not on record`, ...said };
  return { typed: feature?.unit ? `${only} ${feature.unit}` : String(only), why: `${name} ${of}`, ...said };
}

function settingFigure(
  knowledge: CarKnowledge,
  { setting: name, side }: { setting: string; side: "low" | "high" | "nominal" },
  input: CarInput,
): Figure {
  const { catalog } = knowledge;
  const car = readCar(knowledge, input);
  if (car.cars === NONE) return { why: "no such car was built", because: [] };
  const found = settingsOf(catalog)
    .filter((matter) => matter.statements.some((it) => it.name === name))
    .map((matter) => settingOn(knowledge, car, matter))
    .filter(({ view }) => view.verdict !== "no such setting");
  const stated = found.flatMap(({ figures }) =>
    figures.values.flatMap((value) => value.statements as readonly Setting[]),
  );
  const because = uniqueReasons(stated.map((it) => reasonFor(catalog, it)));
  const none = (why: string): Figure => ({ why: `${name}: ${why}`, because });
  const [only, ...more] = found;
  if (!only) return none("no record gives it for this car");
  if (only.view.perhapsNone) return none("for some of the cars that this can be, it is not on record");
  if (more.length > 0 || only.view.verdict !== "in force") return none("it depends on the car; say more about it");
  const value = stated[0]?.[side];
  if (value === undefined) return none(`no ${side} value is on record`);
  const moved =
    only.view.movedWith === undefined ? "in force for this car" : `it came to this car with ${only.view.movedWith}`;
  return { typed: `${value} ${stated[0]?.unit}`, why: `${name}, ${moved}`, because };
}
