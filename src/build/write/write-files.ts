/** Writes several files of a folder, all or none as far as a file system can do that. */
import {
  chmodSync,
  closeSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readFileSync,
  renameSync,
  rmdirSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { basename, dirname, join } from "node:path";

interface Step {
  readonly place: string;
  /** Where the new text lies ready; without it the file goes. */
  readonly next: string | undefined;
  readonly before: Buffer | undefined;
}

/**
 * First every text is written beside its place, under a name that begins with a dot and so is no file of the folder: a full disk
 * or a forbidden folder shows here, and nothing has changed yet. Then the names are changed, which takes a moment, and what shall
 * be gone is removed last: whoever pulls the plug in between finds every file whole. Should a name not change (a file is locked),
 * what was changed is changed back.
 */
export function writeFiles(
  folder: string,
  files: ReadonlyMap<string, string | Uint8Array>,
  gone: readonly string[] = [],
): void {
  const steps: Step[] = [];
  const made: string[] = [];
  const done: Step[] = [];
  try {
    for (const [path, text] of files) {
      const place = join(folder, path);
      made.push(...makeFolders(dirname(place)));
      const next = join(dirname(place), `.${basename(place)}.next`);
      steps.push({ place, next, before: existsSync(place) ? readFileSync(place) : undefined });
      writeThrough(next, text, place);
    }
    for (const path of gone) {
      const place = join(folder, path);
      if (!files.has(path)) steps.push({ place, next: undefined, before: readFileSync(place) });
    }
    for (const step of steps) {
      if (step.next === undefined) rmSync(step.place);
      else renameSync(step.next, step.place);
      done.push(step);
    }
  } catch (error) {
    for (const { place, before } of done.reverse()) {
      if (before === undefined) rmSync(place);
      else writeFileSync(place, before);
    }
    for (const { next } of steps) if (next !== undefined && isFile(next)) rmSync(next);
    for (const empty of made.reverse()) rmdirSync(empty);
    throw error;
  }
}

function isFile(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isFile() ?? false;
}

/** The folders that had to be made, outermost first. */
function makeFolders(folder: string): string[] {
  if (existsSync(folder)) return [];
  const above = makeFolders(dirname(folder));
  mkdirSync(folder);
  return [...above, folder];
}

/** On the disk, not only on its way there; with the rights of the file that it will replace. */
function writeThrough(next: string, text: string | Uint8Array, place: string): void {
  const file = openSync(next, "w");
  try {
    writeFileSync(file, text);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
  if (existsSync(place)) chmodSync(next, statSync(place).mode);
}
