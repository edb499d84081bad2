import { nearest } from "../../scope/nearest.ts";
import type { Complaints, Naming, Path } from "../complaint.ts";

/**
 * Complains when a file names something that no other file has. `what` is the trade's word for it, 'part'. A feature is looked for
 * where all features are known, but when it is said that its file `mayBeUnread`.
 */
export function mustKnow(
  known: { has(name: string): boolean; keys(): Iterable<string> },
  name: string,
  what: Naming | "trait",
  path: Path,
  complaints: Complaints,
  where: string,
  mayBeUnread = what !== "feature",
): boolean {
  if (known.has(name)) return true;
  const meant = nearest(name, [...known.keys()]);
  complaints.error(
    path,
    `no ${what} is called '${name}'`,
    meant ? `did you mean '${meant}'?` : `add it to ${where}, or mend the name`,
    what === "trait" || !mayBeUnread
      ? { rule: "unknown-name" }
      : { unknown: { name, as: [what], ...(meant ? { meant } : {}) } },
  );
  return false;
}
