/** What a person has chosen to see. All of it stands in the address of the page, so that a view can be sent. */
import type { NodeKind, Relation } from "./map-graph.ts";

export interface Camera {
  /** The middle of the picture; the whole graph lies between 0 and 1. */
  readonly x: number;
  readonly y: number;
  /** 1 shows the whole graph, 0.5 half of its width. */
  readonly ratio: number;
}

export interface View {
  readonly as: "map" | "table";
  /** Key of the selected node. */
  readonly focus: string | undefined;
  /** The nodes of an answer's argument, the part asked first. The selected node is always one of them. */
  readonly proof: readonly string[];
  /** How far the neighbourhood of the selected node reaches. */
  readonly steps: 1 | 2;
  /** Nothing but the neighbourhood, or the argument, is shown. Without a selection it is always false. */
  readonly only: boolean;
  readonly hiddenKinds: readonly NodeKind[];
  readonly hiddenRelations: readonly Relation[];
  /** Chosen systems, lines and years; none chosen means all. */
  readonly systems: readonly string[];
  readonly lines: readonly string[];
  readonly years: readonly number[];
  /** Where the picture was moved to; nothing while it follows the selection by itself. */
  readonly camera: Camera | undefined;
  /** Page of the table, from 1. */
  readonly page: number;
}

export const FIRST_VIEW: View = {
  as: "map",
  focus: undefined,
  proof: [],
  steps: 1,
  only: false,
  hiddenKinds: [],
  hiddenRelations: [],
  systems: [],
  lines: [],
  years: [],
  camera: undefined,
  page: 1,
};

/**
 * A view that does not contradict itself: without a selection there is nothing to leave the rest out for, and an argument
 * is left behind with the selection of a node outside it.
 */
export function settled(view: View): View {
  const { focus, proof } = view;
  return {
    ...view,
    only: view.only && focus !== undefined,
    proof: focus !== undefined && proof.includes(focus) ? proof : [],
  };
}

/** How many choices of a filter are in force. */
export function filtersInForce(view: View): number {
  return [view.hiddenKinds, view.hiddenRelations, view.systems, view.lines, view.years].filter(
    (choices) => choices.length > 0,
  ).length;
}

export const NO_FILTERS = {
  hiddenKinds: [],
  hiddenRelations: [],
  systems: [],
  lines: [],
  years: [],
} as const satisfies Partial<View>;
