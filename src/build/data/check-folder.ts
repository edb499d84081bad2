/** Everything that is wrong with a data folder that could be read: what the audit of the records finds, and slips of the pen. */
import { audit } from "../../engine/audit/audit.ts";
import { weigh } from "../../engine/audit/weigh.ts";
import type { Complaint } from "../../engine/records/complaint.ts";
import { checkWords } from "./check-words.ts";
import { byGravity, type Finding, locate, type ReadFolder } from "./read-folder.ts";
import { canBeSet, RULE_TEXTS } from "./rule-texts.ts";

/** A finding that a file accepts as it stands, and why. */
export interface Accepted {
  readonly finding: Finding;
  readonly why: string;
}

export interface CheckedFolder {
  /** With those of reading, errors first. */
  readonly findings: readonly Finding[];
  readonly accepted: readonly Accepted[];
}

/** Where the folder could not be read as a whole, only what reading found is said: the rest would be guessed. */
export function checkFolder(read: ReadFolder): CheckedFolder {
  const { catalog, checks, acceptances, sources } = read;
  if (!catalog) return { findings: read.findings, accepted: [] };
  const found = [...read.findings, ...audit(catalog, checks), ...checkWords(read)];
  const { complaints, accepted } = weigh(found, checks, acceptances, RULE_TEXTS.filter(canBeSet));
  // A place inside a folded text is found by the word; all others by their field.
  const located = (complaint: Complaint): Finding =>
    "position" in complaint ? (complaint as Finding) : locate(complaint, sources.get(complaint.file), sources);
  return {
    findings: complaints.map(located).sort(byGravity),
    accepted: accepted.map(({ complaint, why }) => ({ finding: located(complaint), why })),
  };
}
