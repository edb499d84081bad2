import { describe, expect, test } from "vitest";
import { buildGraph, type Graph } from "../../../src/engine/graph/build-graph.ts";
import { layOut } from "../../../src/engine/graph/lay-out.ts";
import { demoKnowledge } from "../../helpers/demo-data.ts";
import { catalogOf, type Folder, spoiled, TINY } from "../../helpers/tiny-folder.ts";

const places = (graph: Graph): [string, number, number][] => graph.mapNodes((key, { x, y }) => [key, x, y]);

function laidOut(folder: Folder): Graph {
  const graph = buildGraph(catalogOf(folder));
  layOut(graph);
  return graph;
}

function expectSoundPlaces(graph: Graph): void {
  const all = places(graph);
  expect(all.filter(([, x, y]) => !Number.isFinite(x) || !Number.isFinite(y))).toEqual([]);
  expect(new Set(all.map(([, x, y]) => `${x} ${y}`)).size).toBe(graph.order);
}

describe("where the map draws the nodes", () => {
  test("the same records have the same places, and their facts are left as they were", () => {
    const [graph, again, plain] = [laidOut(TINY), laidOut(TINY), buildGraph(catalogOf())];
    expect(places(again)).toEqual(places(graph));
    expectSoundPlaces(graph);
    expect(graph.mapNodes((_, facts) => ({ ...facts, x: 0, y: 0 }))).toEqual(plain.mapNodes((_, facts) => facts));
    expect(graph.edges()).toEqual(plain.edges());
  });

  test("a part more moves things, but leaves no two on one place", () => {
    const number = "  - { number: HT-290, name: gasket kit }\n";
    const graph = laidOut(
      spoiled({ "parts/gasket.yaml": [number, `${number}  - { number: HT-291, name: other kit }\n`] }),
    );
    expectSoundPlaces(graph);
    expect(graph.order).toBe(laidOut(TINY).order + 1);
  });

  test("the data folder: the same twice, finite, and apart", async () => {
    const { catalog } = await demoKnowledge();
    const [graph, again] = [buildGraph(catalog), buildGraph(catalog)];
    layOut(graph);
    layOut(again);
    expect(places(again)).toEqual(places(graph));
    expectSoundPlaces(graph);
  });

  test("a graph of nothing, and of one node, is no trouble", () => {
    const graph = buildGraph(catalogOf());
    for (const key of graph.nodes().slice(1)) graph.dropNode(key);
    layOut(graph);
    expectSoundPlaces(graph);
    graph.clear();
    layOut(graph);
    expect(graph.order).toBe(0);
  });
});
