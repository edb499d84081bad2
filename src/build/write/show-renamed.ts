/** What a renaming did, or would do, as text for a terminal. */
import { showFinding } from "../data/show-findings.ts";
import type { Mention, NotRenamed, Renamed } from "./rename-id.ts";
import type { Renaming } from "./what-to-rename.ts";

/** An id that is a plain word stands in many sentences that do not mean it. */
const MOST_LEFT = 10;

export function showNotRenamed({ refused, findings }: NotRenamed, folder: string): string {
  return [refused, ...findings.map((finding) => showFinding(finding, folder))].join("\n\n");
}

/** References are counted; what was changed in words, and what was left, is shown line by line, for there an editor may think otherwise. */
export function showRenamed(renamed: Renamed, { old, next }: Renaming, folder: string, dryRun: boolean): string {
  const { kind, files, gone, mentions, moved } = renamed;
  const of = (as: Mention["as"]): Mention[] => mentions.filter((mention) => mention.as === as);
  const lines = (found: readonly Mention[]): string[] =>
    found.map(({ file, line, column, why, shown }) => {
      const said = why === undefined ? "" : ` (${why})`;
      return `  ${folder}/${file}:${line}:${column}${said}\n      ${shown.trim()}`;
    });
  const block = (head: string, found: readonly Mention[], most = found.length): string[] => {
    if (found.length === 0) return [];
    const more = found.length > most ? [`  and ${found.length - most} more`] : [];
    return [head, ...lines(found.slice(0, most)), ...more];
  };
  const inFiles = new Set(of("reference").map((mention) => mention.file)).size;
  return [
    `${dryRun ? "Would rename" : "Renamed"} the ${kind} ${old} to ${next}.`,
    `${count(of("reference").length, "reference")} in ${count(inFiles, "file")}`,
    ...block(`${count(of("citation").length, "citation")}:`, of("citation")),
    ...block(`${count(of("text").length, "mention")} in texts:`, of("text")),
    ...block(`Left as ${of("left").length === 1 ? "it is" : "they are"}, look yourself:`, of("left"), MOST_LEFT),
    ...[...gone].map(([path, place]) => `${folder}/${path} becomes ${folder}/${place}`),
    ...moved.map((said) => `moved.yaml: ${said}`),
    "",
    dryRun
      ? "Nothing was written. Leave --dry-run out to do it."
      : `${count(files.size, "file")} written. Next: npm run check, and npm run cite for documents that lie elsewhere.`,
  ].join("\n");
}

function count(number: number, word: string): string {
  return `${number} ${word}${number === 1 ? "" : "s"}`;
}
