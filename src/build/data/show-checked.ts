/** What the check of a folder found, as text for a terminal. */
import type { CheckedFolder } from "./check-folder.ts";
import { countFindings, showFinding } from "./show-findings.ts";

export function showChecked({ findings, accepted }: CheckedFolder, files: number, folder: string): string {
  const more = accepted.length > 0 ? `, ${accepted.length} accepted (--accepted lists them)` : "";
  return [
    ...findings.map((finding) => `${showFinding(finding, folder)}\n`),
    `${files} files: ${countFindings(findings)}${more}`,
  ].join("\n");
}

export function showAccepted({ accepted }: CheckedFolder, folder: string): string {
  return [
    ...accepted.map(({ finding, why }) => `${showFinding(finding, folder)}\n    accepted: ${why}\n`),
    `${accepted.length} accepted`,
  ].join("\n");
}
