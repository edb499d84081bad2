/** How a relation is drawn. Its sort decides, so that a few looks are enough to learn. */
import type { Relation } from "./map-graph.ts";

export type RelationLook = "order" | "say" | "may" | "must-not";

/**
 * order     what belongs to what: a thin plain line
 * say       what a record or bulletin does: a line with an arrow
 * may       delivery and use between parts: an arrow in the accent colour
 * must-not  a refusal: a line that ends in a bar, as a closed road does
 */
export const RELATION_LOOK: Readonly<Record<Relation, RelationLook>> = {
  changes: "say",
  concerns: "order",
  "belongs-to": "order",
  brings: "say",
  supersedes: "may",
  "stands-in-for": "may",
  "not-interchangeable-with": "must-not",
  "retrofittable-to": "may",
  "goes-with": "may",
  contains: "order",
  cancels: "must-not",
  "links-to": "say",
  cites: "say",
};
