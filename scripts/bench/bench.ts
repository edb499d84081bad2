/** One size of data: generates it, builds it and its bare twin in turn, and takes the medians. */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type BareTwin, makeBareTwin } from "./make-bare-twin.ts";
import { makeFolder } from "./make-folder.ts";
import { type Cost, type Figures, measure } from "./measure.ts";
import { writeFolder } from "./write-folder.ts";

const SCRIPTS = join(import.meta.dirname, "..");

/** Medians of all runs. */
export interface Side extends Figures {
  /** Medians of the seconds of each stage. */
  readonly stages: Readonly<Record<string, number>>;
  readonly runs: readonly Figures[];
}

export interface BenchResult {
  readonly records: number;
  readonly pages: number;
  readonly indexed: number;
  /** Of the pages. */
  readonly megabytes: number;
  readonly ours: Side;
  readonly bare: Side;
  /** Ours by bare. */
  readonly ratio: Figures;
}

export async function bench(records: number, runs: number, note: (line: string) => void): Promise<BenchResult> {
  const home = await mkdtemp(join(tmpdir(), "yearmark-bench-"));
  try {
    const data = join(home, "data");
    await writeFolder(makeFolder(records), data);
    const ours: Cost[] = [];
    const bare: Cost[] = [];
    let twin: BareTwin | undefined;
    // In turn, so that whatever else the machine does falls on both; nothing is removed in between, as that would keep
    // the disk busy while the next one is measured.
    for (let run = 1; run <= runs; run++) {
      const site = join(home, `ours-${run}`, "_site");
      const cost = await measure([join(SCRIPTS, "build.ts"), "--data", data, "--site", site]);
      ours.push(cost);
      twin ??= await makeBareTwin(site, join(home, "twin"));
      const other = await measure([join(SCRIPTS, "bench", "build-bare.ts"), twin.list, join(home, `bare-${run}`)]);
      bare.push(other);
      note(`${records} records, run ${run} of ${runs}: ${inShort(cost)}; bare ${inShort(other)}`);
    }
    const [sideOurs, sideBare] = [sideOf(ours), sideOf(bare)];
    const { pages, indexed, bytes } = twin as BareTwin;
    return {
      records,
      pages,
      indexed,
      megabytes: bytes / 1e6,
      ours: sideOurs,
      bare: sideBare,
      ratio: figures((of) => sideOurs[of] / sideBare[of]),
    };
  } finally {
    await rm(home, { recursive: true, force: true });
  }
}

function inShort({ seconds, megabytes }: Cost): string {
  return `${seconds.toFixed(1)} s, ${megabytes.toFixed(0)} MB`;
}

function sideOf(costs: readonly Cost[]): Side {
  return {
    ...figures((of) => median(costs.map((cost) => cost[of]))),
    stages: mediansOf(costs.map((cost) => stagesIn(cost.output))),
    runs: costs.map((cost) => figures((of) => cost[of])),
  };
}

function figures(value: (of: keyof Figures) => number): Figures {
  return { seconds: value("seconds"), busy: value("busy"), megabytes: value("megabytes") };
}

export function median(numbers: readonly number[]): number {
  const sorted = [...numbers].sort((a, b) => a - b);
  const middle = (sorted.length - 1) / 2;
  return ((sorted[Math.floor(middle)] as number) + (sorted[Math.ceil(middle)] as number)) / 2;
}

/** The stages that a build prints, a line each: name, count where there is one, verb, seconds. */
export function stagesIn(output: string): Map<string, number> {
  const lines = output.matchAll(/^(\S+) +(?:[\d,]+ )?\S+ +(\d+\.\d) s$/gm);
  return new Map([...lines].map((match) => [match[1] as string, Number(match[2])]));
}

function mediansOf(all: readonly Map<string, number>[]): Record<string, number> {
  const names = [...(all[0]?.keys() ?? [])];
  return Object.fromEntries(names.map((name) => [name, median(all.map((stages) => stages.get(name) ?? 0))]));
}
