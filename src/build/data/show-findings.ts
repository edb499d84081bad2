/** Findings as text for a terminal: file:line:column, the line itself with a mark under the fault, what to do. */
import type { Finding } from "./read-folder.ts";
import type { Position } from "./source.ts";

export function showFinding(finding: Finding, folder: string): string {
  const { position, severity, rule, message, hint, shown, also = [], car } = finding;
  const place = (file: string, { line, column }: Pick<Position, "line" | "column">): string =>
    `${folder}/${file}:${line}:${column}`;
  return [
    harmless(`${place(finding.file, position)}: ${severity}: ${message}`),
    ...(shown ? markedLine(shown, position) : []),
    ...also.map((it) =>
      harmless(`    also ${it.position ? place(it.file, it.position) : `${folder}/${it.file}`}: ${it.message}`),
    ),
    ...(car ? [harmless(`    for example: ${car.words}`)] : []),
    harmless(`    → ${hint}`),
    // What is found of the records as a whole can be weighed otherwise or accepted, by this name.
    ...(finding.records || finding.names
      ? [`    check: ${rule}${finding.records?.length ? ` (${finding.records.join(", ")})` : ""}`]
      : []),
  ].join("\n");
}

function markedLine(text: string, { line, column, length }: Position): string[] {
  const [shown, at] = cut(text, column);
  const gutter = `${String(line).padStart(6)} | `;
  return [
    `${gutter}${shown}`,
    `${" ".repeat(6)} | ${" ".repeat(at - 1)}${"^".repeat(Math.max(1, Math.min(length, shown.length - at + 1)))}`,
  ];
}

/** One line that counts them: "2 errors, 1 warning". */
export function countFindings(findings: readonly Finding[]): string {
  const errors = findings.filter((finding) => finding.severity === "error").length;
  const warnings = findings.length - errors;
  const count = (n: number, word: string): string => `${n} ${word}${n === 1 ? "" : "s"}`;
  return [errors > 0 || warnings === 0 ? count(errors, "error") : "", warnings > 0 ? count(warnings, "warning") : ""]
    .filter(Boolean)
    .join(", ");
}

/** A long line is cut round the fault, so that the mark stays in sight. */
function cut(text: string, column: number): [string, number] {
  const plain = harmless(text);
  if (plain.length <= 110) return [plain, column];
  const start = Math.max(0, column - 50);
  return [
    `${start > 0 ? "…" : ""}${plain.slice(start, start + 100)}${start + 100 < plain.length ? "…" : ""}`,
    column - start + (start > 0 ? 1 : 0),
  ];
}

/** Signs that would move the cursor, colour the terminal or turn the line round are shown as blanks, one for one. */
export function harmless(text: string): string {
  return text.replaceAll(/[\p{Cc}\p{Bidi_Control}]/gu, " ");
}
