import { ALL } from "../../scope/diagram.ts";
import { type ReadScope, readScope } from "../../scope/read-scope.ts";
import type { Scope } from "../../scope/scope.ts";
import { FITTED, type Space } from "../../scope/space.ts";
import type { Complaints, Path } from "../complaint.ts";
import { mustKnow } from "./names.ts";

/**
 * The scope in a field, with a complaint for each slip in it. A scope with slips counts as every car until it is mended.
 * Without traits nothing can be said about a scope: then the fault lies in their file, which has its own complaint.
 * Where `parts` are given, a part that the scope wants on the car must be one of them.
 */
export function resolveScope(
  space: Space,
  text: string,
  path: Path,
  complaints: Complaints,
  parts?: ReadonlyMap<string, unknown>,
): Scope {
  if (space.declared.length === 0) return { text, alternatives: [[]], cars: ALL };
  const { read, fitted } = readOnce(space, text);
  if ("scope" in read) {
    for (const part of parts ? fitted : [])
      mustKnow(parts as ReadonlyMap<string, unknown>, part, "part", path, complaints, "parts/");
    return read.scope;
  }
  for (const slip of read.slips)
    complaints.error(path, slip.message, slip.hint, { within: [slip.from, slip.to], rule: "scope" });
  return { text, alternatives: [[]], cars: ALL };
}

/** The scopes of a folder by their text: most of them are written more than once. */
const scopesRead = new WeakMap<Space, Map<string, { readonly read: ReadScope; readonly fitted: readonly string[] }>>();

function readOnce(space: Space, text: string): { readonly read: ReadScope; readonly fitted: readonly string[] } {
  const known = scopesRead.get(space) ?? new Map();
  scopesRead.set(space, known);
  if (!known.has(text)) {
    const read = readScope(space, text);
    known.set(text, { read, fitted: "scope" in read ? fittedParts(space, read.scope) : [] });
  }
  return known.get(text);
}

function fittedParts(space: Space, scope: Scope): string[] {
  return scope.alternatives
    .flat()
    .flatMap((clause) =>
      clause.type === "flags"
        ? clause.traits
            .filter((trait) => space.isFitted(trait))
            .map((trait) => space.trait(trait).id.slice(FITTED.length + 1))
        : [],
    );
}
