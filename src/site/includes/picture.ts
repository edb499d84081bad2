/** A line drawing in a page. What its strokes look like stands in drawing.css. */
import type { Picture, Shape } from "../../drawings/picture.ts";
import { type Html, html } from "./html.ts";

/** The size on the page is the drawing's own; narrower than that it shrinks. */
export function picture({ width, height, alt, shapes }: Picture): Html {
  return html`<svg class="drawing" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" aria-label="${alt}">${shapes.map(shape)}</svg>`;
}

function shape(it: Shape): Html {
  switch (it.is) {
    case "line":
      return html`<line class="d-${it.stroke}" x1="${it.x1}" y1="${it.y1}" x2="${it.x2}" y2="${it.y2}"/>`;
    case "rect":
      return html`<rect class="${classOf(it)}" x="${it.x}" y="${it.y}" width="${it.width}" height="${it.height}" rx="${it.round ?? 0}"/>`;
    case "circle":
      return html`<circle class="${classOf(it)}" cx="${it.cx}" cy="${it.cy}" r="${it.r}"/>`;
    case "path":
      return html`<path class="${classOf(it)}" d="${it.d}"/>`;
    case "text":
      return html`<text class="d-text ${it.size ?? "plain"} ${it.anchor}" x="${it.x}" y="${it.y}">${it.text}</text>`;
  }
}

function classOf({ stroke, filled = false }: { stroke: string; filled?: boolean }): string {
  return filled ? `d-${stroke} filled` : `d-${stroke}`;
}
