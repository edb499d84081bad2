/** The entries of one list, found again by all that they say, or by their identity: thousands of rows do not each look at thousands. */
import { isDeepStrictEqual } from "node:util";
import { isFields } from "../write/without-defaults.ts";
import type { Table } from "./table.ts";

export type Fields = Record<string, unknown>;

export class EntryIndex {
  readonly #table: Table;
  readonly #whole = new Map<string, unknown>();
  readonly #alike = new Map<string, number[]>();

  constructor(table: Table, entries: readonly unknown[]) {
    this.#table = table;
    entries.forEach((entry, i) => {
      this.learn(entry, i);
    });
  }

  learn(entry: unknown, at: number): void {
    const whole = this.#wholeOf(entry);
    if (!this.#whole.has(whole)) this.#whole.set(whole, entry);
    const identity = this.#identityOf(entry);
    if (identity === undefined) return;
    const places = this.#alike.get(identity) ?? [];
    if (!places.includes(at)) this.#alike.set(identity, [...places, at]);
  }

  /** Before an entry is changed. Its identity stays. */
  forget(entry: unknown): void {
    const whole = this.#wholeOf(entry);
    if (this.#whole.get(whole) === entry) this.#whole.delete(whole);
  }

  /** The entry that says all that this one says, and nothing else that a row could say. */
  same(entry: unknown): unknown {
    return this.#whole.get(this.#wholeOf(entry));
  }

  /** The places of the entries that speak of the same thing. */
  alike(entry: unknown): readonly number[] {
    return this.#alike.get(this.#identityOf(entry) ?? "") ?? [];
  }

  #wholeOf(entry: unknown): string {
    const { rows, columns } = this.#table;
    if (rows === "texts" || !isFields(entry)) return key([entry]);
    return key(columns.map((column) => valueAt(entry, column.path) ?? column.fallback));
  }

  /** An entry that says nothing of what identifies it has no identity. */
  #identityOf(entry: unknown): string | undefined {
    const { identity } = this.#table;
    if (!isFields(entry) || identity.every((name) => entry[name] === undefined)) return undefined;
    return key(identity.map((name) => entry[name]));
  }
}

/** A text in a file may have blanks round it, which no shape keeps. */
export function agree(a: unknown, b: unknown): boolean {
  if (typeof a === "string" && typeof b === "string") return a.trim() === b.trim();
  if (Array.isArray(a) && Array.isArray(b)) return a.length === b.length && a.every((one, i) => agree(one, b[i]));
  return isDeepStrictEqual(a, b);
}

export function valueAt(value: unknown, path: readonly (string | number)[]): unknown {
  return path.reduce<unknown>(
    (at, step) =>
      isFields(at) && Object.hasOwn(at, step) ? at[step] : Array.isArray(at) ? at[Number(step)] : undefined,
    value,
  );
}

function key(values: readonly unknown[]): string {
  return JSON.stringify(
    values.map((value) => value ?? null),
    (_, value) => (typeof value === "string" ? value.trim() : value),
  );
}
