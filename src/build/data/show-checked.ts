/** What the check of a folder found, as text for a terminal. */
import type { CheckedFolder } from "./check-folder.ts";
import { countFindings, showFinding } from "./show-findings.ts";

/** `compared` is how many published addresses were looked for, where some were. */
export function showChecked(
  { findings, accepted }: CheckedFolder,
  files: number,
  folder: string,
  compared?: number,
): string {
  const lost = findings.filter(({ rule, severity }) => rule === "published-address" && severity === "error").length;
  const more = accepted.length > 0 ? `, ${accepted.length} accepted (--accepted lists them)` : "";
  return [
    ...findings.map((finding) => `${showFinding(finding, folder)}\n`),
    ...(compared === undefined
      ? []
      : [
          compared === 0
            ? "No published address was compared: the errors come first."
            : `${compared} published addresses: ${lost === 0 ? "none" : lost} would die.`,
        ]),
    `${files} files: ${countFindings(findings)}${more}`,
  ].join("\n");
}

export function showAccepted({ accepted }: CheckedFolder, folder: string): string {
  return [
    ...accepted.map(({ finding, why }) => `${showFinding(finding, folder)}\n    accepted: ${why}\n`),
    `${accepted.length} accepted`,
  ].join("\n");
}
