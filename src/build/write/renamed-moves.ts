/** What stands in moved.yaml after a renaming, and in words what changed there. */
import type { Move } from "../../engine/records/catalog.ts";
import type { RenamedKind, Renaming } from "./what-to-rename.ts";

/** The old id leads on, and so does every older one, in one step. Back to an earlier id: that one is used again, so it leads nowhere. */
export function renamedMoves(
  moves: readonly Move[],
  { old, next, kind, why }: Renaming & { readonly kind: RenamedKind },
): { readonly moved: Move[]; readonly said: string[] } {
  const said: string[] = [];
  const kept = moves.flatMap((move) => {
    if (move.kind !== kind) return [move];
    if (move.from === next) {
      said.push(`'${next}' is used again, so it no longer leads to '${move.to}'`);
      return [];
    }
    if (move.to !== old) return [move];
    said.push(`'${move.from}' leads to '${next}' now`);
    return [{ ...move, to: next }];
  });
  return { moved: [...kept, { kind, from: old, to: next, why }], said: [...said, `'${old}' leads to '${next}'`] };
}
