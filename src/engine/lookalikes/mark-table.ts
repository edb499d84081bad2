/** Parts and what they show, as a table: a row a part, a column a mark. What is not on record stays empty. */
import Fraction from "fraction.js";
import type { Feature, Part } from "../records/catalog.ts";

/** A measure in the unit of its mark, or a word. Counts are words too: whether they are the same is all that matters. */
export type Value = string | Fraction;

export interface Mark {
  readonly id: string;
  readonly effort: number;
  /** Painted and printed marks wear off: that one is missing proves nothing. */
  readonly wearsOff: boolean;
  /** The value that stands for "nothing there". */
  readonly absent: string;
  /** Set for measured marks: two measures no further apart than this are the same to a workshop's tool. */
  readonly tolerance: Fraction | undefined;
}

export interface Row {
  readonly number: string;
  readonly marks: ReadonlyMap<string, Value>;
}

export interface MarkTable {
  /** In the order of the data: easiest first. */
  readonly marks: readonly Mark[];
  readonly parts: readonly Row[];
}

/** The table of some parts of one component. */
export function markTable(parts: readonly Part[]): MarkTable {
  const features = parts[0]?.features ?? [];
  return {
    marks: features.map(markOf),
    parts: parts.map((part) => ({
      number: part.number,
      marks: new Map(
        features.flatMap((feature): [string, Value][] => {
          const stated = part.marks[feature.id];
          return stated === undefined ? [] : [[feature.id, statedValue(feature, stated)]];
        }),
      ),
    })),
  };
}

export function markOf({ id, effort, made, absent, tolerance }: Feature): Mark {
  return {
    id,
    effort,
    wearsOff: made === "painted" || made === "printed",
    absent: absent ?? (made === "counted" ? "0" : "none"),
    tolerance: made === "measured" ? exact(tolerance ?? 0) : undefined,
  };
}

/** What is stated of one part. A count of none is a count of 0. */
export function statedValue({ made }: Pick<Feature, "made">, stated: string | number): Value {
  if (made === "measured" && typeof stated === "number") return exact(stated);
  return made === "counted" && stated === "none" ? "0" : String(stated);
}

/** The decimal number as it was written: 0.1 is a tenth, not the nearest thing to it that a computer holds. */
function exact(written: number): Fraction {
  return new Fraction(String(written));
}
