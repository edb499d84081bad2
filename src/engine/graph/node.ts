/** What stands in the graph, and the address of its page. Addresses are made of ids alone, so they never change. */

export const NODE_KINDS = ["record", "part", "component", "system", "line", "year", "bulletin"] as const;
export type NodeKind = (typeof NODE_KINDS)[number];

/** The key of a node: its kind and id, such as 'part:12-3456'. */
export function nodeKey(kind: NodeKind, id: string): string {
  return `${kind}:${id}`;
}

/** The address of a page inside the site, beginning and ending with '/'. */
export function address(kind: NodeKind, id: string): string {
  return `/${kind}s/${id}/`;
}

export interface NodeFacts {
  readonly kind: NodeKind;
  readonly id: string;
  readonly label: string;
  readonly address: string;
  /** Ids of the systems it belongs to, main one first. */
  readonly systems: readonly string[];
  readonly lines: readonly string[];
  readonly years: readonly number[];
  /** Where the map draws it; set by the layout. */
  x: number;
  y: number;
}
