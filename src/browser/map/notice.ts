/** What is said about a picture that, unasked, does not show everything. */
import type { Picture } from "./picture.ts";

export function notice(
  { extent, nodes, argued }: Pick<Picture, "extent" | "nodes" | "argued">,
  passing: number,
): string {
  switch (extent) {
    case "everything":
      return passing === 0 ? "Nothing passes the filters." : "";
    case "around":
      return "";
    case "too-many":
      return `${passing} nodes are too many to draw at once. ${argued ? "The argument alone" : "What stands around the selected node"} is shown: ${nodes.size} nodes.`;
    case "overview":
      return `${passing} nodes are too many to draw at once. Systems, lines and years are shown. Choose a node, or fewer by the filters, to see the rest.`;
    case "cut":
      return argued
        ? `The argument has so many nodes that only the first ${nodes.size} are drawn. The table has them all.`
        : `So much stands around the selected node that only the nearest ${nodes.size} nodes are drawn. The table has them all.`;
  }
}
