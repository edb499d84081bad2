import type { ScopeSlip } from "./read-scope.ts";
import type { Clause, Scope } from "./scope.ts";

/**
 * Clauses of one alternative that no car can meet together, because they ask one trait for values that have none in common:
 * "line=Y; line=T". Whoever writes so means cars of either.
 */
export function contradictions({ text, alternatives }: Scope): ScopeSlip[] {
  const slips: ScopeSlip[] = [];
  let from = 0;
  text.split("||").forEach((part, i) => {
    const clauses = alternatives[i] ?? [];
    const pieces: { readonly text: string; readonly from: number }[] = [];
    for (const piece of part.split(";")) {
      pieces.push({ text: piece.trim(), from: from + piece.search(/\S|$/) });
      from += piece.length + ";".length;
    }
    from += "||".length - ";".length;
    clauses.forEach((clause, j) => {
      const other = clauses.findIndex((one, k) => k < j && excludes(one, clause));
      const [before, piece] = [pieces[other], pieces[j]];
      if (!before || !piece) return;
      slips.push({
        from: piece.from,
        to: piece.from + piece.text.length,
        message: `no car has '${before.text}' and '${piece.text}' at once`,
        hint: `write ${before.text},${piece.text.slice(piece.text.indexOf("=") + 1).trim()} for cars of either`,
      });
    });
  });
  return slips;
}

function excludes(one: Clause, other: Clause): boolean {
  if (one.type !== "values" || other.type !== "values" || one.trait !== other.trait) return false;
  if (one.written !== "one of" || other.written !== "one of") return false;
  return one.values.every(([from, to]) => other.values.every(([first, last]) => last < from || first > to));
}
