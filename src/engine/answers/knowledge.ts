/** All that answers are drawn from: the catalog, its graph, and who says what about whom. Made once, never changed. */
import { buildGraph, type Graph } from "../graph/build-graph.ts";
import { layOut } from "../graph/lay-out.ts";
import type { Catalog, ChangeRecord, Component } from "../records/catalog.ts";
import { type CarKnowledge, openCarKnowledge } from "./car-knowledge.ts";
import { groupBy } from "./group-by.ts";

export interface Knowledge extends CarKnowledge {
  readonly graph: Graph;
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
    ...openCarKnowledge(catalog),
    graph,
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
