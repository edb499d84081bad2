/** The graph as it is published: one JSON document, its shape described field by field. */
import { z } from "zod";
import { VERDICTS } from "../records/terms.ts";
import type { Graph } from "./build-graph.ts";
import { NODE_KINDS } from "./node.ts";
import { RELATIONS, type Relation } from "./relation.ts";

const relationNames = Object.keys(RELATIONS) as [Relation, ...Relation[]];

const node = z.strictObject({
  key: z.string().describe("kind:id, unique."),
  kind: z.enum(NODE_KINDS),
  id: z.string(),
  label: z.string(),
  address: z.string().describe("The page of the node inside the site."),
  systems: z.array(z.string()).describe("Ids of the systems it belongs to, main one first."),
  lines: z.array(z.string()).describe("For records: ids of the model lines with cars in the scope."),
  years: z.array(z.int()).describe("For records: model years with cars in the scope."),
  x: z.number().describe("Where the map draws it."),
  y: z.number(),
});

const relation = z.strictObject({
  source: z.string().describe("Key of the node it leads from."),
  target: z.string().describe("Key of the node it leads to."),
  relation: z.enum(relationNames),
  from: z.string().optional().describe("Id of the change record or bulletin that says so."),
  scope: z.string().optional().describe("The scope as written; left out where the statement has none."),
  verdict: z.enum(VERDICTS).optional(),
});

export const graphDocument = z
  .strictObject({
    format: z.literal("yearmark-graph/1"),
    relations: z
      .record(z.enum(relationNames), z.strictObject({ forward: z.string(), backward: z.string(), about: z.string() }))
      .describe("Every relation with its words in both directions."),
    names: z
      .strictObject({ systems: z.record(z.string(), z.string()), lines: z.record(z.string(), z.string()) })
      .describe("Names of systems and model lines by id."),
    nodes: z.array(node),
    edges: z.array(relation),
  })
  .describe("graph.json: the records as one graph.");
export type GraphDocument = z.infer<typeof graphDocument>;

export function toDocument(graph: Graph): GraphDocument {
  const named = (kind: "system" | "line"): Record<string, string> =>
    Object.fromEntries(
      graph
        .filterNodes((_, facts) => facts.kind === kind)
        .map((key) => {
          const { id, label } = graph.getNodeAttributes(key);
          return [id, label];
        }),
    );
  return {
    format: "yearmark-graph/1",
    relations: RELATIONS,
    names: { systems: named("system"), lines: named("line") },
    nodes: graph.mapNodes((key, facts) => ({
      key,
      ...facts,
      systems: [...facts.systems],
      lines: [...facts.lines],
      years: [...facts.years],
    })),
    edges: graph.mapEdges((_, facts, source, target) => ({
      source,
      target,
      relation: facts.relation,
      ...(facts.from === undefined ? {} : { from: facts.from }),
      ...(facts.scope === undefined ? {} : { scope: facts.scope }),
      ...(facts.verdict === undefined ? {} : { verdict: facts.verdict }),
    })),
  };
}
