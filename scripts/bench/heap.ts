/** How much memory something takes that is made here and kept: what is in use afterwards less what was in use before. */
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";

setFlagsFromString("--expose-gc");
const collect: () => void = runInNewContext("gc");

export interface Made<T> {
  readonly made: T;
  readonly milliseconds: number;
  readonly megabytes: number;
}

export function make<T>(work: () => T): Made<T> {
  const before = inUse();
  const start = performance.now();
  const made = work();
  const milliseconds = performance.now() - start;
  return { made, milliseconds, megabytes: Math.max(0, inUse() - before) / 1e6 };
}

function inUse(): number {
  collect();
  const { heapUsed, arrayBuffers } = process.memoryUsage();
  return heapUsed + arrayBuffers;
}
