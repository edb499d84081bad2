/** Everything that is wrong with a data folder that could be read: what the audit of the records finds, and slips of the pen. */
import { audit } from "../../engine/audit/audit.ts";
import type { Complaint } from "../../engine/records/complaint.ts";
import { checkWords } from "./check-words.ts";
import { byGravity, type Finding, locate, type ReadFolder } from "./read-folder.ts";

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
  if (!read.catalog) return { findings: read.findings, accepted: [] };
  const { complaints, accepted } = audit(read.catalog, read.checks, read.acceptances);
  const located = (complaint: Complaint): Finding => locate(complaint, read.sources.get(complaint.file), read.sources);
  return {
    findings: [...read.findings, ...complaints.map(located), ...checkWords(read)].sort(byGravity),
    accepted: accepted.map(({ complaint, why }) => ({ finding: located(complaint), why })),
  };
}
