/**
 * Numbers in a question that name something: part numbers, casting numbers, record and bulletin ids, however they are written.
 *
 * They are too many to come with the vocabulary, so a page loads only those that begin like what was typed. What counts
 * is the number without signs; where no number is that, the usual misreadings (O for 0, I or L for 1) are forgiven, and then a
 * missing last letter: a number of a pair without its hand is either hand. Numbers of fewer than four signs are read by stricter rules
 * (short-numbers.ts).
 */
import type { Catalog } from "../records/catalog.ts";

export interface Numbered {
  readonly kind: "record" | "part" | "bulletin";
  /** The number as the records write it. */
  readonly id: string;
  /** What was meant by it, where it is no number of the thing itself: a casting number stands on a part. */
  readonly as?: "casting number" | "moved";
  readonly components: readonly string[];
  readonly systems: readonly string[];
}

/** By plain number. */
export type Numbers = ReadonlyMap<string, readonly Numbered[]>;

/** How many words a number may be written in. */
export const MOST_WORDS = 3;

export function numbersOf(catalog: Catalog): Numbers {
  const all = new Map<string, Numbered[]>();
  const add = (number: string, one: Numbered): void => {
    const key = plainNumber(number);
    if (key !== "") all.set(key, [...(all.get(key) ?? []), one]);
  };
  for (const { id, components, systems } of catalog.records.values())
    add(id, { kind: "record", id, components: components.map((it) => it.id), systems });
  for (const id of catalog.bulletins.keys()) add(id, { kind: "bulletin", id, components: [], systems: [] });
  for (const part of catalog.parts.values()) {
    const system = catalog.components.get(part.component)?.system;
    const one = {
      kind: "part" as const,
      id: part.number,
      components: [part.component],
      systems: system === undefined ? [] : [system],
    };
    add(part.number, one);
    for (const casting of part.castings) add(casting, { ...one, as: "casting number" });
  }
  for (const move of catalog.moved)
    if (move.to !== undefined && (move.kind === "part" || move.kind === "record")) {
      const there = all.get(plainNumber(move.to))?.find((it) => it.kind === move.kind);
      if (there) add(move.from, { ...there, as: "moved" });
    }
  return all;
}

/** The number without spaces and signs, in capitals. */
export function plainNumber(text: string): string {
  return text
    .normalize("NFKD")
    .toUpperCase()
    .replaceAll(/[^\p{Letter}\p{Number}]/gu, "");
}

/** What numbers that may be meant have in common at their beginning; numbers are kept together by it. */
export function shelfOf(plain: string): string {
  return misread(plain).slice(0, 2);
}

/** The runs of words that may be written numbers: each with a digit, none of them a long word. Longest first from each place. */
export function runsAt(words: readonly string[], at: number): { plain: string; length: number }[] {
  const runs: { plain: string; length: number }[] = [];
  for (let length = Math.min(MOST_WORDS, words.length - at); length > 0; length--) {
    const some = words.slice(at, at + length);
    const plain = plainNumber(some.join(""));
    if (plain.length < 4 || plain.length > 24 || !/\d/.test(plain)) continue;
    if (some.every((word) => /\d/.test(word) || plainNumber(word).length <= 2)) runs.push({ plain, length });
  }
  return runs;
}

/** What a plain number names; nothing where no number is written so. */
export function findNumber(numbers: Numbers, plain: string): readonly Numbered[] {
  const exact = numbers.get(plain);
  if (exact) return exact;
  const read = [...numbers].filter(([number]) => misread(number) === misread(plain));
  if (read.length > 0) return read.flatMap(([, found]) => found);
  if (!/\d$/.test(plain)) return [];
  return [...numbers]
    .filter(([number]) => /^[A-Z]$/.test(number.slice(plain.length)) && number.startsWith(plain))
    .flatMap(([, found]) => found);
}

function misread(plain: string): string {
  return plain.replaceAll("O", "0").replaceAll(/[IL]/g, "1");
}
