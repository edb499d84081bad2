/** The bench of the editor's server in words. */
import { median } from "./bench.ts";
import type { DevResult } from "./dev.ts";

export function showDev({ sizes, named, firstPage, early, edits, served, complaint, build }: DevResult): string {
  const seconds = (milliseconds: number): string => `${(milliseconds / 1000).toFixed(2)} s`;
  const row = (what: string, milliseconds: number): string => `${what.padEnd(52)} ${seconds(milliseconds).padStart(8)}`;
  return [
    `npm run dev with ${sizes.records} records:`,
    row("from the start to the address", named),
    row("from the start to the page of a record", firstPage),
    row(`save to page, median of ${edits.length} (aim < 1 s)`, median(edits)),
    row("of that until the server told the browser, median", median(served)),
    row("save to page, the slowest", Math.max(...edits)),
    row(`the same while text search is indexed, median of ${early.length}`, median(early)),
    row("mistake saved to complaint on the page", complaint),
    row("for comparison: npm run build of the same folder", build),
    `each: ${edits.map(seconds).join(", ")}`,
  ].join("\n");
}
