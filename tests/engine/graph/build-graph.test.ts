import { describe, expect, test } from "vitest";
import { buildGraph, type Graph } from "../../../src/engine/graph/build-graph.ts";
import { demoKnowledge, plainFiles } from "../../helpers/demo-data.ts";
import { catalogOf, spoiled } from "../../helpers/tiny-folder.ts";
import { type Edge, RELATED, RETROFITS } from "./build-graph.cases.ts";

function edgesOf(graph: Graph): Edge[] {
  return graph.mapEdges((_, { relation, from, scope, verdict }, source, target) => [
    source,
    relation,
    target,
    from ?? "",
    scope ?? "",
    verdict ?? "",
  ]);
}

describe("the graph of the tiny folder", () => {
  const graph = buildGraph(catalogOf());

  test("has every relation with its direction, its record, its scope and its verdict, and no other", () => {
    expect(edgesOf(graph)).toEqual(RELATED);
  });

  test("has everything with a page as a node, once, in a fixed order", () => {
    expect(graph.nodes()).toEqual(
      [
        ["line:B", "line:H"],
        ["year:1957", "year:1958", "year:1959", "year:1960", "year:1961"],
        ["system:hydraulics", "system:frame"],
        ["component:lift", "component:pump", "component:gasket"],
        ["part:HT-201", "part:HT-290", "part:HT-101", "part:HT-102"],
        ["record:FR58-01", "record:HY59-01"],
        ["bulletin:TB-1"],
      ].flat(),
    );
  });

  test("knows of a record its systems, its lines and its years", () => {
    expect(graph.getNodeAttributes("record:HY59-01")).toEqual({
      kind: "record",
      id: "HY59-01",
      label: "HY59-01 Longer hydraulic pump",
      address: "/records/HY59-01/",
      systems: ["hydraulics"],
      lines: ["B"],
      years: [1959, 1960],
      x: 0,
      y: 0,
    });
    expect(graph.getNodeAttributes("part:HT-101")).toMatchObject({
      label: "HT-101 pump, short",
      systems: ["hydraulics"],
    });
    expect(graph.getNodeAttributes("bulletin:TB-1")).toMatchObject({ label: "Pumps", systems: [] });
  });
});

describe("which lines a part may be retrofitted to", () => {
  test.each(RETROFITS)("{ %s } in a record of kind %s: %j", (written, kinds, retrofits) => {
    const catalog = catalogOf(
      spoiled({
        "changes/1958/FR58-01.md": ["kinds: [equipment]", `kinds: [${kinds}]\nstands-in: [{ ${written} }]`],
        "changes/1959/HY59-01.md": ['  - { part: HT-102, for: none, verdict: "yes", scope: line=H }\n', ""],
      }),
    );
    const found = edgesOf(buildGraph(catalog)).filter(([, relation]) => relation === "retrofittable-to");
    expect(found.map(([part, , line]) => `${part.slice("part:".length)} ${line.slice("line:".length)}`)).toEqual(
      retrofits,
    );
  });
});

test("what two statements of a record say alike is one relation; another scope or verdict makes another", () => {
  const catalog = catalogOf(
    spoiled({
      "changes/1959/HY59-01.md": ["service-only: [HT-201]", "service-only: [HT-201, HT-201, HT-101, HT-102]"],
    }),
  );
  const brings = edgesOf(buildGraph(catalog)).filter(([, relation]) => relation === "brings");
  expect(brings.map(([, , part, , scope]) => `${part} ${scope}`)).toEqual([
    "part:HT-101 line=B; at=K59#0412-",
    "part:HT-102 line=B; at=K59#0412+",
    "part:HT-101 line=H; my=1959",
    "part:HT-102 line=H; my=1959",
    "part:HT-201 ",
    "part:HT-101 ",
    "part:HT-102 ",
  ]);
});

