/** What answers are drawn from, of the tiny folder or of one that was written differently. */
import { type Knowledge, openKnowledge } from "../../src/engine/answers/knowledge.ts";
import { catalogOf, type Spoil, spoiled } from "./tiny-folder.ts";

export function tinyKnowledge(spoil: Spoil = {}): Knowledge {
  return openKnowledge(catalogOf(spoiled(spoil)), { layout: false });
}
