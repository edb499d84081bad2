/** The nodes and relations that the filters let through. */
import { argument } from "./argument.ts";
import type { MapEdge, MapGraph, MapNode } from "./map-graph.ts";
import type { View } from "./view.ts";

export interface Passing {
  readonly nodes: ReadonlySet<string>;
  readonly edges: ReadonlySet<MapEdge>;
}

/**
 * No choice in a filter lets everything pass.
 *
 * a record            passes if it is of a chosen system and concerns a chosen line and a chosen year;
 * a line or year      if it is chosen itself;
 * any other node      if it is of a chosen system and, once lines or years are chosen, if a record that concerns them
 *                     speaks of it, or if something that passes belongs to it;
 * a bulletin          if it cites something that passes.
 *
 * A relation passes if both its ends do, its name is not hidden, and the record that states it concerns the chosen
 * lines and years. Kinds are hidden last: parts of 1973 can be seen without the records that speak of them. What a person
 * has selected and what an answer rests on always passes: an argument with a step hidden would be another argument.
 */
export function passing(graph: MapGraph, view: View): Passing {
  const states = statesIt(graph, view);
  const spokenOf = carsChosen(view) ? nodesSpokenOf(graph, states) : undefined;
  const passes = (node: MapNode): boolean => {
    switch (node.kind) {
      case "record":
        return ofChosenSystem(node, view) && concernsChosen(node, view);
      case "line":
        return view.lines.length === 0 || view.lines.includes(node.id);
      case "year":
        return view.years.length === 0 || view.years.some((year) => String(year) === node.id);
      case "bulletin":
        return false;
      default:
        return ofChosenSystem(node, view) && (spokenOf?.has(node.key) ?? true);
    }
  };
  const nodes = new Set(graph.document.nodes.filter(passes).map((node) => node.key));
  const everything = view.systems.length === 0 && !carsChosen(view);
  for (const node of graph.document.nodes)
    if (node.kind === "bulletin" && (everything || graph.out(node.key).some((edge) => nodes.has(edge.target))))
      nodes.add(node.key);
  for (const key of nodes) {
    const node = graph.nodes.get(key);
    if (node && view.hiddenKinds.includes(node.kind)) nodes.delete(key);
  }
  const { focus } = view;
  if (focus !== undefined && graph.nodes.has(focus)) nodes.add(focus);
  const argued = argument(graph, view.proof);
  for (const key of argued.nodes) nodes.add(key);
  const edges = graph.document.edges.filter(
    (edge) =>
      argued.edges.has(edge) ||
      (nodes.has(edge.source) &&
        nodes.has(edge.target) &&
        edge.source !== edge.target &&
        !view.hiddenRelations.includes(edge.relation) &&
        states(edge)),
  );
  return { nodes, edges: new Set(edges) };
}

function carsChosen(view: View): boolean {
  return view.lines.length > 0 || view.years.length > 0;
}

function ofChosenSystem(node: MapNode, view: View): boolean {
  return view.systems.length === 0 || node.systems.some((system) => view.systems.includes(system));
}

function concernsChosen(node: MapNode, view: View): boolean {
  return (
    (view.lines.length === 0 || node.lines.some((line) => view.lines.includes(line))) &&
    (view.years.length === 0 || node.years.some((year) => view.years.includes(year)))
  );
}

/** Whether the record that states a relation concerns the chosen cars. What no record states always holds. */
function statesIt(graph: MapGraph, view: View): (edge: MapEdge) => boolean {
  return (edge) => {
    const record = edge.from === undefined ? undefined : graph.nodes.get(`record:${edge.from}`);
    return record === undefined || concernsChosen(record, view);
  };
}

/** What records of the chosen cars speak of, and all that this belongs to. */
function nodesSpokenOf(graph: MapGraph, states: (edge: MapEdge) => boolean): Set<string> {
  const spokenOf = new Set<string>();
  for (const edge of graph.document.edges)
    if (edge.from !== undefined && edge.relation !== "cites" && states(edge))
      spokenOf.add(edge.source).add(edge.target);
  // A set that grows while it is walked is walked to its new end: so the way up is followed to the system.
  for (const key of spokenOf)
    for (const edge of graph.out(key)) if (edge.relation === "belongs-to") spokenOf.add(edge.target);
  return spokenOf;
}
