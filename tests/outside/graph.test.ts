/**
 * The published graph judged from outside. Source: cytoscape (its graph algorithms), given graph.json and nothing else; graphology's
 * own view of the engine's graph must be the same.
 */
import cytoscape from "cytoscape";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type GraphDocument, toDocument } from "../../src/engine/graph/document.ts";
import { into, outOf } from "../../src/engine/graph/neighbours.ts";
import { demoKnowledge } from "../helpers/demo-data.ts";
import { SEED } from "../helpers/seed.ts";

const { graph } = await demoKnowledge();
const published: GraphDocument = JSON.parse(JSON.stringify(toDocument(graph)));
const outside = drawn(() => true);

function drawn(keep: (edge: GraphDocument["edges"][number]) => boolean): cytoscape.Core {
  return cytoscape({
    headless: true,
    elements: [
      ...published.nodes.map(({ key }) => ({ data: { id: key } })),
      ...published.edges.flatMap((edge, i) => (keep(edge) ? [{ data: { ...edge, id: `edge ${i}` } }] : [])),
    ],
  });
}

/** Groups of keys in one form, so that their order does not count. */
function sorted(groups: Iterable<Iterable<string>>): string[] {
  return [...groups].map((group) => [...group].sort().join(" ")).sort();
}

describe("nodes and relations", () => {
  test("are as many", () => {
    expect([outside.nodes().length, outside.edges().length]).toEqual([graph.order, graph.size]);
    expect(graph.size).toBeGreaterThan(1000);
  });

  test("meet every node as often, on either side", () => {
    const counted = outside
      .nodes()
      .map((node) => [node.id(), node.outdegree(false), node.indegree(false), node.degree(false)]);
    expect(counted).toEqual(
      graph.mapNodes((key) => [key, outOf(graph, key).length, into(graph, key).length, graph.degree(key)]),
    );
  });
});

test("the same nodes hang together", () => {
  const components = outside
    .elements()
    .components()
    .map((group) => group.nodes().map((node) => node.id()));
  const seen = new Set<string>();
  const groups = graph.nodes().flatMap((start) => {
    if (seen.has(start)) return [];
    const group = [start];
    seen.add(start);
    for (const key of group)
      for (const next of graph.neighbors(key))
        if (!seen.has(next)) {
          seen.add(next);
          group.push(next);
        }
    return [group];
  });
  expect(sorted(components)).toEqual(sorted(groups));
});

describe("the strongly connected groups of one relation", () => {
  // Groups of parts that stand in for each other in a circle; superseding must never run in one.
  test.each(["stands-in-for", "supersedes"])("%s", (relation) => {
    const found = drawn((edge) => edge.relation === relation)
      .elements()
      .tarjanStronglyConnectedComponents()
      .components.map((group: unknown) => (group as cytoscape.CollectionReturnValue).nodes().map((node) => node.id()))
      .filter((group: string[]) => group.length > 0);
    const reach = new Map(graph.nodes().map((key) => [key, reachable(key, relation)]));
    const circles = graph
      .nodes()
      .map((key) => graph.nodes().filter((other) => reach.get(key)?.has(other) && reach.get(other)?.has(key)));
    expect(sorted(found)).toEqual([...new Set(sorted(circles))]);
    if (relation === "supersedes") expect(found.filter((group: string[]) => group.length > 1)).toEqual([]);
  });
});

test("the same parts stand at the ends of a chain of supersession", () => {
  const chain = drawn((edge) => edge.relation === "supersedes");
  const current = graph.nodes().filter((key) => onlyOf(into(graph, key), "supersedes").length === 0);
  const oldest = graph.nodes().filter((key) => onlyOf(outOf(graph, key), "supersedes").length === 0);
  const ids = (nodes: cytoscape.NodeCollection): string[] => nodes.map((node) => node.id()).sort();
  expect(ids(chain.nodes().roots())).toEqual([...current].sort());
  expect(ids(chain.nodes().leaves())).toEqual([...oldest].sort());
  expect(current.length).toBeLessThan(graph.order);
});

test("from 200 random nodes 200 others are reached, or not, in as many steps", () => {
  // Documents lead to much, and few things lead to them: every second search starts at one and asks for a line or a year.
  const documents = graph.filterNodes((_, { kind }) => kind === "bulletin" || kind === "record");
  const cars = graph.filterNodes((_, { kind }) => kind === "line" || kind === "year");
  const pairs = fc.sample(
    fc.oneof(
      fc.tuple(fc.constantFrom(...graph.nodes()), fc.constantFrom(...graph.nodes())),
      fc.tuple(fc.constantFrom(...documents), fc.constantFrom(...cars)),
    ),
    { seed: SEED, numRuns: 200 },
  );
  let found = 0;
  for (const [from, to] of pairs) {
    let steps: number | undefined;
    outside.elements().bfs({
      roots: outside.getElementById(from),
      directed: true,
      visit: (node, _edge, _previous, _i, depth) => {
        if (node.id() !== to) return;
        steps = depth;
        return true;
      },
    });
    expect([from, to, stepsBetween(from, to)]).toEqual([from, to, steps]);
    if (steps !== undefined) found++;
  }
  // Pairs that are all apart, or all joined, would prove little.
  expect(found).toBeGreaterThan(40);
  expect(found).toBeLessThan(160);
});

function onlyOf<T extends { facts: { relation: string } }>(list: T[], relation: string): T[] {
  return list.filter(({ facts }) => facts.relation === relation);
}

/** The node itself, and all that a chain of the relation leads to. */
function reachable(start: string, relation: string): Set<string> {
  const seen = new Set([start]);
  for (const key of seen)
    for (const { node } of onlyOf(outOf(graph, key), relation)) seen.add(`${node.kind}:${node.id}`);
  return seen;
}

function stepsBetween(from: string, to: string): number | undefined {
  const steps = new Map([[from, 0]]);
  for (const [key, taken] of steps) {
    if (key === to) return taken;
    for (const { node } of outOf(graph, key)) {
      const next = `${node.kind}:${node.id}`;
      if (!steps.has(next)) steps.set(next, taken + 1);
    }
  }
  return undefined;
}
