/** The bench of interchange in words. */
import { median } from "./bench.ts";
import type { InterchangeResult } from "./interchange.ts";

export function showInterchange({ sizes, bySize }: InterchangeResult): string {
  const milliseconds = (value: number): string => value.toFixed(value < 10 ? 2 : 0).padStart(8);
  const both = (values: readonly number[]): string =>
    values.length === 0 ? "       –" : `${milliseconds(median(values))} (${milliseconds(Math.max(...values)).trim()})`;
  return [
    `Parts in chains of up to 12 with three companions a step, processor slowed down ${sizes.slowdown} times, in ms:`,
    "   parts     open    first   one part (worst)   all retrofits (worst)   ways",
    ...bySize.map(({ parts, times }) =>
      [
        String(parts).padStart(8),
        milliseconds(times.open),
        milliseconds(times.first),
        both(times.mayFit).padEnd(22),
        both(times.retrofits).padEnd(20),
        (times.paths.length === 0 ? "–" : median(times.paths).toFixed(0)).padStart(6),
      ].join(" "),
    ),
    "aims with 10,000 parts: one part < 10, all retrofits of a car < 200",
    `verdicts: ${bySize.map(({ parts, times }) => `${parts}: ${JSON.stringify(times.verdicts)}`).join("; ")}`,
  ].join("\n");
}
