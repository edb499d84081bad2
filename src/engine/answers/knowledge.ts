/** All that answers are drawn from: the catalog, its graph, and who says what about whom. Made once, never changed. */
import { buildGraph, type Graph } from "../graph/build-graph.ts";
import { layOut } from "../graph/lay-out.ts";
import type { Catalog, ChangeRecord, Component } from "../records/catalog.ts";
import { partsNamed, type Statement, type StatementOf, statementsOf } from "../records/statement.ts";

export interface Knowledge {
  readonly catalog: Catalog;
  readonly graph: Graph;
  readonly statementsByPart: ReadonlyMap<string, readonly Statement[]>;
  /** By the id of a record: the statements by which other records end instructions of it. */
  readonly cancelsByRecord: ReadonlyMap<string, readonly StatementOf<"cancels">[]>;
  readonly recordsByComponent: ReadonlyMap<string, readonly ChangeRecord[]>;
  readonly recordsBySystem: ReadonlyMap<string, readonly ChangeRecord[]>;
  readonly partsByComponent: ReadonlyMap<string, readonly string[]>;
}

/** `layout: false` leaves every node at the centre, for answers that draw nothing. */
export function openKnowledge(catalog: Catalog, options: { layout: boolean }): Knowledge {
  const graph = buildGraph(catalog);
  if (options.layout) layOut(graph);
  const records = [...catalog.records.values()];
  return {
    catalog,
    graph,
    statementsByPart: groupBy(
      records.flatMap((record) => record.statements),
      partsNamed,
    ),
    cancelsByRecord: groupBy(
      records.flatMap((record) => statementsOf(record.statements, "cancels")),
      (statement) => [statement.target],
    ),
    recordsByComponent: groupBy(records, (record) => record.components.map((component: Component) => component.id)),
    recordsBySystem: groupBy(records, (record) => record.systems),
    partsByComponent: new Map(
      [...groupBy([...catalog.parts.values()], (part) => [part.component])].map(([id, parts]) => [
        id,
        parts.map((part) => part.number),
      ]),
    ),
  };
}

function groupBy<T>(items: readonly T[], keys: (item: T) => readonly string[]): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const item of items)
    for (const key of keys(item)) {
      const group = groups.get(key);
      if (group) group.push(item);
      else groups.set(key, [item]);
    }
  return groups;
}
