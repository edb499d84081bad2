/** Which thing a renaming means, and why it may not have the new id. */
import type { Catalog, Move } from "../../engine/records/catalog.ts";
import { id as idShape } from "../../engine/records/shapes/common.ts";
import { nearest } from "../../engine/scope/nearest.ts";

export type RenamedKind = Move["kind"];
export const KINDS_TO_RENAME = ["record", "part", "component", "system", "bulletin"] as const satisfies RenamedKind[];

export interface Renaming {
  readonly old: string;
  readonly next: string;
  readonly kind?: RenamedKind | undefined;
  readonly why: string;
}

/** The kinds of which something has this id; [[ID]] in a bulletin means the first of them. */
export function kindsCalled(catalog: Catalog, id: string): RenamedKind[] {
  return KINDS_TO_RENAME.filter((kind) => knownIn(catalog, kind).has(id));
}

export function whatToRename(
  catalog: Catalog,
  renaming: Renaming,
): { readonly kind: RenamedKind } | { readonly refused: string } {
  const found = kindMeant(catalog, renaming);
  if ("refused" in found) return found;
  const refused = refuses(catalog, renaming, found.kind);
  return refused === undefined ? found : { refused };
}

function knownIn(catalog: Catalog, kind: RenamedKind): { has(id: string): boolean; keys(): Iterable<string> } {
  if (kind === "system") return new Map(catalog.systems.map((system) => [system.id, system]));
  return { record: catalog.records, part: catalog.parts, component: catalog.components, bulletin: catalog.bulletins }[
    kind
  ];
}

function kindMeant(catalog: Catalog, { old, kind }: Renaming): { kind: RenamedKind } | { refused: string } {
  const refuse = (refused: string): { refused: string } => ({ refused });
  const kinds = kindsCalled(catalog, old).filter((one) => (kind ?? one) === one);
  if (kinds.length === 1) return { kind: kinds[0] as RenamedKind };
  if (kinds.length > 1)
    return refuse(
      `'${old}' is the id of a ${kinds.join(" and of a ")}: say which with --kind ${kinds.join(" or --kind ")}`,
    );
  const what = kind ?? "record, part, component, system or bulletin";
  const move = catalog.moved.find((one) => one.from === old && (kind ?? one.kind) === one.kind);
  if (move) return refuse(`'${old}' is no longer used: ${move.to === undefined ? move.why : `it is now '${move.to}'`}`);
  const among = KINDS_TO_RENAME.filter((one) => (kind ?? one) === one).flatMap((one) => [
    ...knownIn(catalog, one).keys(),
  ]);
  const meant = nearest(old, among);
  return refuse(`no ${what} is called '${old}'${meant ? `: did you mean '${meant}'?` : ""}`);
}

/** Bulletins cite records, parts and components alike, so among these an id is used once. */
function refuses(catalog: Catalog, { old, next }: Renaming, kind: RenamedKind): string | undefined {
  const shape = idShape.safeParse(next);
  if (!shape.success) return `'${next}' cannot be an id: ${shape.error.issues[0]?.message}`;
  if (next === old) return `it is called '${next}' already`;
  const cited: RenamedKind[] = ["record", "part", "component"];
  for (const other of cited.includes(kind) ? cited : [kind])
    for (const id of knownIn(catalog, other).keys()) {
      if (id === next) return `a ${other} is called '${next}' already`;
      if (id.toLowerCase() === next.toLowerCase())
        return id === old
          ? `'${next}' differs from '${old}' in capitals only, and not every web server tells such addresses apart`
          : `a ${other} is called '${id}' already, and '${next}' differs from it in capitals only`;
    }
  const earlier = catalog.moved.find((move) => move.kind === kind && move.from === next);
  if (earlier && endOf(catalog, earlier) !== old)
    return `'${next}' was the id of another ${kind} (${earlier.why}) and pages out there may still name it: take an id that was never used`;
  return undefined;
}

function endOf(catalog: Catalog, move: Move): string | undefined {
  let at = move;
  for (;;) {
    const next = catalog.moved.find((other) => other.kind === at.kind && other.from === at.to);
    if (!next) return at.to;
    at = next;
  }
}
