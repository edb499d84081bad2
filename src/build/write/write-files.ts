/** Writes several files of a folder, all or none as far as a file system can do that. */
import {
  chmodSync,
  closeSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmdirSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { basename, dirname, join } from "node:path";
import { isSystemError } from "../is-system-error.ts";
import { beginWriting, endWriting, hashOf, NotWritten, type Step } from "./unfinished.ts";

type Text = string | Uint8Array;

interface Change extends Step {
  /** As the caller calls it. */
  readonly path: string;
  readonly text: Text | undefined;
  readonly old: Text | undefined;
  readonly mode: number | undefined;
}

/**
 * First every text is written beside its place, under a name that begins with a dot and so is no file of the folder: a full disk
 * or a forbidden folder shows here, and nothing has changed yet. Then the names are changed, which takes a moment, and what shall
 * be gone is removed last: whoever pulls the plug in between finds every file whole, and the next command does the rest. Should a
 * name not change (a file is locked), what was changed is changed back.
 *
 * `gone` are the files that go, each with the one that takes its place and its rights. `read` is what the texts were made from: if
 * a file does not say that any more, or one is there that was not, nothing is written. Without `read` what is there is replaced.
 */
export function writeFiles(
  folder: string,
  files: ReadonlyMap<string, Text>,
  gone: ReadonlyMap<string, string> = new Map(),
  read?: ReadonlyMap<string, Text>,
): void {
  if (files.size + gone.size === 0) return;
  const letGo = holdSignals();
  const made: string[] = [];
  try {
    made.push(...makeFolders(folder));
    const changes = changesOf(realpathSync(folder), files, gone, read);
    for (const change of changes) refuseReadOnly(folder, change);
    beginWriting(realpathSync(folder), changes.map(stepOf));
    made.push(...change(folder, changes));
    endWriting(realpathSync(folder));
  } catch (error) {
    for (const empty of made.reverse()) rmdirSync(empty);
    throw error;
  } finally {
    letGo();
  }
}

/** The folders that had to be made. */
function change(folder: string, changes: readonly Change[]): string[] {
  const made: string[] = [];
  const done: Change[] = [];
  try {
    for (const { place, next, text, mode } of changes) {
      if (next === undefined || text === undefined) continue;
      made.push(...makeFolders(dirname(place)));
      writeThrough(next, text, mode);
    }
    for (const change of changes) refuseChanged(folder, change);
    for (const change of changes) {
      take(folder, change);
      done.push(change);
    }
    return made;
  } catch (error) {
    for (const { place, old, mode } of done.reverse())
      if (old === undefined) rmSync(place);
      else writeFileSync(place, old, mode === undefined ? {} : { mode });
    for (const { next } of changes) if (next !== undefined && isFile(next)) rmSync(next);
    for (const empty of made.reverse()) rmdirSync(empty);
    endWriting(realpathSync(folder));
    throw error;
  }
}

let isHeld = false;

/** Ctrl-C takes hold when all is written: everything here is done in one go, so the signal is only heard afterwards. */
function holdSignals(): () => void {
  if (isHeld) return () => {};
  isHeld = true;
  const die = (signal: NodeJS.Signals): void => {
    letGo();
    process.kill(process.pid, signal);
  };
  const letGo = (): void => {
    isHeld = false;
    process.off("SIGINT", die).off("SIGTERM", die);
  };
  process.on("SIGINT", die).on("SIGTERM", die);
  return () => void setImmediate(letGo);
}

function changesOf(
  folder: string,
  files: ReadonlyMap<string, Text>,
  gone: ReadonlyMap<string, string>,
  read: ReadonlyMap<string, Text> | undefined,
): Change[] {
  const heirs = new Map([...gone].map(([path, heir]) => [heir, path]));
  const of = (path: string, text: Text | undefined): Change => {
    // Where a link leads the text goes, and the link stays; a link that goes leaves what it led to.
    const link = join(folder, path);
    const place = text !== undefined && existsSync(link) ? realpathSync(link) : link;
    const old = read ? read.get(path) : existsSync(place) ? readFileSync(place) : undefined;
    const like = existsSync(place) ? place : join(folder, heirs.get(path) ?? path);
    return {
      path,
      place,
      text,
      old,
      mode: statSync(like, { throwIfNoEntry: false })?.mode,
      ...(text === undefined ? {} : { next: nextTo(place), after: hashOf(text) }),
      ...(old === undefined ? {} : { before: hashOf(old) }),
    };
  };
  const going = [...gone.keys()].filter((path) => !files.has(path));
  return [...[...files].map(([path, text]) => of(path, text)), ...going.map((path) => of(path, undefined))];
}

function stepOf({ place, next, before, after }: Change): Step {
  return { place, ...(next && { next }), ...(before && { before }), ...(after && { after }) };
}

/** Of each process another: two that write at the same time do not write into each other's. */
function nextTo(place: string): string {
  return join(dirname(place), `.${basename(place)}.${process.pid}.next`);
}

/** To change names, only the rights of the folder are asked; the file's own would count for nothing. */
function refuseReadOnly(folder: string, { path, place }: Change): void {
  const stats = statSync(place, { throwIfNoEntry: false });
  if (stats?.isFile() && (stats.mode & 0o222) === 0)
    throw new NotWritten(`${join(folder, path)} is read-only: allow writing it, and run the command again`);
}

function refuseChanged(folder: string, { path, place, before }: Change): void {
  const now = existsSync(place) ? hashOf(readFileSync(place)) : undefined;
  if (now === before) return;
  if (before === undefined) throw isThere(folder, path);
  throw new NotWritten(`${join(folder, path)} was changed meanwhile: run the command again`);
}

function isThere(folder: string, path: string): NotWritten {
  return new NotWritten(
    `${join(folder, path)} is there already: it was written a moment ago, or is a link that is not read`,
  );
}

/** A new file first takes its name, which only one can do and which no link keeps: so it replaces nothing. */
function take(folder: string, { path, place, next, before }: Change): void {
  if (next === undefined) {
    rmSync(place);
    return;
  }
  if (before === undefined) {
    try {
      closeSync(openSync(place, "wx"));
    } catch (error) {
      if (isSystemError(error) && error.code === "EEXIST") throw isThere(folder, path);
      throw error;
    }
  }
  try {
    renameSync(next, place);
  } catch (error) {
    if (before === undefined) rmSync(place);
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
function writeThrough(next: string, text: Text, mode: number | undefined): void {
  const file = openSync(next, "w");
  try {
    writeFileSync(file, text);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
  if (mode !== undefined) chmodSync(next, mode);
}
