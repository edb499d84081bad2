/** The place that somebody means, by its name or by a component that has but one. */
import { nearest } from "../scope/nearest.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { findComponent } from "./find-component.ts";
import { QuestionError } from "./question-error.ts";

/** Throws a QuestionError with what may be meant. */
export function findPlace({ catalog }: CarKnowledge, typed: string): string {
  const wanted = typed.trim().toLowerCase();
  const exact = [...catalog.places.keys()].find((place) => place.toLowerCase() === wanted);
  if (exact !== undefined) return exact;
  const component = findComponent(catalog, typed);
  if (component?.places.length === 1) return component.places[0] as string;
  const near = nearest(wanted, [...catalog.places.keys()]);
  const options = component && component.places.length > 1 ? component.places : near ? [near] : [];
  throw new QuestionError(
    `No place is called '${typed.trim()}'. ${options.length > 0 ? `Did you mean ${options.map((one) => `'${one}'`).join(" or ")}?` : ""}`.trim(),
  );
}
