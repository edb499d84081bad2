/**
 * A trait is a property by which cars differ. Inside the engine its values are whole numbers:
 * the place in a list, no = 0 and yes = 1, the number itself, the day, or a serial with its letter in front.
 */
import type { Ranges } from "./ranges.ts";

export interface TraitValue {
  readonly id: string;
  readonly label: string;
  readonly aliases: readonly string[];
}

/** What part the engine lets a trait play. Everything else it does without knowing what a trait means. */
export type TraitRole = "line" | "year" | "plant" | "sequence" | "date";

interface TraitBase {
  readonly id: string;
  readonly label: string;
  readonly aliases: readonly string[];
  readonly role?: TraitRole | undefined;
  /** How a person finds it on the car. */
  readonly find: string;
  /** 1 a glance; 2 open a door or the hood; 3 crawl under; 4 take something off; 5 take it apart. */
  readonly effort: number;
  /** Words around the values in a sentence, "with the {} engine"; for a yes/no trait the words of yes. */
  readonly phrase: string;
  /** The same where the scope says "not"; for a yes/no trait the words of no. */
  readonly otherwise: string;
  /** The trait whose part of the car it goes with: a number on the block goes with the engine. */
  readonly of?: string | undefined;
  /** It is about the car as it stands today, so what the plant built does not settle it. */
  readonly today: boolean;
}
export interface ListTrait extends TraitBase {
  readonly kind: "list";
  readonly values: readonly TraitValue[];
}
export interface FlagTrait extends TraitBase {
  readonly kind: "flag";
}
export interface WholeTrait extends TraitBase {
  readonly kind: "whole";
  readonly from: number;
  readonly to: number;
}
export interface DateTrait extends TraitBase {
  readonly kind: "date";
  readonly from: string;
  readonly to: string;
}
export interface SerialTrait extends TraitBase {
  readonly kind: "serial";
  readonly prefixes: readonly string[];
  readonly digits: number;
}
export type Trait = ListTrait | FlagTrait | WholeTrait | DateTrait | SerialTrait;

const DAY = 86_400_000;

/** First and last number that a trait's values are counted in. */
export function span(trait: Trait): readonly [number, number] {
  switch (trait.kind) {
    case "list":
      return [0, trait.values.length - 1];
    case "flag":
      return [0, 1];
    case "whole":
      return [trait.from, trait.to];
    case "date":
      return [dayNumber(trait.from) as number, dayNumber(trait.to) as number];
    case "serial":
      return [0, trait.prefixes.length * 10 ** trait.digits - 1];
  }
}

/** The number of a value as typed, or nothing when the trait has no such value. Case and labels are forgiven. */
export function numberOf(trait: Trait, typed: string): number | undefined {
  const text = typed.trim();
  const number = readValue(trait, text);
  if (number === undefined) return undefined;
  const [from, to] = span(trait);
  return from <= number && number <= to ? number : undefined;
}

function readValue(trait: Trait, text: string): number | undefined {
  switch (trait.kind) {
    case "list": {
      const exact = trait.values.findIndex((value) => value.id === text);
      if (exact >= 0) return exact;
      const wanted = text.toLowerCase();
      const named = trait.values.findIndex((value) =>
        [value.id, value.label, ...value.aliases].some((name) => name.toLowerCase() === wanted),
      );
      return named >= 0 ? named : undefined;
    }
    case "flag":
      if (/^(yes|true|1)$/i.test(text)) return 1;
      return /^(no|false|0)$/i.test(text) ? 0 : undefined;
    case "whole":
      return /^-?\d+$/.test(text) ? Number(text) : undefined;
    case "date":
      return dayNumber(text);
    case "serial": {
      const parts = /^([A-Z]*)(\d+)$/i.exec(text);
      const prefix = trait.prefixes.indexOf((parts?.[1] ?? "").toUpperCase());
      if (!parts || prefix < 0 || (parts[2] as string).length > trait.digits) return undefined;
      return prefix * 10 ** trait.digits + Number(parts[2]);
    }
  }
}

/** The value with this number, as an editor writes it. */
export function writtenValue(trait: Trait, number: number): string {
  switch (trait.kind) {
    case "list":
      return trait.values[number]?.id ?? String(number);
    case "flag":
      return number === 1 ? "yes" : "no";
    case "whole":
      return String(number);
    case "date":
      return new Date(number * DAY).toISOString().slice(0, 10);
    case "serial": {
      const prefix = trait.prefixes[Math.floor(number / 10 ** trait.digits)] ?? "";
      return `${prefix}${String(number % 10 ** trait.digits).padStart(trait.digits, "0")}`;
    }
  }
}

/** The numbers around one value between which "before" and "from" make sense: a serial never runs into the next letter. */
export function stretch(trait: Trait, number: number): readonly [number, number] {
  if (trait.kind !== "serial") return span(trait);
  const size = 10 ** trait.digits;
  const start = Math.floor(number / size) * size;
  return [start, start + size - 1];
}

/** The letters that serials within these ranges begin with. */
export function prefixesOf(trait: SerialTrait, values: Ranges): string[] {
  const size = 10 ** trait.digits;
  return trait.prefixes.filter((_, i) => values.some(([from, to]) => from < (i + 1) * size && to >= i * size));
}

/** Days since 1970-01-01 of a calendar date written year-month-day, or nothing when there is no such day. */
export function dayNumber(text: string): number | undefined {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return undefined;
  const time = Date.parse(`${text}T00:00:00Z`);
  if (Number.isNaN(time) || new Date(time).toISOString().slice(0, 10) !== text) return undefined;
  return time / DAY;
}
