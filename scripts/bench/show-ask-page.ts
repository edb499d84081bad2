/** The bench of the page "ask" in words. */
import { loadavg } from "node:os";
import type { AskPageResult, Timed } from "./ask-page.ts";
import { median } from "./bench.ts";

const AIMS = { milliseconds: 150, bytes: 150_000 };

export function showAskPage({ sizes, firsts, further, loaded }: AskPageResult): string {
  const sum = (key: "bytes" | "gzip"): number =>
    loaded.filter(({ before }) => before).reduce((total, file) => total + file[key], 0);
  const kilobytes = (bytes: number): string => (bytes / 1000).toFixed(1).padStart(8);
  const of = (times: readonly Timed[]): number => median(times.map(({ milliseconds }) => milliseconds));
  const line = ({ question, milliseconds }: Timed): string => `${milliseconds.toFixed(0).padStart(8)}  ${question}`;
  const met = (isMet: boolean): string => (isMet ? "met" : "NOT MET");
  return [
    `From a question to its first result, ${sizes.records} records, processor slowed down ${sizes.slowdown} times (load ${(loadavg()[0] as number).toFixed(1)}), ms:`,
    "the first on a page, nothing loaded before:",
    ...firsts.map(line),
    "after it:",
    ...further.map(line),
    ...(further.length > 0
      ? [
          `median of these: ${of(further).toFixed(0)} ms (aim < ${AIMS.milliseconds}: ${met(of(further) < AIMS.milliseconds)})`,
        ]
      : []),
    "",
    "Loaded for a first question, the one that takes most, kB (compressed); what came after its first result marked +:",
    ...loaded.map(
      (file) => `${file.before ? " " : "+"}${kilobytes(file.bytes)} (${kilobytes(file.gzip).trim()})  ${file.path}`,
    ),
    ` ${kilobytes(sum("bytes"))} (${kilobytes(sum("gzip")).trim()})  up to the first result (aim < ${AIMS.bytes / 1000} compressed: ${met(sum("gzip") < AIMS.bytes)})`,
  ].join("\n");
}
