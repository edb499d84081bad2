import type { CheckCost } from "./check.ts";

export function showCheck(costs: readonly CheckCost[]): string {
  return [
    "records     files   check s   parsed only s   ratio   MB",
    ...costs.map(({ records, files, check, bare }) =>
      [
        String(records).padStart(7),
        String(files).padStart(9),
        check.seconds.toFixed(1).padStart(9),
        bare.seconds.toFixed(1).padStart(15),
        (check.seconds / bare.seconds).toFixed(1).padStart(7),
        check.megabytes.toFixed(0).padStart(6),
      ].join(" "),
    ),
  ].join("\n");
}
