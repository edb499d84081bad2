/** What the page may ask of the drawn map. Only draw.ts knows with what it is drawn. */
import type { Colours } from "./colours.ts";
import type { MapGraph } from "./map-graph.ts";
import type { Picture } from "./picture.ts";
import type { Camera } from "./view.ts";

export interface Drawing {
  show(picture: Picture): void;
  /** New colours, as when the night begins. */
  paint(colours: Colours): void;
  camera(): Camera;
  moveTo(camera: Camera, how: "at once" | "gently"): void;
  /** Moves so that these nodes fill the picture; without any, the whole graph. */
  fit(keys: ReadonlySet<string>, how: "at once" | "gently"): void;
  /** Below 1 comes nearer. */
  zoom(factor: number): void;
  /** By parts of the width and height of the picture. */
  pan(x: number, y: number): void;
  nodeInTheMiddle(): string | undefined;
  /** Where a node is drawn now, in pixels of the stage. */
  placeOf(key: string): { x: number; y: number } | undefined;
  end(): void;
}

export interface DrawingParts {
  readonly stage: HTMLElement;
  /** What lies over the stage and would hide a name. */
  readonly over: readonly HTMLElement[];
  readonly graph: MapGraph;
  readonly colours: Colours;
  /** The family of the page's own letters. */
  readonly font: string;
  /** No movement that is not asked for. */
  readonly calm: () => boolean;
  readonly onSelect: (key: string) => void;
  /** The person moved the picture. */
  readonly onMoved: (camera: Camera) => void;
  /** The machine gave up drawing. */
  readonly onLost: () => void;
}
