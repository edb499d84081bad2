/**
 * What a command is about to write stands in a hidden file of the folder until all of it is written. So no two write at the same
 * time, and what was cut off (a kill, a power cut) is mended by the next command that writes.
 */
import { createHash } from "node:crypto";
import { existsSync, readFileSync, realpathSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { hostname } from "node:os";
import { join, relative, resolve } from "node:path";
import { isSystemError } from "../is-system-error.ts";

/** What could not be written for a reason that a person can mend. */
export class NotWritten extends Error {}

export interface Step {
  readonly place: string;
  /** Where the new text lies ready; without it the file goes. */
  readonly next?: string;
  /** Of what lies there before and afterwards; without it no file does. */
  readonly before?: string;
  readonly after?: string;
}

interface Journal {
  readonly pid: number;
  readonly host: string;
  readonly steps: readonly Step[];
}

const NAME = ".yearmark-writing";
/** In milliseconds: how long another command may take, how often it is looked whether it is done, and after what time it surely does not work any more. */
const PATIENCE = 5_000;
const PAUSE = 20;
const ABANDONED = 600_000;

/** `patience`, in milliseconds: how long another command is waited for. */
export function beginWriting(folder: string, steps: readonly Step[], patience = PATIENCE): void {
  const places = steps.map((step) => withPlaces(step, (path) => relative(folder, path)));
  const journal: Journal = { pid: process.pid, host: hostname(), steps: places };
  for (let waited = 0; ; waited += PAUSE) {
    finishWriting(folder);
    try {
      writeFileSync(join(folder, NAME), JSON.stringify(journal), { flag: "wx" });
      return;
    } catch (error) {
      if (!isSystemError(error) || error.code !== "EEXIST") throw error;
    }
    if (waited >= patience)
      throw new NotWritten(`another command is writing into ${folder}: run this one again when it is done`);
    Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, PAUSE);
  }
}

export function endWriting(folder: string): void {
  rmSync(join(folder, NAME), { force: true });
}

/**
 * If nothing is under way, or the command that writes is alive   nothing is done
 * else if it had changed nothing yet                             what it had made ready is thrown away
 * else if nobody changed what it still had to change             the rest is done: true
 * else                                                           a person has to say what those files should be
 */
export function finishWriting(folder: string): boolean {
  if (!existsSync(join(folder, NAME))) return false;
  // Places beside the folder are told from where it really lies.
  const root = realpathSync(folder);
  const file = join(root, NAME);
  const text = textOf(file);
  if (text === undefined) return false;
  const journal = parsed(text);
  if (!isDead(journal, file)) return false;
  const steps = (journal?.steps ?? []).map((step) => withPlaces(step, (path) => resolve(root, path)));
  const states = steps.map(stateOf);
  const begun = states.includes("done") && !states.includes("not ready");
  const open = steps.filter((_, i) => states[i] === "open");
  const torn = steps.filter((_, i) => states[i] === "torn");
  if (begun && torn.length > 0) throw new NotWritten(torn.map((step) => tornText(step, file)).join("\n"));
  if (begun)
    for (const { place, next } of open)
      if (next === undefined) rmSync(place);
      else renameSync(next, place);
  for (const { place, next, before } of steps) {
    if (next !== undefined) rmSync(next, { force: true });
    // Its name was taken, but it was not put there.
    if (!begun && before === undefined && isEmpty(place)) rmSync(place);
  }
  if (textOf(file) === text) rmSync(file);
  return begun;
}

export function hashOf(bytes: string | Uint8Array): string {
  return createHash("sha256").update(bytes).digest("hex");
}

function withPlaces(step: Step, place: (path: string) => string): Step {
  return { ...step, place: place(step.place), ...(step.next === undefined ? {} : { next: place(step.next) }) };
}

function textOf(file: string): string | undefined {
  try {
    return readFileSync(file, "utf8");
  } catch (error) {
    if (isSystemError(error) && error.code === "ENOENT") return undefined;
    throw error;
  }
}

function parsed(text: string): Journal | undefined {
  try {
    return JSON.parse(text) as Journal;
  } catch {
    return undefined;
  }
}

/** One that was only half written down had begun nothing. */
function isDead(journal: Journal | undefined, file: string): boolean {
  const age = Date.now() - (statSync(file, { throwIfNoEntry: false })?.mtimeMs ?? Date.now());
  if (age > ABANDONED) return true;
  if (!journal) return age > PATIENCE / 2;
  if (journal.host !== hostname()) return false;
  try {
    process.kill(journal.pid, 0);
    return false;
  } catch (error) {
    return isSystemError(error) && error.code === "ESRCH";
  }
}

/** 'torn': somebody changed the file after the command died; what he wrote and what it wanted to write are two texts now. */
function stateOf({ place, next, before, after }: Step): "done" | "open" | "not ready" | "torn" | "same" {
  const now = existsSync(place) ? hashOf(readFileSync(place)) : undefined;
  if (now === after) return before === after ? "same" : "done";
  if (now !== before && !(before === undefined && isEmpty(place)))
    return next === undefined || existsSync(next) ? "torn" : "done";
  return next === undefined || (existsSync(next) && hashOf(readFileSync(next)) === after) ? "open" : "not ready";
}

function isEmpty(place: string): boolean {
  return statSync(place, { throwIfNoEntry: false })?.size === 0;
}

function tornText({ place, next }: Step, file: string): string {
  const what =
    next === undefined
      ? `${place} should have gone, and was changed since: bring what is new in it to where it belongs, and delete it`
      : `${place} was changed since: bring what ${next} says into it, and delete ${next}`;
  return `a command was killed while it wrote (${file}). ${what}; then run the command again`;
}
