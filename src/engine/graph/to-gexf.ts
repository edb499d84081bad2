import { write } from "graphology-gexf";
import type { Graph } from "./build-graph.ts";

/** The graph in the open format GEXF 1.2 (gexf.net), for any program that reads it. */
export function toGexf(graph: Graph, title: string): string {
  const text = write(graph, {
    formatNode: (_, { label, x, y, kind, id, address, systems, lines, years }) => ({
      label,
      viz: { x, y },
      attributes: { kind, id, address, systems: systems.join(" "), lines: lines.join(" "), years: years.join(" ") },
    }),
    formatEdge: (_, { relation, from, scope, verdict }) => ({
      label: relation,
      attributes: { relation, from: from ?? "", scope: scope ?? "", verdict: verdict ?? "" },
    }),
  });
  return (
    text
      // The writer puts today's date into the head; the same input must give the same bytes.
      .replace(
        /<meta[^>]*>[\s\S]*?<\/meta>|<meta[^>]*\/>/,
        () => `<meta><description>${escapeXml(title)}</description></meta>`,
      )
      // The writer misspells the namespace of the places: three slashes, and the version before.
      .replace(/xmlns:viz="[^"]*"/, 'xmlns:viz="http://www.gexf.net/1.2draft/viz"')
  );
}

function escapeXml(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
}
