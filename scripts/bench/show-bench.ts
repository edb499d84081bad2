/** The result of one size as text: what was built, a small table, and where our time goes. */
import { availableParallelism } from "node:os";
import type { BenchResult, Side } from "./bench.ts";

export function showBench({ records, pages, indexed, megabytes, ours, bare, ratio }: BenchResult): string {
  const whole = (number: number): string => Math.round(number).toLocaleString("en");
  const row = (...cells: string[]): string =>
    cells.map((cell, i) => (i === 0 ? cell.padEnd(14) : cell.padStart(12))).join("");
  return `
${whole(records)} records: ${whole(pages)} pages of ${whole(megabytes)} MB, ${whole(indexed)} of them indexed
Node ${process.versions.node}, ${availableParallelism()} processors, medians of ${ours.runs.length} runs in turn

${row("", "Yearmark", "bare", "ratio")}
${row("wall time", `${ours.seconds.toFixed(1)} s`, `${bare.seconds.toFixed(1)} s`, ratio.seconds.toFixed(2))}
${row("processors", `${ours.busy.toFixed(1)} s`, `${bare.busy.toFixed(1)} s`, ratio.busy.toFixed(2))}
${row("peak memory", `${whole(ours.megabytes)} MB`, `${whole(bare.megabytes)} MB`, ratio.megabytes.toFixed(2))}

Yearmark by stage: ${stages(ours)}
bare by stage: ${stages(bare)}
`;
}

function stages(side: Side): string {
  return Object.entries(side.stages)
    .map(([name, seconds]) => `${name} ${seconds.toFixed(1)} s`)
    .join(", ");
}
