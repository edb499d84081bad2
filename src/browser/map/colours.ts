/** The colours of the map, read from the custom properties of the style sheet, for what cannot be styled by one. */

import { KIND_ORDER } from "./kinds.ts";
import type { NodeKind } from "./map-graph.ts";
import { mix } from "./mix.ts";
import type { RelationLook } from "./relation-look.ts";

export interface Colours {
  readonly paper: string;
  readonly ink: string;
  readonly accent: string;
  readonly kinds: Readonly<Record<NodeKind, string>>;
  readonly relations: Readonly<Record<RelationLook, string>>;
  /** What is not in the neighbourhood of the selected node. */
  readonly dimNode: string;
  readonly dimEdge: string;
}

export function readColours(map: HTMLElement): Colours {
  const probe = map.ownerDocument.createElement("span");
  map.append(probe);
  const read = (property: string): string => {
    probe.style.color = `var(${property})`;
    return toHex(getComputedStyle(probe).color);
  };
  const paper = read("--paper");
  const colours: Colours = {
    paper,
    ink: read("--ink"),
    accent: read("--accent"),
    kinds: Object.fromEntries(KIND_ORDER.map((kind) => [kind, read(`--map-${kind}`)])) as Colours["kinds"],
    relations: {
      order: read("--map-order"),
      say: read("--map-say"),
      may: read("--map-may"),
      "must-not": read("--map-must-not"),
    },
    dimNode: mix(read("--soft"), paper, 0.7),
    dimEdge: mix(read("--soft"), paper, 0.88),
  };
  probe.remove();
  return colours;
}

/** Any colour that the browser understands, as #rrggbb: a canvas of one pixel is asked, for it knows them all. */
function toHex(colour: string): string {
  const canvas = document.createElement("canvas");
  canvas.width = canvas.height = 1;
  const context = canvas.getContext("2d", { willReadFrequently: true });
  if (!context) return colour;
  context.fillStyle = colour;
  context.fillRect(0, 0, 1, 1);
  return `#${[...context.getImageData(0, 0, 1, 1).data.slice(0, 3)].map((part) => part.toString(16).padStart(2, "0")).join("")}`;
}
