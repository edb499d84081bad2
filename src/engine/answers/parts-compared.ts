/**
 * The parts among which somebody asks which one it is: those of a component or place, or the ones named.
 *
 *   All must be parts of one component. A kit is not a single part: of a component those kits are left out of which no marks are on
 *   record, unless there is nothing else.
 */
import type { Component, Part } from "../records/catalog.ts";
import { list } from "../scope/describe.ts";
import { nearest } from "../scope/nearest.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { findComponent } from "./find-component.ts";
import { findPlace } from "./find-place.ts";
import { partIndexOf } from "./part-indexes.ts";
import { requirePart } from "./part-number.ts";
import { QuestionError } from "./question-error.ts";
import type { TellApartAnswer } from "./shapes/tell-apart.ts";

export interface PartsAsked {
  readonly component?: string | undefined;
  /** Part numbers, in any spelling. */
  readonly parts?: readonly string[] | undefined;
  readonly place?: string | undefined;
}

export interface PartsCompared {
  readonly component: Component;
  readonly parts: readonly Part[];
  readonly leftOut: TellApartAnswer["leftOut"];
  readonly place: string | undefined;
}

export function partsCompared(knowledge: CarKnowledge, asked: PartsAsked): PartsCompared {
  const { catalog } = knowledge;
  const place = asked.place === undefined ? undefined : findPlace(knowledge, asked.place);
  const named = [...new Set((asked.parts ?? []).map((typed) => requirePart(catalog, typed)))];
  const components = [
    ...(asked.component === undefined ? [] : [requireComponent(knowledge, asked.component).id]),
    ...(place === undefined ? [] : [catalog.places.get(place)?.id ?? ""]),
    ...named.map((part) => part.component),
  ];
  const [id, ...others] = new Set(components);
  const nameOf = (one: string): string => catalog.components.get(one)?.name ?? one;
  if (id === undefined) throw new QuestionError("Which parts? Name a component, a place, or some part numbers.");
  if (others.length > 0)
    throw new QuestionError(
      `These are different things: ${list([id, ...others].map(nameOf), "and")}. Ask about one of them.`,
    );
  const component = catalog.components.get(id) as Component;
  if (named.length > 0) return { component, parts: named, leftOut: [], place };
  const { contentsOf } = partIndexOf(catalog);
  const all = [...catalog.parts.values(), ...catalog.relatives.values()].filter((part) => part.component === id);
  const isBareKit = (part: Part): boolean => contentsOf.has(part.number) && Object.keys(part.marks).length === 0;
  const kits = all.every(isBareKit) ? [] : all.filter(isBareKit);
  return {
    component,
    parts: all.filter((part) => !kits.includes(part)),
    leftOut: kits.map(({ number, name }) => ({ number, name, why: "it is a kit, not a single part" })),
    place,
  };
}

function requireComponent({ catalog }: CarKnowledge, typed: string): Component {
  const found = findComponent(catalog, typed);
  if (found) return found;
  const all = [...catalog.components.values()];
  const meant = nearest(
    typed.trim().toLowerCase(),
    all.flatMap((one) => [one.id, one.name, ...one.aliases]),
  );
  throw new QuestionError(`No component is called '${typed.trim()}'.${meant ? ` Did you mean '${meant}'?` : ""}`);
}
