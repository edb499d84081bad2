/** Finds nodes by what a person types: an id or words of the label. Spaces, dashes, dots and accents are forgiven. */
import { KIND_ORDER } from "./kinds.ts";
import type { MapGraph, MapNode } from "./map-graph.ts";

/**
 * The best come first: the id itself, ids that begin so, labels that begin so, labels with every word at the beginning
 * of one of theirs, then labels that hold what was typed, or every word of it, anywhere. Words of one or two signs say
 * little: except for the last, which may be unfinished, they must stand in the label as they are. Among equals the order
 * of kinds, then the order of the graph.
 */
export function findNodes(graph: MapGraph, text: string, most: number): MapNode[] {
  const wanted = squeeze(text);
  if (wanted === "") return [];
  const words = plain(text).split(NO_WORD).filter(Boolean);
  return graph.document.nodes
    .map((node) => ({ node, rank: rank(node, wanted, words) }))
    .filter(({ rank }) => rank < NOT_FOUND)
    .sort((a, b) => a.rank - b.rank || KIND_ORDER.indexOf(a.node.kind) - KIND_ORDER.indexOf(b.node.kind))
    .slice(0, most)
    .map(({ node }) => node);
}

const NOT_FOUND = 5;
const NO_WORD = /[^\p{L}\p{N}]+/u;

function rank(node: MapNode, wanted: string, words: readonly string[]): number {
  const id = squeeze(node.id);
  const label = plain(node.label);
  if (id === wanted) return 0;
  if (id.startsWith(wanted)) return 1;
  if (squeeze(label).startsWith(wanted)) return 2;
  const own = label.split(NO_WORD);
  const begins = (word: string, i: number): boolean =>
    own.some((other) => (word.length < 3 && i < words.length - 1 ? other === word : other.startsWith(word)));
  if (words.every(begins)) return 3;
  const anywhere = words.every((word) => word.length >= 3 && label.includes(word));
  return squeeze(label).includes(wanted) || id.includes(wanted) || anywhere ? 4 : NOT_FOUND;
}

function plain(text: string): string {
  return text.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase();
}

/** Letters and digits alone. */
function squeeze(text: string): string {
  return plain(text).replace(/[^\p{L}\p{N}]/gu, "");
}
