/** The records of one thread: a part follows a part, or a setting a setting, each from one point to the next. */
import type { Component, Thread } from "./make-folder.ts";
import type { Random } from "./random.ts";
import { type Point, stretch } from "./stretches.ts";
import { CAUTIONS, CUSTOMER, QUANTITIES, REASONS, REMEDIES, RESULTS } from "./words.ts";

export interface NewPart {
  readonly component: Component;
  readonly number: string;
  readonly name: string;
  readonly marks: Readonly<Record<string, string | number>>;
}

export interface NewRecord {
  readonly id: string;
  readonly year: number;
  readonly front: object;
  readonly story: string;
}

/** `parts` and `ids` are everything that was made so far; what is made here is added to them. */
export function makeRecord(thread: Thread, parts: NewPart[], ids: string[], chance: Random): NewRecord[] {
  const { component, points, lines, plant } = thread;
  const make = (name: string): string => makePart(component, name, parts, chance);
  const isSetting = chance.percent(25);
  const window = makeWindow(thread, chance);
  let fitted = isSetting ? [] : thread.places.map(() => make(component.name));
  return points.map((point, i) => {
    const before = stretch(lines, plant, points[i - 1], point);
    const after = stretch(lines, plant, point, points[i + 1]);
    const from = stretch(lines, plant, point, undefined);
    const id = `C${String(point.year).slice(2)}-${String(ids.length + 1).padStart(5, "0")}`;
    let facts: object;
    let said: string;
    if (isSetting) {
      facts = { settings: [...(i === 0 ? [window(0, before)] : []), window(i + 1, after)] };
      said = `The ${component.name} is set to another figure from here on`;
    } else {
      const old = fitted;
      fitted = thread.places.map(() => make(component.name));
      facts = replace(thread, old, fitted, before, after, make, chance);
      said = `The ${component.name} is now ${fitted.join(" and ")}, where it was ${old.join(" and ")}`;
    }
    const retrofit = !isSetting && chance.percent(8);
    const front = {
      id,
      title: `${isSetting ? "Other figure for" : chance.pick(["Stronger", "Longer", "Sealed", "Lighter", "Simpler"])} ${component.name}`,
      issued: `${point.year - 1}-${String(chance.whole(7, 12)).padStart(2, "0")}-${String(chance.whole(1, 28)).padStart(2, "0")}`,
      kinds: [
        isSetting ? "setting" : "part",
        ...(point.sequence === undefined ? [] : ["running"]),
        ...(retrofit ? ["retrofit"] : []),
      ],
      components: [component.id],
      starts: starts(point, plant),
      scope: from,
      ...facts,
      ...(chance.percent(15) ? { procedures: [{ steps: `${chance.pick(REMEDIES)}. ${chance.pick(REMEDIES)}.` }] } : {}),
      ...(chance.percent(12)
        ? {
            intervals: [
              {
                name: `look at the ${thread.places[0]}`,
                months: chance.pick([6, 12, 24]),
                miles: chance.pick([6000, 12_000]),
                scope: after,
              },
            ],
          }
        : {}),
      ...(chance.percent(50) ? { "left-alone": [`The bolts round the ${component.name} stay as they were.`] } : {}),
      "tell-apart": `Look at the ${[component.name, ...fitted].join(" ")} from below, with the wheel off. ${chance.pick(REMEDIES)}.`,
      otherwise: `${chance.pick(RESULTS)} ${chance.pick(RESULTS)}`,
      ...(chance.percent(60) ? { caution: chance.pick(CAUTIONS) } : {}),
      ...(chance.percent(45) ? { customer: chance.pick(CUSTOMER) } : {}),
      ...(ids.length > 0 && chance.percent(50) ? { links: [chance.pick(ids)] } : {}),
      ...(i > 0 && chance.percent(2) ? { cancels: [{ record: ids.at(-1), scope: from }] } : {}),
    };
    ids.push(id);
    return {
      id,
      year: point.year,
      front,
      story: `${said}. ${chance.pick(REASONS)}. ${chance.pick(REMEDIES)}; ${chance.pick(REASONS).toLowerCase()}. ${chance.pick(REMEDIES)}.`,
    };
  });
}

function starts({ year, sequence }: Point, plant: string): string {
  return sequence === undefined
    ? `Start of ${year}`
    : `At plant ${plant} within ${year}, from number ${sequence}; elsewhere with ${year + 1}`;
}

/** The new parts in place of the old ones, place by place: what was built, what is delivered, and both directions of use. */
function replace(
  thread: Thread,
  old: readonly string[],
  fitted: readonly string[],
  before: string,
  after: string,
  make: (name: string) => string,
  chance: Random,
): object {
  const permitted = chance.percent(70);
  const companion = permitted && chance.percent(35) ? [make(`${thread.component.name} washer`)] : [];
  const kit = chance.percent(20) ? make(`${thread.component.name} kit`) : undefined;
  const refusal = chance.pick(["does-not-go-on", "must-not-be-used", "must-not-be-used"]);
  return {
    built: thread.places.flatMap((place, i) => [
      { place, part: old[i], scope: before },
      { place, part: fitted[i], scope: after },
    ]),
    // What is refused in place of the old part is not delivered for it.
    ...(chance.percent(60) && permitted
      ? { supersedes: fitted.map((part, i) => ({ old: old[i], new: part, with: companion })) }
      : {}),
    "stands-in": fitted.flatMap((part, i) => [
      permitted
        ? { part, for: old[i], verdict: companion.length > 0 ? "on-conditions" : "yes", with: companion }
        : { part, for: old[i], verdict: refusal, why: chance.pick(RESULTS) },
      chance.percent(40)
        ? { part: old[i], for: part, verdict: "yes" }
        : { part: old[i], for: part, verdict: refusal, why: chance.pick(RESULTS) },
    ]),
    ...(kit === undefined
      ? {}
      : {
          kits: [{ kit, contents: [...fitted.map((part) => ({ part })), { name: "tube of grease" }] }],
          "service-only": [kit],
        }),
  };
}

function makePart(component: Component, name: string, parts: NewPart[], chance: Random): string {
  const number = `${chance.whole(10, 99)}-${String(parts.length + 1).padStart(5, "0")}`;
  parts.push({
    component,
    number,
    name,
    marks: {
      ribs: chance.pick(["none", "one", "two", "three"]),
      dot: chance.pick(["none", "white", "yellow", "green"]),
      length: chance.whole(400, 900) / 10,
    },
  });
  return number;
}

/** The figure of this thread, a step further with every change. */
function makeWindow(thread: Thread, chance: Random): (change: number, scope: string) => object {
  const { name, unit, low, step } = chance.pick(QUANTITIES);
  const figure = (steps: number): string => String(Number((low + steps * step).toPrecision(6)));
  return (change, scope) => ({
    name: `${thread.places[0]} ${name}`,
    window: `${figure(change)}..${figure(change + 2)}`,
    unit,
    conditions: "cold",
    scope,
  });
}
