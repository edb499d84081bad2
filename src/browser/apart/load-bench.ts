/** The marks of all parts, for a piece on the bench: no car is known, so no records of a line are there. */
import { type CarKnowledge, openCarKnowledge } from "../../engine/answers/car-knowledge.ts";
import type { Lines } from "../../engine/records/lines-index.ts";
import { openSlice, type Slice } from "../../engine/records/slice.ts";

export async function loadBench(url: string, lines: Lines): Promise<CarKnowledge> {
  const answer = await fetch(url);
  if (!answer.ok) throw new Error(`${new URL(url).pathname} could not be loaded (${answer.status})`);
  return openCarKnowledge(openSlice(lines, (await answer.json()) as Slice));
}
