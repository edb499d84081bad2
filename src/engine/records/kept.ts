/** What one reading of a folder leaves for the next, when only some files changed in between. */
import { FITTED, type Space } from "../scope/space.ts";
import type { Catalog, ChangeRecord } from "./catalog.ts";
import type { DataFile, FileKindName } from "./file-kinds.ts";
import type { Systems } from "./resolve/components.ts";

/** Of a reading without errors: what it made of the files that seldom change, and of each record. */
export interface Kept {
  /** What the files of a kind say. The same object means the same file, unchanged. */
  readonly values: ReadonlyMap<FileKindName, readonly unknown[]>;
  readonly space: Space;
  /** How many traits the space had: scopes that ask what is fitted today add to them. */
  readonly traits: number;
  /** What the files say that hold such scopes. */
  readonly asking: readonly unknown[];
  readonly systems: Systems;
  readonly vehicles: Pick<Catalog, "buildable" | "lines" | "years">;
  readonly records: ReadonlyMap<string, ChangeRecord>;
}

/**
 * Whether a new reading gives the same space. The traits "fitted today" stand in it in the order in which scopes first ask for them:
 * so the files that ask must be the same, in the same order, and no other trait may have come in between.
 */
export function isFresh({ space, traits, asking: then }: Kept, asking: readonly unknown[]): boolean {
  return space.traits.length === traits && sameItems(asking, then);
}

export function sameItems(a: readonly unknown[], b: readonly unknown[]): boolean {
  return a.length === b.length && a.every((item, i) => item === b[i]);
}

/** By what a file says: looked through once. */
const looked = new WeakMap<object, boolean>();

/** Anything in the file that looks like such a scope is enough. */
const ASKING = new RegExp(`${FITTED}(\\s|\\\\[nrt])*!?=`);

export function asksWhatIsFitted({ value }: Pick<DataFile, "value">): boolean {
  if (typeof value !== "object" || value === null) return false;
  const known = looked.get(value) ?? ASKING.test(JSON.stringify(value));
  looked.set(value, known);
  return known;
}
