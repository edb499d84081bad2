import { audit } from "../../engine/audit/audit.ts";
import { weigh } from "../../engine/audit/weigh.ts";
import type { Complaint } from "../../engine/records/complaint.ts";
import type { ReadCatalog } from "../../engine/records/read-catalog.ts";
import { canBeSet, RULE_TEXTS } from "./rule-texts.ts";

/** What reading says of files and, where they can be read as a whole, what the audit says of the records, weighed. Words are not looked at. */
export function audited(
  read: Pick<ReadCatalog, "catalog" | "complaints" | "checks" | "acceptances">,
): readonly Complaint[] {
  const { catalog, complaints, checks, acceptances } = read;
  if (!catalog) return complaints;
  const found = [...complaints, ...audit(catalog, checks)];
  return weigh(found, checks, acceptances, RULE_TEXTS.filter(canBeSet)).complaints;
}

/** Those that were not there before. Places in a list do not count: what is put above a statement does not make its fault a new one. */
export function newlyFound<T extends Complaint>(after: readonly T[], before: readonly Complaint[]): T[] {
  const known = new Set(before.map(nameOf));
  return after.filter((complaint) => !known.has(nameOf(complaint)));
}

function nameOf({ file, path, rule, severity, message }: Complaint): string {
  return JSON.stringify([file, path.filter((step) => typeof step === "string"), rule, severity, message]);
}
