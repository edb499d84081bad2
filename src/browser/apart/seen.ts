/** What was seen, as the address holds it and as the engine reads it: "grooves=2; letter=not seen". */

/** A mark's id and what was seen of it. */
export type Pair = readonly [mark: string, value: string];

/** A value may hold a semicolon: a new mark begins only where a name and a '=' follow. */
export function readSeenText(text: string | undefined): Pair[] {
  const pieces = (text ?? "").split(/;\s*(?=[\w-]+\s*=)/);
  return pieces.flatMap((piece): Pair[] => {
    const at = piece.indexOf("=");
    if (piece.trim() === "") return [];
    return at < 0 ? [[piece.trim(), ""]] : [[piece.slice(0, at).trim(), piece.slice(at + 1).trim()]];
  });
}

/** Nothing where nothing was seen, so that the address holds no empty name. */
export function writeSeen(pairs: readonly Pair[]): { seen?: string } {
  return pairs.length > 0 ? { seen: pairs.map((pair) => pair.join("=")).join("; ") } : {};
}

/** A mark looked at again counts anew, in its old place. */
export function withSeen(pairs: readonly Pair[], [mark, value]: Pair): Pair[] {
  const isKnown = pairs.some((pair) => pair[0] === mark);
  return isKnown ? pairs.map((pair) => (pair[0] === mark ? [mark, value] : pair)) : [...pairs, [mark, value]];
}

export function withoutSeen(pairs: readonly Pair[], mark: string): Pair[] {
  return pairs.filter((pair) => pair[0] !== mark);
}
