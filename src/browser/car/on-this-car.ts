/** What a record says of the car at hand: which part it has in each place that the record names, and which figures hold. */
import type { KnownCar } from "../../engine/answers/car.ts";
import type { CarKnowledge } from "../../engine/answers/car-knowledge.ts";
import { placesOf } from "../../engine/answers/fitted.ts";
import { sayInterval, sayWindow } from "../../engine/answers/say.ts";
import type { ChangeRecord } from "../../engine/records/catalog.ts";
import { type Built, type Mixed, type Setting, statementsOf } from "../../engine/records/statement.ts";
import type { CarSet } from "../../engine/scope/diagram.ts";

/** How it is known: reported on the car; by what the plant built; built with one of several; or not known yet. */
type How = "found" | "built" | "one of them" | "look first";

export interface Has {
  readonly place: string;
  /** No part: nothing is fitted there. */
  readonly parts: readonly string[];
  readonly how: How;
  /** The mark by which the part is told from the others that the record names for the place: "bleeder bar: none". */
  readonly mark: string | undefined;
}

export interface Figure {
  readonly text: string;
  readonly conditions: string | undefined;
}

/**
 * Place by place: a part that was reported fitted there is the answer, whatever the plant built. Else the part that the plant
 * fitted on every car that this can be; in a mixed stretch any of its parts; and while some of these cars were built with one
 * part and some with another, those that it may be.
 */
export function partsOf(knowledge: CarKnowledge, { cars, fitted }: KnownCar, record: ChangeRecord): Has[] {
  const statements = [...statementsOf(record.statements, "built"), ...statementsOf(record.statements, "mixed")];
  return [...Map.groupBy(statements, (it) => it.place)].flatMap(([place, its]): Has[] => {
    const found = fitted.filter((part) => placesOf(knowledge, part).has(place));
    if (found.length > 0) return [{ place, parts: found, how: "found", mark: undefined }];
    const seen = asBuilt(knowledge, cars, its);
    if (!seen) return [];
    const [only] = seen.parts;
    const others = [...new Set(its.flatMap(named))];
    const mark = seen.how === "built" && only !== undefined ? markOf(knowledge, only, others) : undefined;
    return [{ place, ...seen, mark }];
  });
}

function asBuilt(
  { catalog: { space } }: CarKnowledge,
  cars: CarSet,
  statements: readonly (Built | Mixed)[],
): Pick<Has, "parts" | "how"> | undefined {
  const certain = statements.find((it) => space.sets.within(cars, it.scope.cars));
  if (certain) return { parts: named(certain), how: certain.type === "mixed" ? "one of them" : "built" };
  const parts = [
    ...new Set(statements.filter((it) => space.sets.meet(cars, it.scope.cars)).flatMap((it) => named(it))),
  ];
  return parts.length > 0 ? { parts, how: "look first" } : undefined;
}

function named(statement: Built | Mixed): readonly string[] {
  if (statement.type === "mixed") return statement.parts;
  return statement.part === undefined ? [] : [statement.part];
}

/** These wear off: that one is not there proves nothing. */
const WEARS_OFF: readonly string[] = ["painted", "printed"];

/** Of the marks by which the part differs from all of the others the one that is easiest to see. */
function markOf({ catalog: { parts } }: CarKnowledge, number: string, others: readonly string[]): string | undefined {
  const part = parts.get(number);
  const marks = (one: string): Readonly<Record<string, unknown>> => parts.get(one)?.marks ?? {};
  const rivals = others.filter((one) => one !== number);
  if (!part || rivals.length === 0) return undefined;
  const telling = part.features.filter(
    ({ id, made }) =>
      marks(number)[id] !== undefined &&
      !(marks(number)[id] === "none" && WEARS_OFF.includes(made)) &&
      rivals.every((one) => marks(one)[id] !== undefined && marks(one)[id] !== marks(number)[id]),
  );
  const [best] = telling.sort((a, b) => a.effort - b.effort);
  return best && `${best.name}: ${String(marks(number)[best.id])}${best.unit ? ` ${best.unit}` : ""}`;
}

/** Settings and intervals that hold on every car that this can be. Those of a place with another part on it are not said. */
export function figuresOf({ catalog: { space } }: CarKnowledge, { cars }: KnownCar, record: ChangeRecord): Figure[] {
  return [
    ...statementsOf(record.statements, "setting")
      .filter((it) => space.sets.within(cars, it.scope.cars))
      .map((it) => ({ text: `${it.name}: ${sayFigure(it)}`, conditions: it.conditions })),
    ...statementsOf(record.statements, "interval")
      .filter((it) => space.sets.within(cars, it.scope.cars))
      .map((it) => ({ text: `${it.name}: ${sayInterval(it)}`, conditions: undefined })),
  ];
}

function sayFigure({ low, high, unit }: Setting): string {
  return `${sayWindow(low, high)} ${unit}`;
}

/** "pump: HT-101 (colour: red)", "pump: nothing", "pump: found on the car: HT-105". */
export function hasWords({ place, parts, how, mark }: Has): string {
  const names = parts.length > 0 ? parts.join(" or ") : "nothing";
  switch (how) {
    case "found":
      return `${place}: found on the car: ${names}`;
    case "built":
      return `${place}: ${names}${mark ? ` (${mark})` : ""}`;
    case "one of them":
      return `${place}: ${names}, only looking tells`;
    case "look first":
      return `${place}: perhaps ${names}, look first`;
  }
}
