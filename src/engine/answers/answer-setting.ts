/** "Which figure is in force on this car?" With its history by year, and what the records say beside it. */
import { statementsOf } from "../records/statement.ts";
import { NONE } from "../scope/diagram.ts";
import { neededFacts } from "../scope/facts.ts";
import { asItLeft, type KnownCar, readCar, withFacts } from "./car.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { cautionViews } from "./cautions-for.ts";
import { type FiguresForCar, figuresForCar, silentAmong } from "./figures-for-car.ts";
import { componentOf, findSettings, type SettingMatter, settingsOf } from "./find-settings.ts";
import { lookAmong, sayFact } from "./look.ts";
import { type Value, valuesIn, yearSpan, yearsOfCar } from "./net-change.ts";
import { reasonFor, uniqueReasons } from "./say.ts";
import { NO_SUCH_CAR, sayConflict } from "./say-conflict.ts";
import type { CarInput } from "./shapes/car.ts";
import type { SettingAnswer, SettingView } from "./shapes/setting.ts";
import { verdictOf, viewSetting, viewValues } from "./view-figures.ts";

export interface SettingFound {
  readonly matter: SettingMatter;
  readonly figures: FiguresForCar;
  readonly view: SettingView;
}

export function answerSetting(
  knowledge: CarKnowledge,
  { setting: typed, car: input }: { setting?: string | undefined; car: CarInput },
): SettingAnswer {
  const { catalog } = knowledge;
  const car = readCar(knowledge, input);
  const meant = typed === undefined ? [...settingsOf(catalog)] : findSettings(catalog, typed);
  const found = meant.map((matter) => settingOn(knowledge, car, matter));
  const facts = car.facts.map((fact) => sayFact(catalog.space, fact));
  const base = {
    question: "setting" as const,
    facts,
    notNeeded: [],
    history: [],
    withIt: [],
    cautions: [],
  };
  if (car.cars === NONE) {
    return {
      ...base,
      ...sayConflict(catalog, car),
      verdict: "no such car",
      because: [],
      settings: [],
      words: NO_SUCH_CAR,
    };
  }
  const alive = found.filter(({ view }) => view.verdict !== "no such setting");
  if (typed === undefined)
    return {
      ...base,
      verdict: "list",
      because: reasonsOf(knowledge, alive),
      settings: alive.map((it) => it.view),
      words: `${alive.length} settings are on record for this car.`,
    };
  const [only] = alive;
  if (!only)
    return {
      ...base,
      verdict: "no such setting",
      because: reasonsOfAll(knowledge, found),
      settings: found.map((it) => it.view),
      words: sayNone(found),
    };
  if (alive.length > 1)
    return {
      ...base,
      verdict: "choose",
      because: reasonsOf(knowledge, alive),
      settings: alive.map((it) => it.view),
      words: `These words fit ${alive.length} settings of this car. Which one is meant?`,
    };
  return { ...base, ...whole(knowledge, car, only) };
}

/** One setting on the car. */
export function settingOn(knowledge: CarKnowledge, car: KnownCar, matter: SettingMatter): SettingFound {
  const figures = figuresForCar(knowledge, car, matter);
  return { matter, figures, view: viewSetting(knowledge, matter, figures, car.cars) };
}

/** What to look at where several figures are possible. */
export function askOf({ catalog: { space } }: CarKnowledge, car: KnownCar, values: readonly Value[]) {
  return values.length > 1 ? lookAmong(space, car.cars, values) : undefined;
}

function whole(knowledge: CarKnowledge, car: KnownCar, found: SettingFound) {
  const { catalog } = knowledge;
  const { matter, figures, view } = found;
  const { verdict } = view;
  const ask = verdict === "look first" ? askOf(knowledge, car, figures.values) : undefined;
  const needed =
    verdict === "in force"
      ? neededFacts(car.facts, (facts) => isSame(knowledge, found, withFacts(knowledge, facts)))
      : car.facts;
  const components = matter.statements.flatMap((it) => componentOf(catalog, it) ?? []);
  return {
    verdict: verdict as SettingAnswer["verdict"],
    because: reasonsOf(knowledge, [found]),
    ...(ask ? { ask } : {}),
    facts: needed.map((fact) => sayFact(catalog.space, fact)),
    notNeeded: car.facts.filter((fact) => !needed.includes(fact)).map((fact) => sayFact(catalog.space, fact)),
    settings: [view],
    history: historyOf(knowledge, car, matter),
    withIt: withIt(knowledge, car, figures.values),
    cautions: cautionViews(
      catalog,
      components.map((it) => it.system),
      components.map((it) => it.id),
    ),
    words: sayWhole(view, ask?.what),
  };
}

