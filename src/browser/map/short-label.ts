/** The label of a node where many stand side by side: records and parts by their id, others by name, long ones cut. */
import type { MapNode } from "./map-graph.ts";

const LONGEST = 26;

export function shortLabel(node: MapNode): string {
  if (node.kind === "record" || node.kind === "part") return node.id;
  return cut(node.label, LONGEST);
}

/** The label of a node that is looked at: in full, unless it is longer than a line. */
export function longLabel(node: MapNode): string {
  return cut(node.label, 60);
}

function cut(text: string, most: number): string {
  if (text.length <= most) return text;
  const at = text.lastIndexOf(" ", most - 1);
  return `${text.slice(0, at > most / 2 ? at : most - 1).replace(/[,;:]$/, "")}…`;
}
