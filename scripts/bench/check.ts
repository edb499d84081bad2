/** How long the check of a data folder takes, beside the least that it has to do: its files read and parsed. */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { median } from "./bench.ts";
import { makeFolder } from "./make-folder.ts";
import { type Figures, measure } from "./measure.ts";
import { writeFolder } from "./write-folder.ts";

export const CHECK_SIZES = [1_000, 10_000];
const RUNS = 3;
const SCRIPTS = join(import.meta.dirname, "..");

export interface CheckCost {
  readonly records: number;
  readonly files: number;
  readonly check: Figures;
  readonly bare: Figures;
}

export async function benchCheck(sizes: readonly number[], note: (line: string) => void): Promise<CheckCost[]> {
  const costs: CheckCost[] = [];
  for (const records of sizes) {
    const home = await mkdtemp(join(tmpdir(), "yearmark-bench-check-"));
    try {
      const folder = makeFolder(records);
      await writeFolder(folder, home);
      const runs: { check: Figures; bare: Figures }[] = [];
      // In turn, so that whatever else the machine does falls on both.
      for (let run = 1; run <= RUNS; run++) {
        const check = await measure([join(SCRIPTS, "check.ts"), "--data", home]);
        const bare = await measure([join(SCRIPTS, "bench", "check-bare.ts"), home]);
        runs.push({ check, bare });
        note(
          `${records} records, run ${run} of ${RUNS}: ${check.seconds.toFixed(1)} s; bare ${bare.seconds.toFixed(1)} s`,
        );
      }
      costs.push({
        records,
        files: folder.size,
        check: medians(runs.map((it) => it.check)),
        bare: medians(runs.map((it) => it.bare)),
      });
    } finally {
      await rm(home, { recursive: true, force: true });
    }
  }
  return costs;
}

function medians(all: readonly Figures[]): Figures {
  const of = (name: keyof Figures): number => median(all.map((it) => it[name]));
  return { seconds: of("seconds"), busy: of("busy"), megabytes: of("megabytes") };
}
