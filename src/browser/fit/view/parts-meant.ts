/** Which parts somebody may mean by a text: by a casting number those that have it, otherwise those that it is like. */
import { askOfMoved } from "../../../engine/answers/moved.ts";
import { partCandidates } from "../../../engine/answers/part-candidates.ts";
import { findPart } from "../../../engine/answers/part-number.ts";
import type { Catalog, Part } from "../../../engine/records/catalog.ts";

export interface PartsMeant {
  readonly as: "casting number" | "likely";
  readonly parts: readonly Part[];
}

/** More than these nobody reads through; a longer text has fewer. */
const MOST = 12;

export function partsMeant(catalog: Catalog, text: string): PartsMeant {
  const found = findPart(catalog, text);
  if (found.as === "casting number") return { as: found.as, parts: found.parts };
  return { as: "likely", parts: partCandidates(catalog, text, MOST) };
}

/** Whether a text is no part number, and was none, so that what it may mean is all that there is to say of it. */
export function isNoNumber(catalog: Catalog, text: string): boolean {
  return findPart(catalog, text).as !== "part number" && askOfMoved(catalog, "part", text.trim()) === undefined;
}
