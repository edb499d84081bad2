/** The kinds of node: their words, their order, and the outline that tells them apart without colour. */
import type { NodeKind } from "./map-graph.ts";

export interface Kind {
  readonly one: string;
  readonly many: string;
  /** The outline inside a box of 16 by 16, as an SVG path. The map draws the shape of the same name. */
  readonly outline: string;
  readonly shape: "square" | "circle" | "diamond" | "hexagon" | "rectangle" | "triangle" | "wedge";
  /** Half the width on the map in pixels when the whole graph is in view. */
  readonly size: number;
}

/** What comes first is named first where there is not room for all labels. */
export const KINDS: Readonly<Record<NodeKind, Kind>> = {
  system: {
    one: "system",
    many: "systems",
    shape: "hexagon",
    outline: "M4.5 2h7L15 8l-3.5 6h-7L1 8z",
    size: 9,
  },
  line: { one: "model line", many: "model lines", shape: "rectangle", outline: "M1 4.5h14v7H1z", size: 8 },
  year: { one: "model year", many: "model years", shape: "triangle", outline: "M8 1.5L15 14H1z", size: 8 },
  bulletin: { one: "bulletin", many: "bulletins", shape: "wedge", outline: "M1 2h14L8 14.5z", size: 7 },
  record: { one: "change record", many: "change records", shape: "square", outline: "M2.5 2.5h11v11h-11z", size: 5 },
  component: { one: "component", many: "components", shape: "diamond", outline: "M8 1l7 7-7 7-7-7z", size: 5.5 },
  part: { one: "part", many: "parts", shape: "circle", outline: "M8 2a6 6 0 100 12A6 6 0 008 2z", size: 4 },
};

export const KIND_ORDER = Object.keys(KINDS) as readonly NodeKind[];

/** The kinds that so much hangs on that a walk through them leads everywhere: it may start there, but not pass. */
export const HUBS: ReadonlySet<NodeKind> = new Set<NodeKind>(["line", "year"]);
