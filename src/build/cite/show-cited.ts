/** Findings in documents as text for a terminal: the place, the line with a mark under the citation, the citation as it should be. */
import { showFinding } from "../data/show-findings.ts";
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

/** `fixed` is how many of the findings were mended in the documents. */
export function countCited(
  documents: number,
  citations: number,
  findings: readonly CiteFinding[],
  fixed: number,
): string {
  const count = (number: number, word: string): string => `${number} ${word}${number === 1 ? "" : "s"}`;
  const found = findings.length === 0 ? "nothing to mend" : `${findings.length} to look at`;
  return `${count(documents, "document")}, ${count(citations, "citation")}: ${found}${fixed > 0 ? `, ${fixed} of them mended` : ""}`;
}