/** Whether with other facts the same figure, measured in the same way, would be in force. */
function isSame(knowledge: CarKnowledge, { matter, figures }: SettingFound, car: KnownCar): boolean {
  const { values } = figuresForCar(knowledge, car, matter);
  return verdictOf(knowledge.catalog, values, car.cars) === "in force" && values[0]?.said === figures.values[0]?.said;
}

function sayWhole(view: SettingView, look: string | undefined): string {
  const [figure] = view.figures;
  const against =
    view.refused.length > 0
      ? view.refused.join(" ")
      : `Whether ${view.movedWith} may be on this car is another question.`;
  const moved = view.movedWith === undefined ? "" : ` It came to the car with ${view.movedWith}. ${against}`;
  const unsaid =
    view.unsaid.length === 0
      ? ""
      : ` No record ties a figure to ${view.unsaid.join(" and ")}, found on the car: this is the figure of the part the plant fitted.`;
  switch (view.verdict) {
    case "in force":
      return `${view.name}: ${figure?.said}${figure && figure.conditions.length > 0 ? ` (${figure.conditions.join(", ")})` : ""}.${moved}${unsaid}`;
    case "contradiction":
      return `Two records give different figures for the same car. Use neither before it is settled.`;
    default:
      if (!look && view.movedWith !== undefined)
        return `The figure goes with the part, and no record settles which one holds here: that of ${view.movedWith}, or the car's own. ${against}`;
      return `Which figure is in force depends on what is not known yet. ${look ?? "Look at the part."}${moved}`;
  }
}

function sayNone(found: readonly SettingFound[]): string {
  const names = found.map(({ matter }) => `“${matter.name}”`).join(", ");
  return `No record gives this car a figure for ${names}. That is not the same as “any will do”.`;
}

function reasonsOf({ catalog }: CarKnowledge, found: readonly SettingFound[]) {
  return uniqueReasons(
    found
      .flatMap(({ figures }) => figures.values.flatMap((value) => value.statements))
      .map((it) => reasonFor(catalog, it)),
  );
}

function reasonsOfAll({ catalog }: CarKnowledge, found: readonly SettingFound[]) {
  return uniqueReasons(found.flatMap(({ matter }) => matter.statements).map((it) => reasonFor(catalog, it)));
}

/** Cars like this one, year by year, as they were built; neighbouring years with the same figures are one. */
function historyOf(knowledge: CarKnowledge, car: KnownCar, matter: SettingMatter): SettingAnswer["history"] {
  const { catalog } = knowledge;
  const [first, last] = yearSpan(catalog);
  const spans: { from: number; to: number; values: readonly Value[]; key: string; cars: typeof car.cars }[] = [];
  for (const year of yearsOfCar(knowledge, asItLeft(knowledge, car), first, last)) {
    if (year.cars === NONE) continue;
    const values = valuesIn(knowledge, matter, { year: year.year, cars: year.cars });
    const key = values.map((value) => value.said).join("\n");
    const before = spans.at(-1);
    if (before && before.key === key && before.to === year.year - 1) before.to = year.year;
    else spans.push({ from: year.year, to: year.year, values, key, cars: year.cars });
  }
  return spans.map(({ from, to, values, cars }) => ({
    from,
    to,
    figures: viewValues(catalog, values, cars),
    notOnRecord: silentAmong(values) !== NONE,
  }));
}

function withIt({ catalog }: CarKnowledge, car: KnownCar, values: readonly Value[]): SettingAnswer["withIt"] {
  const records = new Set(values.flatMap((value) => value.statements.map((it) => it.record)));
  return [...records].flatMap((id) => {
    const record = catalog.records.get(id);
    if (!record) return [];
    const steps = statementsOf(record.statements, "procedure").map((it) =>
      it.when ? `${it.when}: ${it.steps}` : it.steps,
    );
    const leftAlone = statementsOf(record.statements, "left-alone").map((it) => it.what);
    const tools = statementsOf(record.statements, "tool")
      .filter((it) => it.scope === undefined || catalog.space.sets.meet(car.cars, it.scope.cars))
      .map((it) => `${it.tool} ${it.use}`);
    return {
      record: id,
      title: record.facts.title,
      procedure:
        steps.length > 0 || record.facts.kinds.includes("procedure") ? ("changed" as const) : ("not stated" as const),
      steps,
      tools,
      leftAlone,
      ...(record.facts.otherwise === undefined ? {} : { otherwise: record.facts.otherwise }),
      ...(record.facts.caution === undefined ? {} : { caution: record.facts.caution }),
    };
  });
}
