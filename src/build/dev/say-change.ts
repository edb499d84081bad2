/** What the terminal is told of a change and of the complaints. Only text, nothing is written. */
import type { Finding } from "../data/read-folder.ts";
import { countFindings, showFinding } from "../data/show-findings.ts";
import type { Change } from "./world.ts";

const MOST_FILES = 3;
const MOST_FINDINGS = 20;

/** "changes/1959/HY59-01.md: shown after 0.31 s" */
export function sayChange({ files, isGood }: Change, milliseconds: number): string {
  const named = files.slice(0, MOST_FILES).join(", ");
  const more = files.length - MOST_FILES;
  const what = files.length === 0 ? "the folder" : more > 0 ? `${named} and ${more} more` : named;
  return isGood
    ? `${what}: shown after ${(milliseconds / 1000).toFixed(2)} s`
    : `${what}: there are errors, so the pages stay as they were`;
}

/** Complaints that were there before are not shown again, but counted. Nothing where nothing is said otherwise than before. */
export function sayFindings(
  findings: readonly Finding[],
  before: readonly Finding[],
  folder: string,
): string | undefined {
  const show = (finding: Finding): string => showFinding(finding, folder);
  const old = new Set(before.map(show));
  const all = findings.map(show);
  const fresh = all.filter((text) => !old.has(text));
  if (fresh.length === 0 && all.length === old.size) return undefined;
  if (all.length === 0) return "Nothing to complain about any more.";
  const more = fresh.length - MOST_FINDINGS;
  return [
    ...fresh.slice(0, MOST_FINDINGS).map((text) => `\n${text}`),
    ...(more > 0 ? [`\nand ${more} more: npm run check shows all`] : []),
    `${fresh.length > 0 ? "\n" : ""}${countFindings(findings)}${all.length > fresh.length ? `, ${all.length - fresh.length} of them known` : ""}.`,
  ].join("\n");
}
