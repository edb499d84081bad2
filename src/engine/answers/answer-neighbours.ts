/** "What stands around this in the graph?" Every relation of one node, with its direction and the record that says so. */
import { z } from "zod";
import { neighbours } from "../graph/neighbours.ts";
import { address, NODE_KINDS, type NodeFacts, nodeKey } from "../graph/node.ts";
import { RELATIONS, type Relation } from "../graph/relation.ts";
import { nearest } from "../scope/nearest.ts";
import { answerBase, type Reason } from "./answer.ts";
import type { Knowledge } from "./knowledge.ts";
import { findPart } from "./part-number.ts";

const nodeView = z.strictObject({ kind: z.enum(NODE_KINDS), id: z.string(), label: z.string(), address: z.string() });

export const neighboursAnswer = z
  .strictObject({
    ...answerBase,
    question: z.literal("neighbours"),
    verdict: z.enum(["on record", "not on record"]),
    node: nodeView.optional(),
    neighbours: z.array(
      z.strictObject({
        relation: z.enum(Object.keys(RELATIONS) as [Relation, ...Relation[]]),
        direction: z.enum(["out", "in"]).describe("out: from the asked node to the other one."),
        words: z.string().describe("The relation as read from the asked node."),
        node: nodeView,
        record: z.string().optional().describe("The record or bulletin that says so."),
        scope: z.string().optional().describe("The scope as written."),
      }),
    ),
  })
  .describe("answer neighbours ID");
export type NeighboursAnswer = z.infer<typeof neighboursAnswer>;

export function answerNeighbours(knowledge: Knowledge, typed: string): NeighboursAnswer {
  const { catalog, graph } = knowledge;
  const key = findNode(knowledge, typed.trim());
  if (key === undefined) {
    const ids = graph.mapNodes((_, facts) => facts.id);
    const near = nearest(typed.trim(), ids);
    return {
      question: "neighbours",
      verdict: "not on record",
      because: [],
      ask: { what: `Nothing in the graph is called '${typed.trim()}'.`, options: near ? [near] : [] },
      neighbours: [],
    };
  }
  const found = neighbours(graph, key).map(({ direction, facts, node }) => ({
    relation: facts.relation,
    direction,
    words: RELATIONS[facts.relation][direction === "out" ? "forward" : "backward"],
    node: viewNode(node),
    ...(facts.from === undefined ? {} : { record: facts.from }),
    ...(facts.scope === undefined ? {} : { scope: facts.scope }),
  }));
  const records = [...new Set(found.flatMap((one) => one.record ?? []))];
  const because = records.map((id): Reason => {
    const kind = catalog.records.has(id) ? "record" : "bulletin";
    const { label } = graph.getNodeAttributes(nodeKey(kind, id));
    return { record: id, statement: kind, text: label, address: address(kind, id) };
  });
  return {
    question: "neighbours",
    verdict: "on record",
    because,
    node: viewNode(graph.getNodeAttributes(key)),
    neighbours: found,
  };
}

/** A node by key ('part:12-3456'), by id, or by a part number in any spelling. Records come before parts, parts before the rest. */
function findNode({ catalog, graph }: Knowledge, typed: string): string | undefined {
  if (graph.hasNode(typed)) return typed;
  const keys = NODE_KINDS.map((kind) => nodeKey(kind, typed));
  const exact = keys.find((key) => graph.hasNode(key));
  if (exact) return exact;
  const part = findPart(catalog, typed);
  if (part.as === "part number") return nodeKey("part", part.part.number);
  const wanted = typed.toLowerCase();
  return graph.findNode((_, facts) => facts.id.toLowerCase() === wanted || facts.label.toLowerCase() === wanted);
}

function viewNode({ kind, id, label, address: at }: NodeFacts): z.infer<typeof nodeView> {
  return { kind, id, label, address: at };
}
