import type { Catalog } from "../records/catalog.ts";

export interface NamedPart {
  readonly number: string;
  readonly from: number;
}

/** The part numbers that stand in a text. */
export function partsIn({ parts }: Pick<Catalog, "parts">, text: string): NamedPart[] {
  return [...text.matchAll(/[^\s,;:()]+/g)].flatMap(({ 0: word, index }) => {
    const number = word.replace(/[.!?]+$/, "");
    return parts.has(number) ? [{ number, from: index }] : [];
  });
}
