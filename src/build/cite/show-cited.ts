/** Findings in documents as text for a terminal: the place, the line with a mark under the citation, the citation as it should be. */
import { harmless, showFinding } from "../data/show-findings.ts";
import type { CiteFinding } from "./cite-document.ts";

export function showCited({ file, line, column, written, mended, certain, message, hint, shown }: CiteFinding): string {
  const cut = file.lastIndexOf("/");
  const finding = {
    severity: "error" as const,
    rule: "citation",
    file: file.slice(cut + 1),
    path: [],
    message,
    hint,
    position: { line, column, length: written.length },
    shown,
  };
  const place = showFinding(finding, cut < 0 ? "." : file.slice(0, cut)).replace(/^\.\//, "");
  return mended === undefined ? place : `${place}\n    → ${mended}${certain ? " (--fix writes it)" : ""}`;
}

/** What was mended needs no more than a line. */
export function showMended({ file, line, column, written, mended, message }: CiteFinding): string {
  return harmless(`${file}:${line}:${column}: mended: ${written} → ${mended} (${message})`);
}

/** What most likely is nobody's slip needs no more than a line. */
export function showStrange({ file, line, column, message, hint }: CiteFinding): string {
  return harmless(`${file}:${line}:${column}: ${message}; ${hint}`);
}

/** `mended` is how many citations were mended in the documents. */
export function countCited(documents: number, citations: number, left: number, mended: number, strange = 0): string {
  const count = (number: number, word: string): string => `${number} ${word}${number === 1 ? "" : "s"}`;
  const found = [mended > 0 ? `${mended} mended` : "", left > 0 ? `${left} to look at` : ""].filter(Boolean);
  return `${count(documents, "document")}, ${count(citations, "citation")}: ${found.join(", ") || "nothing to mend"}${strange > 0 ? `; ${count(strange, "code")} of somebody else` : ""}`;
}
