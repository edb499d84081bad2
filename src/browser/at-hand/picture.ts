/** A line drawing in an answer, as the pages without a script draw it too. */
import { html, svg, type TemplateResult } from "lit-html";
import type { Picture, Shape } from "../../drawings/picture.ts";

export function picture({ width, height, alt, shapes }: Picture): TemplateResult {
  return html`<svg class="drawing" viewBox="0 0 ${width} ${height}" width=${width} height=${height} role="img" aria-label=${alt}>${shapes.map(shape)}</svg>`;
}

function shape(it: Shape): TemplateResult<2> {
  switch (it.is) {
    case "line":
      return svg`<line class="d-${it.stroke}" x1=${it.x1} y1=${it.y1} x2=${it.x2} y2=${it.y2}></line>`;
    case "rect":
      return svg`<rect class=${classOf(it)} x=${it.x} y=${it.y} width=${it.width} height=${it.height} rx=${it.round ?? 0}></rect>`;
    case "circle":
      return svg`<circle class=${classOf(it)} cx=${it.cx} cy=${it.cy} r=${it.r}></circle>`;
    case "path":
      return svg`<path class=${classOf(it)} d=${it.d}></path>`;
    case "text":
      return svg`<text class="d-text ${it.size ?? "plain"} ${it.anchor}" x=${it.x} y=${it.y}>${it.text}</text>`;
  }
}

function classOf({ stroke, filled = false }: { stroke: string; filled?: boolean }): string {
  return filled ? `d-${stroke} filled` : `d-${stroke}`;
}
