import { ALL } from "../../scope/diagram.ts";
import { readScope } from "../../scope/read-scope.ts";
import type { Scope } from "../../scope/scope.ts";
import type { Space } from "../../scope/space.ts";
import type { Complaints, Path } from "../complaint.ts";

/** The scope in a field, with a complaint for each slip in it. A scope with slips counts as every car until it is mended. */
export function resolveScope(space: Space, text: string, path: Path, complaints: Complaints): Scope {
  const read = readScope(space, text);
  if ("scope" in read) return read.scope;
  for (const slip of read.slips) complaints.error(path, slip.message, slip.hint, { within: [slip.from, slip.to] });
  return { text, alternatives: [[]], cars: ALL };
}
