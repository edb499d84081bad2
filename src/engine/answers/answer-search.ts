/**
 * "What is there about this?": what "ask" finds, without the engine's answer: the pages that the question names, then the
 * records, the best first.
 */
import { z } from "zod";
import { NODE_KINDS } from "../graph/node.ts";
import { answerBase } from "./answer.ts";
import { answerAsk } from "./answer-ask.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { reasonForRecord } from "./say.ts";
import { readingShape } from "./shapes/ask.ts";

export const searchAnswer = z
  .strictObject({
    ...answerBase,
    question: z.literal("search"),
    verdict: z.enum(["found", "nothing found"]),
    reading: readingShape,
    results: z.array(
      z.strictObject({
        kind: z.enum(NODE_KINDS),
        id: z.string(),
        title: z.string(),
        address: z.string(),
        trap: z.boolean(),
      }),
    ),
  })
  .describe("answer search TEXT");
export type SearchAnswer = z.infer<typeof searchAnswer>;

export function answerSearch(knowledge: CarKnowledge, question: string): SearchAnswer {
  const { reading, things, records, nearest } = answerAsk(knowledge, { text: question, car: {} });
  const fitting = records.filter(({ misses }) => misses.length === 0);
  const results = [
    ...things
      .filter(({ kind }) => kind === "part" || kind === "bulletin")
      .map((it) => ({ ...it, title: it.label, trap: false })),
    ...fitting.map(({ id, title, address, trap }) => ({ kind: "record" as const, id, title, address, trap })),
    ...things.filter(({ kind }) => kind === "component").map((it) => ({ ...it, title: it.label, trap: false })),
  ];
  return {
    question: "search",
    verdict: results.length > 0 ? "found" : "nothing found",
    because: fitting.map(({ id }) => reasonForRecord(knowledge.catalog, id)),
    ...(results.length > 0
      ? {}
      : { ask: { what: "Nothing is on record. Try fewer or other words.", options: nearest } }),
    reading,
    results: results.map(({ kind, id, title, address, trap }) => ({
      kind: kind as (typeof NODE_KINDS)[number],
      id,
      title,
      address,
      trap,
    })),
  };
}
