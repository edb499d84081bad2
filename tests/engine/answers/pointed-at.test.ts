/** The graph says the same: what leads to a node by a link or a citation. */
import { describe, expect, test } from "vitest";
import { citationsOf, linksTo } from "../../../src/engine/answers/pointed-at.ts";
import { buildGraph } from "../../../src/engine/graph/build-graph.ts";
import { into } from "../../../src/engine/graph/neighbours.ts";
import type { Catalog } from "../../../src/engine/records/catalog.ts";
import { demoKnowledge } from "../../helpers/demo-data.ts";
import { catalogOf } from "../../helpers/tiny-folder.ts";

test("a link and a citation lead back to who wrote them", () => {
  const catalog = catalogOf();
  expect([...linksTo(catalog)].map(([to, from]) => [to, from.map(({ id }) => id)])).toEqual([
    ["record:FR58-01", ["HY59-01"]],
  ]);
  expect([...citationsOf(catalog)].map(([to, from]) => [to, from.map(({ id }) => id)])).toEqual([
    ["record:HY59-01", ["TB-1"]],
    ["part:HT-102", ["TB-1"]],
    ["component:pump", ["TB-1"]],
  ]);
});

const demo = (await demoKnowledge()).catalog;

describe("as the graph has it, in the same order", () => {
  test.each([
    ["the tractors", catalogOf()],
    ["the demonstration", demo],
  ])("%s", (_, catalog: Catalog) => {
    const graph = buildGraph(catalog);
    const pointing = (key: string, relation: string): string[] =>
      into(graph, key).flatMap(({ facts, node }) => (facts.relation === relation ? [node.id] : []));
    const links = linksTo(catalog);
    const cites = citationsOf(catalog);
    for (const key of graph.nodes()) {
      expect((links.get(key) ?? []).map(({ id }) => id)).toEqual(pointing(key, "links-to"));
      expect((cites.get(key) ?? []).map(({ id }) => id)).toEqual(pointing(key, "cites"));
    }
    expect(links.size + cites.size).toBeGreaterThan(1);
  });
});
