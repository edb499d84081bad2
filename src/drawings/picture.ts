/**
 * A small line drawing as data, so that the build and a page draw the same. Lengths are in drawing units; y grows downward.
 * A drawing says nothing that does not stand in words too: `alt` is those words.
 */
export interface Picture {
  readonly width: number;
  readonly height: number;
  /** The whole drawing in words, one sentence. */
  readonly alt: string;
  readonly shapes: readonly Shape[];
}

/** How a shape is drawn. `body`: the outline of the thing; `mark`: what is to be looked at; `measure`: lines of a dimension; `hidden`: an edge behind; `moved`: what moves. */
export type Stroke = "body" | "mark" | "measure" | "hidden" | "moved";

export type Shape =
  | {
      readonly is: "line";
      readonly x1: number;
      readonly y1: number;
      readonly x2: number;
      readonly y2: number;
      readonly stroke: Stroke;
    }
  | {
      readonly is: "rect";
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
      readonly round?: number;
      readonly stroke: Stroke;
      readonly filled?: boolean;
    }
  | {
      readonly is: "circle";
      readonly cx: number;
      readonly cy: number;
      readonly r: number;
      readonly stroke: Stroke;
      readonly filled?: boolean;
    }
  | { readonly is: "path"; readonly d: string; readonly stroke: Stroke; readonly filled?: boolean }
  | {
      readonly is: "text";
      readonly x: number;
      readonly y: number;
      readonly text: string;
      readonly anchor: "start" | "middle" | "end";
      readonly size?: "small" | "large";
    };
