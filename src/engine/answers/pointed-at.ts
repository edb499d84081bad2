/** Who names what: by the node of a record, part or component the records that link to it, and the bulletins that cite it. */
import { type NodeKind, nodeKey } from "../graph/node.ts";
import type { Bulletin, Catalog, ChangeRecord } from "../records/catalog.ts";
import { groupBy } from "../records/group-by.ts";

export function linksTo(catalog: Catalog): ReadonlyMap<string, readonly ChangeRecord[]> {
  return groupBy([...catalog.records.values()], ({ facts }) =>
    [...new Set(facts.links)].map((id) => nodeKey("record", id)),
  );
}

/** A name that stands for several things means the record, else the part, else the component. */
export function citationsOf(catalog: Catalog): ReadonlyMap<string, readonly Bulletin[]> {
  const known: [NodeKind, ReadonlyMap<string, unknown>][] = [
    ["record", catalog.records],
    ["part", catalog.parts],
    ["component", catalog.components],
  ];
  return groupBy([...catalog.bulletins.values()], ({ citations }) => {
    const cited = citations.flatMap(({ id }) => {
      const [kind] = known.find(([, all]) => all.has(id)) ?? [];
      return kind ? [nodeKey(kind, id)] : [];
    });
    return [...new Set(cited)];
  });
}
