/**
 * The records as one graph. Nodes are what has a page; every relation keeps the record that states it and its scope.
 * Nodes and relations are added in a fixed order, so the same records give the same graph.
 */
import { MultiDirectedGraph } from "graphology";
import type { Catalog, ChangeRecord } from "../records/catalog.ts";
import { concerned } from "../records/concerned.ts";
import type { StandsIn, Statement } from "../records/statement.ts";
import type { Scope } from "../scope/scope.ts";
import { address, type NodeFacts, type NodeKind, nodeKey } from "./node.ts";
import type { Relation, RelationFacts } from "./relation.ts";

export type Graph = MultiDirectedGraph<NodeFacts, RelationFacts>;

/** By the node of a part: the cars that the plant fitted it to. By the node of a component: those that got nothing there. */
type Fitted = ReadonlyMap<string, readonly Scope[]>;

export function buildGraph(catalog: Catalog): Graph {
  const graph: Graph = new MultiDirectedGraph<NodeFacts, RelationFacts>();
  addNodes(graph, catalog);
  addStructure(graph, catalog);
  const fitted = whatWasFitted(catalog);
  for (const record of catalog.records.values()) addRecord(graph, catalog, fitted, record);
  for (const bulletin of catalog.bulletins.values()) {
    for (const { id } of bulletin.citations) {
      const cited = (["record", "part", "component"] as const)
        .map((kind) => nodeKey(kind, id))
        .find((key) => graph.hasNode(key));
      if (cited) relate(graph, nodeKey("bulletin", bulletin.id), cited, "cites", { from: bulletin.id });
    }
  }
  return graph;
}

function addNodes(graph: Graph, catalog: Catalog): void {
  const add = (kind: NodeKind, id: string, label: string, more: Partial<NodeFacts> = {}): void => {
    graph.addNode(nodeKey(kind, id), {
      kind,
      id,
      label,
      address: address(kind, id),
      systems: [],
      lines: [],
      years: [],
      x: 0,
      y: 0,
      ...more,
    });
  };
  for (const line of catalog.lines) add("line", line.id, line.name, { lines: [line.id] });
  for (const year of catalog.years) add("year", String(year), String(year), { years: [year] });
  for (const system of catalog.systems) add("system", system.id, system.name, { systems: [system.id] });
  for (const component of catalog.components.values())
    add("component", component.id, component.name, { systems: [component.system] });
  for (const part of catalog.parts.values()) {
    const system = catalog.components.get(part.component)?.system;
    add("part", part.number, `${part.number} ${part.name}`, { systems: system ? [system] : [] });
  }
  for (const record of catalog.records.values())
    add("record", record.id, `${record.id} ${record.facts.title}`, {
      systems: record.systems,
      ...concerned(catalog, record.scope),
    });
  for (const bulletin of catalog.bulletins.values()) add("bulletin", bulletin.id, bulletin.facts.title);
}

function addStructure(graph: Graph, catalog: Catalog): void {
  for (const component of catalog.components.values()) {
    const above =
      component.under === undefined ? nodeKey("system", component.system) : nodeKey("component", component.under);
    relate(graph, nodeKey("component", component.id), above, "belongs-to");
  }
  for (const part of catalog.parts.values())
    relate(graph, nodeKey("part", part.number), nodeKey("component", part.component), "belongs-to");
}

function whatWasFitted(catalog: Catalog): Fitted {
  const fitted = new Map<string, Scope[]>();
  const add = (key: string, scope: Scope): void => {
    const scopes = fitted.get(key);
    if (scopes) scopes.push(scope);
    else fitted.set(key, [scope]);
  };
  for (const { statements } of catalog.records.values())
    for (const it of statements)
      if (it.type === "mixed") for (const number of it.parts) add(nodeKey("part", number), it.scope);
      else if (it.type === "built" && it.part !== undefined) add(nodeKey("part", it.part), it.scope);
      else if (it.type === "built") add(nodeKey("component", catalog.places.get(it.place)?.id ?? ""), it.scope);
  return fitted;
}

