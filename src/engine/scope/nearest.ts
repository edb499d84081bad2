import { closest, distance } from "fastest-levenshtein";

/** The known name that a mistyped one most likely meant; nothing when none is near enough to be a slip. */
export function nearest(typed: string, known: readonly string[]): string | undefined {
  if (known.length === 0) return undefined;
  const best = closest(
    typed.toLowerCase(),
    known.map((name) => name.toLowerCase()),
  );
  const slips = distance(typed.toLowerCase(), best);
  if (slips > Math.max(1, Math.floor(typed.length / 3))) return undefined;
  return known.find((name) => name.toLowerCase() === best);
}