describe("the graph of the data folder", async () => {
  const { graph } = await demoKnowledge();
  const edges = edgesOf(graph);
  const one = (...edge: Edge): string => edge.join(" | ");
  const found = (relations: readonly string[]): string[] =>
    edges
      .filter(([, relation]) => relations.includes(relation))
      .map((edge) => one(...edge))
      .sort();
  const unique = (list: string[]): string[] => [...new Set(list)].sort();

  test("has every statement that its files make about two things, and no other", () => {
    expect(
      found(["changes", "links-to", "cancels", "brings", "supersedes", "goes-with", "contains"].concat(STAND_INS)),
    ).toEqual(unique(plainFiles("changes/").flatMap(({ facts }) => plainEdges(facts).map((edge) => one(...edge)))));
  });

  test("has every part and component where its file lists it", () => {
    const components = plainFiles("components/").flatMap(({ facts }) =>
      facts.components.map(({ id, under }: { id: string; under?: string }) =>
        one(`component:${id}`, "belongs-to", under ? `component:${under}` : `system:${facts.id}`, "", "", ""),
      ),
    );
    const parts = plainFiles("parts/").flatMap(({ facts }) =>
      facts.parts.map(({ number }: { number: string }) =>
        one(`part:${number}`, "belongs-to", `component:${facts.component}`, "", "", ""),
      ),
    );
    expect(found(["belongs-to"])).toEqual(unique([...components, ...parts]));
  });

  test("has every citation of a bulletin", () => {
    const cited = plainFiles("bulletins/").flatMap(({ facts, text }) =>
      [...text.matchAll(/\[\[(.+?)(?:\|.+?)?\]\]/gs)].map(([, id]) => `bulletin:${facts.id} cites ${id} ${facts.id}`),
    );
    const inGraph = edges
      .filter(([, relation]) => relation === "cites")
      .map(([source, , target, from]) => `${source} cites ${target.slice(target.indexOf(":") + 1)} ${from}`);
    expect(inGraph.sort()).toEqual(unique(cited));
  });

  test("ties every record to the lines and years that its node names, with its own scope", () => {
    const concerned = plainFiles("changes/").flatMap(({ facts }) => {
      const { lines, years } = graph.getNodeAttributes(`record:${facts.id}`);
      return [...lines.map((line) => `line:${line}`), ...years.map((year) => `year:${year}`)].map((target) =>
        one(`record:${facts.id}`, "concerns", target, facts.id, facts.scope, ""),
      );
    });
    expect(found(["concerns"])).toEqual(unique(concerned));
    expect(concerned.length).toBeGreaterThan(edges.length / 10);
  });

  test("ties a part to lines exactly where a permission says that it is a retrofit", () => {
    const permitted = plainFiles("changes/").flatMap(({ facts }) =>
      (facts["stands-in"] ?? [])
        .filter(
          (it: Use) =>
            (it.verdict === "yes" || it.verdict === "on-conditions") &&
            (it.for === "none" || facts.kinds.includes("retrofit")),
        )
        .map((it: Use) => `part:${it.part} | ${facts.id} | ${it.scope ?? ""} | ${it.verdict}`),
    );
    const inGraph = edges
      .filter(([, relation]) => relation === "retrofittable-to")
      .map(([part, , , from, scope, verdict]) => `${part} | ${from} | ${scope} | ${verdict}`);
    expect(unique(inGraph)).toEqual(unique(permitted));
  });
});

interface Use {
  part: string;
  for: string;
  verdict: string;
  scope?: string;
  with?: string[];
}

const STAND_INS = ["stands-in-for", "not-interchangeable-with"];

/** The relations that one record's facts make, read without the engine. Retrofits and what a record concerns need its cars. */
// biome-ignore lint/suspicious/noExplicitAny: plain facts of a file
function plainEdges(facts: any): Edge[] {
  const record = `record:${facts.id}`;
  const edges: Edge[] = [];
  const add = (source: string, relation: string, target: string, scope = "", verdict = ""): void => {
    edges.push([source, relation, target, facts.id, scope, verdict]);
  };
  for (const id of facts.components ?? []) add(record, "changes", `component:${id}`);
  for (const id of facts.links ?? []) add(record, "links-to", `record:${id}`);
  for (const it of facts.cancels ?? []) add(record, "cancels", `record:${it.record}`, it.scope);
  for (const it of facts.built ?? []) if (it.part !== "none") add(record, "brings", `part:${it.part}`, it.scope);
  for (const it of facts.mixed ?? []) for (const part of it.parts) add(record, "brings", `part:${part}`, it.scope);
  for (const part of facts["service-only"] ?? []) add(record, "brings", `part:${part}`);
  for (const it of facts.supersedes ?? []) {
    add(`part:${it.new}`, "supersedes", `part:${it.old}`, it.scope);
    for (const part of it.with ?? []) add(`part:${it.new}`, "goes-with", `part:${part}`, it.scope);
  }
  for (const it of facts["stands-in"] ?? []) {
    const isPermitted = it.verdict === "yes" || it.verdict === "on-conditions";
    if (it.for !== "none")
      add(
        `part:${it.part}`,
        isPermitted ? "stands-in-for" : "not-interchangeable-with",
        `part:${it.for}`,
        it.scope,
        it.verdict,
      );
    for (const part of isPermitted ? (it.with ?? []) : [])
      add(`part:${it.part}`, "goes-with", `part:${part}`, it.scope, it.verdict);
  }
  for (const it of facts.kits ?? [])
    for (const content of it.contents) if (content.part) add(`part:${it.kit}`, "contains", `part:${content.part}`);
  return edges;
}