function addRecord(graph: Graph, catalog: Catalog, fitted: Fitted, record: ChangeRecord): void {
  const key = nodeKey("record", record.id);
  const from = record.id;
  const node = graph.getNodeAttributes(key);
  for (const component of record.components)
    relate(graph, key, nodeKey("component", component.id), "changes", { from });
  for (const line of node.lines)
    relate(graph, key, nodeKey("line", line), "concerns", { from, scope: record.scope.text });
  for (const year of node.years)
    relate(graph, key, nodeKey("year", String(year)), "concerns", { from, scope: record.scope.text });
  for (const statement of record.statements) addStatement(graph, catalog, fitted, record, statement);
  for (const link of record.facts.links) relate(graph, key, nodeKey("record", link), "links-to", { from });
}

function addStatement(
  graph: Graph,
  catalog: Catalog,
  fitted: Fitted,
  record: ChangeRecord,
  statement: Statement,
): void {
  const from = record.id;
  const key = nodeKey("record", record.id);
  const part = (number: string): string => nodeKey("part", number);
  switch (statement.type) {
    case "built":
      if (statement.part !== undefined)
        relate(graph, key, part(statement.part), "brings", { from, scope: statement.scope.text });
      break;
    case "mixed":
      for (const number of statement.parts)
        relate(graph, key, part(number), "brings", { from, scope: statement.scope.text });
      break;
    case "service-only":
      relate(graph, key, part(statement.part), "brings", { from });
      break;
    case "supersedes":
      relate(graph, part(statement.new), part(statement.old), "supersedes", { from, scope: statement.scope?.text });
      for (const number of statement.with)
        relate(graph, part(statement.new), part(number), "goes-with", { from, scope: statement.scope?.text });
      break;
    case "stands-in":
      addStandIn(graph, catalog, fitted, record, statement);
      break;
    case "kit":
      for (const content of statement.contents)
        if (content.part !== undefined) relate(graph, part(statement.kit), part(content.part), "contains", { from });
      break;
    case "cancels":
      relate(graph, key, nodeKey("record", statement.target), "cancels", { from, scope: statement.scope?.text });
      break;
  }
}

function addStandIn(graph: Graph, catalog: Catalog, fitted: Fitted, record: ChangeRecord, statement: StandsIn): void {
  const from = record.id;
  const offered = nodeKey("part", statement.part);
  const facts = { from, scope: statement.scope?.text, verdict: statement.verdict };
  const permitted = statement.verdict === "yes" || statement.verdict === "on-conditions";
  if (statement.for !== undefined)
    relate(
      graph,
      offered,
      nodeKey("part", statement.for),
      permitted ? "stands-in-for" : "not-interchangeable-with",
      facts,
    );
  if (!permitted) return;
  for (const number of statement.with) relate(graph, offered, nodeKey("part", number), "goes-with", facts);
  if (statement.for !== undefined && !record.facts.kinds.includes("retrofit")) return;
  for (const line of linesFor(catalog, fitted, statement))
    relate(graph, offered, nodeKey("line", line), "retrofittable-to", facts);
}

/**
 * The lines with cars inside a stand-in's scope; without a scope, the lines that were built with the part it stands in for
 * or, where it stands in for nothing, with nothing in a place of its component.
 */
function linesFor(catalog: Catalog, fitted: Fitted, statement: StandsIn): string[] {
  if (statement.scope) return concerned(catalog, statement.scope).lines;
  const replaced =
    statement.for === undefined
      ? nodeKey("component", catalog.parts.get(statement.part)?.component ?? "")
      : nodeKey("part", statement.for);
  const lines = new Set((fitted.get(replaced) ?? []).flatMap((scope) => concerned(catalog, scope).lines));
  return catalog.lines.map((line) => line.id).filter((id) => lines.has(id));
}

/** Adds a relation once: a second statement of the same record with the same scope says nothing new. */
function relate(
  graph: Graph,
  source: string,
  target: string,
  relation: Relation,
  facts: Partial<RelationFacts> = {},
): void {
  const key = [source, relation, target, facts.from ?? "", facts.scope ?? "", facts.verdict ?? ""].join("|");
  if (graph.hasEdge(key)) return;
  graph.addDirectedEdgeWithKey(key, source, target, {
    relation,
    from: facts.from,
    scope: facts.scope,
    verdict: facts.verdict,
  });
}
