/** The result of the scopes' bench as text: what a car takes, what setting up takes, and what single questions take. */
import { loadavg } from "node:os";
import type { ScopesResult } from "./scopes.ts";

export function showScopes(result: ScopesResult): string {
  const { sizes, setUp, levels } = result;
  const whole = (number: number): string => Math.round(number).toLocaleString("en");
  const row = (...cells: string[]): string =>
    cells.map((cell, i) => (i === 0 ? cell.padEnd(20) : cell.padStart(12))).join("");
  const names = { sets: "reading the scopes", sweep: "Yearmark's sweep", loop: "loop", package: "rule engine" };
  return `
${whole(sizes.scopes)} scopes, ${whole(sizes.rows)} rows of built cars; Node ${process.versions.node}, load ${(loadavg()[0] as number).toFixed(1)}
medians of ${sizes.carsPerLevel} cars and ${sizes.runs} runs in turn; the loop knows all of every car

${row("known of the car", "Yearmark", "loop", "ratio", "least", "most", "open")}
${levels
  .map(({ known, ours, loop, ratio, verdicts }) =>
    row(
      known,
      `${ours.toFixed(1)} ms`,
      `${loop.toFixed(1)} ms`,
      ...[ratio.median, ratio.least, ratio.most].map((number) => number.toFixed(1)),
      whole(verdicts.open),
    ),
  )
  .join("\n")}

to the loop, cars known in part: ${result.toLoop.toFixed(1)} times as long (aim: at most 3)
to the rule engine: ${whole(result.toPackage)} times as fast (aim: at least 20); it takes ${whole(result.packageMilliseconds)} ms, measured with ${whole(Math.min(sizes.scopes, sizes.packageScopes))} scopes and scaled
${whole(result.compared)} verdicts compared, ${whole(result.differed)} differ

${row("setting up", "time", "memory")}
${Object.entries(setUp)
  .map(([name, { milliseconds, megabytes }]) =>
    row(names[name as keyof typeof names], `${whole(milliseconds)} ms`, `${whole(megabytes)} MB`),
  )
  .join("\n")}

${row("one question", "median", "p95", "asked")}
${Object.entries(result.single)
  .map(([name, times]) => row(name, `${times.median.toFixed(1)} µs`, `${times.p95.toFixed(1)} µs`, whole(times.asked)))
  .join("\n")}
`;
}
