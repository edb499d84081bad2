/**
 * The question of the address, asked of the records of the car's line; of all marks where no line is known, or where the records of
 * the line name no such part. What keeps it from being asked is said instead.
 */
import { answerTellApart } from "../../engine/answers/answer-tell-apart.ts";
import type { CarKnowledge } from "../../engine/answers/car-knowledge.ts";
import { findComponent } from "../../engine/answers/find-component.ts";
import { findPart } from "../../engine/answers/part-number.ts";
import { QuestionError } from "../../engine/answers/question-error.ts";
import type { TellApartAnswer } from "../../engine/answers/shapes/tell-apart.ts";
import type { Catalog } from "../../engine/records/catalog.ts";
import type { Own } from "../at-hand/own.ts";
import type { AtHand } from "../at-hand/page.ts";
import { carOf } from "../car/state.ts";
import { readSeenText } from "./seen.ts";

export interface Asked {
  readonly answer: TellApartAnswer;
  readonly catalog: Catalog;
  /** Whether the records of the car's line were asked. */
  readonly ofCar: boolean;
}

export type Outcome = Asked | { readonly wrong: string } | { readonly choose: string } | { readonly wait: true };

export function ask(hand: AtHand, bench: CarKnowledge | undefined): Outcome | undefined {
  const { own, line, reading } = hand;
  if (own.component === undefined && own.parts === undefined && own.place === undefined) return undefined;
  if (!bench || (reading.lines.length === 1 && !line)) return { wait: true };
  const component = own.component === undefined ? undefined : componentMeant(bench.catalog, own.component);
  if (own.component !== undefined && component === undefined)
    return { choose: `No component or part is called “${own.component}”. Pick the one that is meant.` };
  const question = {
    component,
    parts: own.parts?.split(/[,;]/).filter((number) => number.trim() !== ""),
    seen: readSeenText(own.seen).map((pair) => pair.join("=")),
  };
  const ofCar = line !== undefined && isAmong(line.knowledge.catalog, own, component);
  const { knowledge, car } = ofCar
    ? { knowledge: line.knowledge, car: carOf(reading.steps) }
    : { knowledge: bench, car: undefined };
  try {
    const answer = answerTellApart(knowledge, { ...question, place: own.place, car });
    return { answer, catalog: knowledge.catalog, ofCar };
  } catch (error) {
    if (!(error instanceof QuestionError)) throw error;
    return { wrong: error.message };
  }
}

/** The id of the component: by its own names, or those of a part of it. */
export function componentMeant(catalog: Catalog, typed: string): string | undefined {
  const found = findComponent(catalog, typed);
  if (found) return found.id;
  const part = findPart(catalog, typed);
  return part.as === "part number" ? part.part.component : undefined;
}

/** Whether the records of a line name what is asked about. */
function isAmong({ components, parts, places }: Catalog, own: Own, component: string | undefined): boolean {
  if (component !== undefined)
    return components.has(component) && [...parts.values()].some((part) => part.component === component);
  if (own.place !== undefined) return places.has(own.place);
  return [...parts.keys()].some((number) => own.parts?.includes(number));
}
