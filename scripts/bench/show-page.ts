/** The bench of the page in words. */
import { median } from "./bench.ts";
import type { PageResult } from "./page.ts";

export function showPage({ sizes, steps, loaded }: PageResult): string {
  const milliseconds = (value: number): string => value.toFixed(0).padStart(7);
  const sum = (key: "bytes" | "gzip"): number => loaded.reduce((total, file) => total + file[key], 0);
  const kilobytes = (bytes: number): string => (bytes / 1000).toFixed(1).padStart(7);
  return [
    `One step on "this car", ${sizes.records} records, processor slowed down ${sizes.slowdown} times:`,
    "records    open   shown ms   settled ms",
    ...steps.map(
      (step) =>
        `${String(step.records).padStart(7)} ${String(step.open).padStart(7)}    ${milliseconds(step.shown)}      ${milliseconds(step.settled)}`,
    ),
    `median: shown ${median(steps.map((step) => step.shown)).toFixed(0)} ms (aim < 100), settled ${median(steps.map((step) => step.settled)).toFixed(0)} ms`,
    "",
    "Loaded for one car of the data folder, kB (compressed):",
    ...loaded.map((file) => `${kilobytes(file.bytes)} (${kilobytes(file.gzip).trim()})  ${file.path}`),
    `${kilobytes(sum("bytes"))} (${kilobytes(sum("gzip")).trim()})  in all`,
  ].join("\n");
}
