/** The small drawings of the legend: the shape of a kind, the line of a relation. They say nothing that words do not. */
import { KINDS } from "./kinds.ts";
import type { NodeKind } from "./map-graph.ts";
import type { RelationLook } from "./relation-look.ts";

export function kindSign(kind: NodeKind): SVGElement {
  return sign("0 0 16 16", `map-sign map-fill-${kind}`, KINDS[kind].outline);
}

export function relationSign(look: RelationLook): SVGElement {
  const ends = { order: "", say: "M18 4l6 4-6 4z", may: "M18 4l6 4-6 4z", "must-not": "M21 2h2.5v12H21z" };
  return sign("0 0 24 16", `map-sign map-stroke-${look}`, `M0 7h${look === "order" ? 24 : 19}v2H0z${ends[look]}`);
}

function sign(box: string, className: string, outline: string): SVGElement {
  const svg = document.createElementNS("http://www.w3.org/2000/svg", "svg");
  svg.setAttribute("viewBox", box);
  svg.setAttribute("class", className);
  svg.setAttribute("aria-hidden", "true");
  const path = document.createElementNS("http://www.w3.org/2000/svg", "path");
  path.setAttribute("d", outline);
  svg.append(path);
  return svg;
}
