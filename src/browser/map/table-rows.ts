/** The rows of the table: what passes the filters, in a stated order. */
import { KIND_ORDER } from "./kinds.ts";
import type { MapEdge, MapGraph, MapNode } from "./map-graph.ts";

export type TableOrder = "kind" | "name" | "relations";

export interface TableRow {
  readonly node: MapNode;
  readonly systems: readonly string[];
  /** How many relations lead to or from it. */
  readonly relations: number;
}

export const ROWS_OF_A_PAGE = 50;

/**
 * By kind, then by name; or by name alone; or by the number of relations, most first. Names are compared as people
 * count: 9 before 10.
 */
export function tableRows(
  graph: MapGraph,
  { nodes, edges, order }: { nodes: ReadonlySet<string>; edges: ReadonlySet<MapEdge>; order: TableOrder },
): TableRow[] {
  const relations = new Map<string, number>();
  for (const { source, target } of edges)
    for (const key of [source, target]) relations.set(key, (relations.get(key) ?? 0) + 1);
  const rows = graph.document.nodes
    .filter((node) => nodes.has(node.key))
    .map((node) => ({
      node,
      systems: node.systems.map((id) => graph.document.names.systems[id] ?? id),
      relations: relations.get(node.key) ?? 0,
    }));
  const { compare } = new Intl.Collator(undefined, { numeric: true });
  const byName = (a: TableRow, b: TableRow): number => compare(a.node.label, b.node.label);
  const byKind = (a: TableRow, b: TableRow): number =>
    KIND_ORDER.indexOf(a.node.kind) - KIND_ORDER.indexOf(b.node.kind);
  const orders: Record<TableOrder, (a: TableRow, b: TableRow) => number> = {
    kind: (a, b) => byKind(a, b) || byName(a, b),
    name: byName,
    relations: (a, b) => b.relations - a.relations || byKind(a, b) || byName(a, b),
  };
  return rows.sort(orders[order]);
}
