/**
 * Runs a script in a process of its own and says what it cost: the time from start to end, the time that processors were
 * busy with it, and the memory.
 *
 * Memory is the most that the process ever held (its maximum resident set, which it reports when it ends) and the most
 * that each of its own child processes ever held (Pagefind's indexer is one), added up; processor time likewise. The
 * children's figures are kept by Linux, which is asked several times a second; on other systems they are missing, on
 * both sides of a comparison alike.
 */
import { spawn } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";

export interface Figures {
  /** From start to end. */
  readonly seconds: number;
  /** Of all processors. */
  readonly busy: number;
  readonly megabytes: number;
}

export interface Cost extends Figures {
  readonly output: string;
}

interface Usage {
  readonly kilobytes: number;
  readonly seconds: number;
}

const LOOK_EVERY = 100;
/** Linux counts processor time in hundredths of a second. */
const TICKS = 100;

export async function measure(args: readonly string[]): Promise<Cost> {
  const started = performance.now();
  const child = spawn(process.execPath, ["--import", join(import.meta.dirname, "report-usage.ts"), ...args], {
    stdio: ["ignore", "pipe", "inherit", "pipe"],
  });
  const [output, own] = [child.stdio[1], child.stdio[3]].map(async (stream) => {
    let text = "";
    for await (const piece of stream as NodeJS.ReadableStream) text += piece;
    return text;
  }) as [Promise<string>, Promise<string>];
  const children = new Map<number, Usage>();
  const timer = setInterval(() => lookAtChildren(child.pid as number, children), LOOK_EVERY);
  const [code, signal] = await new Promise<[number | null, NodeJS.Signals | null]>((resolve, reject) => {
    child.once("error", reject);
    child.once("exit", (...end) => resolve(end));
  }).finally(() => clearInterval(timer));
  const seconds = (performance.now() - started) / 1000;
  if (code !== 0) throw new Error(`${args.join(" ")} ended with ${signal ?? code}:\n${await output}`);
  const all: Usage[] = [JSON.parse(await own), ...children.values()];
  const sum = (of: keyof Usage): number => all.reduce((total, usage) => total + usage[of], 0);
  return { seconds, busy: sum("seconds"), megabytes: sum("kilobytes") / 1000, output: await output };
}

/** Notes for every process below this one what it has taken so far. */
function lookAtChildren(pid: number, usages: Map<number, Usage>): void {
  for (const child of read(`/proc/${pid}/task/${pid}/children`).split(" ").filter(Boolean).map(Number)) {
    const peak = /^VmHWM:\s*(\d+) kB$/m.exec(read(`/proc/${child}/status`));
    // Behind the name, which may hold anything: fields 3 and so on; 14 and 15 are the time in the program and for it.
    const fields = read(`/proc/${child}/stat`)
      .replace(/^.*\) /s, "")
      .split(" ");
    if (peak)
      usages.set(child, { kilobytes: Number(peak[1]), seconds: (Number(fields[11]) + Number(fields[12])) / TICKS });
    lookAtChildren(child, usages);
  }
}

/** Nothing where there is no such file: the process has just ended, or the system keeps no such files. */
function read(path: string): string {
  try {
    return readFileSync(path, "utf8");
  } catch {
    return "";
  }
}
