/**
 * A view as the query of an address, and back.
 *
 *   ?focus=part:12-3456&steps=2&rest=yes                      what is selected, how far is lit up, and with the rest
 *   &proof=part:12-3456,part:12-3000,record:R1               the argument of an answer, the part asked first
 *   &view=table&page=2                                         table instead of map
 *   &hide=part&without=concerns&system=brakes&line=A&year=1973   filters; a name may come more than once
 *   &at=0.5,0.25,0.3                                         where the picture was moved to: middle and ratio
 *
 * What is as in the first view is left out. What an address says that the graph does not know is passed over.
 */

import { KINDS } from "./kinds.ts";
import type { MapGraph, NodeKind, Relation } from "./map-graph.ts";
import { type Camera, FIRST_VIEW, settled, type View } from "./view.ts";

export function writeAddress(view: View): string {
  const query = new URLSearchParams();
  if (view.focus !== undefined) query.append("focus", view.focus);
  if (view.proof.length > 0) query.append("proof", view.proof.join(","));
  if (view.steps !== FIRST_VIEW.steps) query.append("steps", String(view.steps));
  if (view.focus !== undefined && !view.only) query.append("rest", "yes");
  if (view.as !== FIRST_VIEW.as) query.append("view", view.as);
  for (const kind of view.hiddenKinds) query.append("hide", kind);
  for (const relation of view.hiddenRelations) query.append("without", relation);
  for (const system of view.systems) query.append("system", system);
  for (const line of view.lines) query.append("line", line);
  for (const year of view.years) query.append("year", String(year));
  if (view.page > 1) query.append("page", String(view.page));
  if (view.camera) query.append("at", [view.camera.x, view.camera.y, view.camera.ratio].map(round).join(","));
  // Both signs may stand in a query as they are, and the address stays good to read.
  const text = query.toString().replaceAll("%3A", ":").replaceAll("%2C", ",");
  return text === "" ? "" : `?${text}`;
}

export function readAddress(search: string, graph: MapGraph): View {
  const query = new URLSearchParams(search);
  const { systems, lines } = graph.document.names;
  const isNode = (key: string): key is string => graph.nodes.has(key);
  const proof = [...new Set((query.get("proof") ?? "").split(","))].filter(isNode);
  const asked = query.get("focus");
  // An argument without a selection begins at the part asked.
  const focus = asked !== null && isNode(asked) ? asked : proof[0];
  return settled({
    as: query.get("view") === "table" ? "table" : "map",
    focus,
    proof,
    steps: query.get("steps") === "2" ? 2 : 1,
    only: !query.has("rest"),
    hiddenKinds: known(query, "hide", (kind): kind is NodeKind => Object.hasOwn(KINDS, kind)),
    hiddenRelations: known(query, "without", (relation): relation is Relation =>
      Object.hasOwn(graph.document.relations, relation),
    ),
    systems: known(query, "system", (id): id is string => Object.hasOwn(systems, id)),
    lines: known(query, "line", (id): id is string => Object.hasOwn(lines, id)),
    years: known(query, "year", (year): year is string => graph.nodes.has(`year:${year}`)).map(Number),
    camera: readCamera(query.get("at")),
    page: Math.max(1, Math.floor(Number(query.get("page")) || 1)),
  });
}

/** The values of a name that are known, each once. */
function known<T extends string>(query: URLSearchParams, name: string, is: (value: string) => value is T): T[] {
  return [...new Set(query.getAll(name))].filter(is);
}

function readCamera(text: string | null): Camera | undefined {
  const [x, y, ratio, ...more] = (text ?? "")
    .split(",")
    .map((word) => (word.trim() === "" ? Number.NaN : Number(word)));
  if (x === undefined || y === undefined || ratio === undefined || more.length > 0) return undefined;
  if (![x, y, ratio].every(Number.isFinite) || ratio <= 0) return undefined;
  return { x, y, ratio };
}

function round(value: number): number {
  return Math.round(value * 10000) / 10000;
}
