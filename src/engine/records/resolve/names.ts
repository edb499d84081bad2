import { nearest } from "../../scope/nearest.ts";
import type { Complaints, Naming, Path } from "../complaint.ts";

/** Complains when a file names something that no other file has. `what` is the trade's word for it, 'part'. */
export function mustKnow(
  known: { has(name: string): boolean; keys(): Iterable<string> },
  name: string,
  what: Naming | "feature" | "trait",
  path: Path,
  complaints: Complaints,
  where: string,
): boolean {
  if (known.has(name)) return true;
  const meant = nearest(name, [...known.keys()]);
  complaints.error(
    path,
    `no ${what} is called '${name}'`,
    meant ? `did you mean '${meant}'?` : `add it to ${where}, or mend the name`,
    what === "feature" || what === "trait" ? { rule: "unknown-name" } : { unknown: { name, as: [what] } },
  );
  return false;
}
