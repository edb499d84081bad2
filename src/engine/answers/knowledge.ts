/**
 * All that answers are drawn from: the catalog, its graph, and who says what about whom. Never changed, and each of it made once,
 * when it is first asked for: few answers need the graph, which takes longest.
 */
import { buildGraph, type Graph } from "../graph/build-graph.ts";
import { layOut } from "../graph/lay-out.ts";
import type { Bulletin, Catalog, ChangeRecord, Component } from "../records/catalog.ts";
import { groupBy } from "../records/group-by.ts";
import { once } from "../records/once.ts";
import { type CarKnowledge, openCarKnowledge } from "./car-knowledge.ts";
import { citationsOf, linksTo } from "./pointed-at.ts";

export interface Knowledge extends CarKnowledge {
  readonly graph: Graph;
  readonly recordsByComponent: ReadonlyMap<string, readonly ChangeRecord[]>;
  readonly recordsBySystem: ReadonlyMap<string, readonly ChangeRecord[]>;
  readonly partsByComponent: ReadonlyMap<string, readonly string[]>;
  /** By the node of a record. */
  readonly linksTo: ReadonlyMap<string, readonly ChangeRecord[]>;
  /** By the node of a record, part or component. */
  readonly citationsOf: ReadonlyMap<string, readonly Bulletin[]>;
}

/** `layout: false` leaves every node at the centre, for answers that draw nothing. */
export function openKnowledge(catalog: Catalog, options: { layout: boolean }): Knowledge {
  const records = [...catalog.records.values()];
  const graph = once(() => {
    const made = buildGraph(catalog);
    if (options.layout) layOut(made);
    return made;
  });
  const recordsByComponent = once(() =>
    groupBy(records, (record) => record.components.map((component: Component) => component.id)),
  );
  const recordsBySystem = once(() => groupBy(records, (record) => record.systems));
  const partsByComponent = once(
    () =>
      new Map(
        [...groupBy([...catalog.parts.values()], (part) => [part.component])].map(([id, parts]) => [
          id,
          parts.map((part) => part.number),
        ]),
      ),
  );
  const linked = once(() => linksTo(catalog));
  const cited = once(() => citationsOf(catalog));
  const ofCars = openCarKnowledge(catalog);
  return {
    catalog,
    get statementsByPart() {
      return ofCars.statementsByPart;
    },
    get cancelsByRecord() {
      return ofCars.cancelsByRecord;
    },
    get graph() {
      return graph();
    },
    get recordsByComponent() {
      return recordsByComponent();
    },
    get recordsBySystem() {
      return recordsBySystem();
    },
    get partsByComponent() {
      return partsByComponent();
    },
    get linksTo() {
      return linked();
    },
    get citationsOf() {
      return cited();
    },
  };
}
