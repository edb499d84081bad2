/** What was written for a new record, part or bulletin, and what to do next, as text for a terminal. */
import { showFinding } from "../data/show-findings.ts";
import type { Answers } from "./field.ts";
import type { Flags, Gathered } from "./gather-answers.ts";
import type { NewKind } from "./new-fields.ts";
import type { NewFile } from "./new-file.ts";

const NEXT: Readonly<Record<NewKind, string>> = {
  record:
    "Next: write into it what the record states (built, supersedes, stands-in, settings …), then npm run check. npm run dev shows its page.",
  part: "Next: a record that says where it is built, or what it stands in for; then npm run check.",
  bulletin: "Next: npm run check, which follows its citations. npm run dev shows its page.",
};

export function showNew(kind: NewKind, { path, grown, findings }: NewFile, folder: string): string {
  return [
    `${grown ? "Added to" : "Wrote"} ${folder}/${path}`,
    ...findings.map((finding) => `\n${showFinding(finding, folder)}\n`),
    NEXT[kind],
  ].join("\n");
}

/** What an editor noted in a file is worth more than the saved typing. */
export function showByHand({ path, lost, byHand }: NewFile, folder: string): string {
  return [
    `Nothing was written: ${folder}/${path} is written in a way that nothing can be added to without losing`,
    ...lost.map((comment) => `  ${comment}`),
    `Add it by hand:\n  ${byHand}`,
  ].join("\n");
}

export function showMissing(kind: NewKind, { missing, faults }: Extract<Gathered, { missing: unknown }>): string {
  const flags = missing.map((name) => `--${name}`).join(", ");
  return [
    ...(missing.length > 0 ? [`a new ${kind} also needs ${flags}; in a terminal npm run new asks for them`] : []),
    ...faults,
  ].join("\n");
}

export function showStopped(kind: NewKind, folder: string, answers: Answers, more: Flags): string {
  if (Object.keys(answers).length === 0) return "\nStopped. Nothing was written.";
  return `\nStopped. Nothing was written. To go on from here:\n${commandOf(kind, folder, answers, more)}`;
}

/** So that nothing typed is lost: the whole command once more. */
export function showWrong(kind: NewKind, file: NewFile, folder: string, answers: Answers, more: Flags): string {
  return [
    "Nothing was written, because this would be wrong:",
    ...file.findings.map((finding) => showFinding(finding, folder)),
    `Mend it in the command and start it again:\n${commandOf(kind, folder, answers, more)}`,
  ].join("\n\n");
}

export function commandOf(kind: NewKind, folder: string, answers: Answers, more: Flags): string {
  const flags = [...Object.entries(answers), ...Object.entries(more)].flatMap(([name, value]) =>
    value === undefined ? [] : [value].flat().map((text) => `--${name} ${quoted(text)}`),
  );
  return [`npm run new -- ${kind}`, ...(folder === "data" ? [] : [`--data ${quoted(folder)}`]), ...flags].join(
    " \\\n  ",
  );
}

/** For the shells of Unix; a text of plain letters needs no quotes. */
function quoted(text: string): string {
  return /^[\w./:=-]+$/.test(text) ? text : `'${text.replaceAll("'", "'\\''")}'`;
}
