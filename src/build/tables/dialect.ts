/**
 * Which sign stands between the cells of a CSV text, and how its lines end. A first line 'sep=;' says it. Else every usual sign is
 * tried on the first records: the one wins that gives the most records the same number of cells, and more than one.
 */
export interface Dialect {
  readonly delimiter: string;
  readonly lineEnd: string;
  readonly named: boolean;
  /** Where the first record begins. */
  readonly start: number;
}

const DELIMITERS = [",", ";", "\t", "|"];
const LOOKED_AT = 50;

export function dialectOf(text: string, wanted?: string): Dialect {
  const [said = "", sign] = /^"?sep=(.)"?[ \t]*(?:\r\n|\n|\r|$)/i.exec(text) ?? [];
  const start = said.length;
  const lineEnd = /\r\n|\n|\r/.exec(text)?.[0] ?? "\r\n";
  const named = sign !== undefined;
  return { delimiter: wanted ?? sign ?? likeliest(text.slice(start)), lineEnd, named, start };
}

function likeliest(text: string): string {
  let best = { delimiter: ",", same: 0, cells: 1 };
  for (const delimiter of DELIMITERS) {
    const counts = cellCounts(text, delimiter);
    const [cells = 1] = counts;
    const same = counts.filter((count) => count === cells).length / Math.max(1, counts.length);
    if (cells > 1 && (same > best.same || (same === best.same && cells > best.cells)))
      best = { delimiter, same, cells };
  }
  return best.delimiter;
}

/** How many cells each of the first records has; what stands in quotes counts for nothing, and neither do empty lines. */
function cellCounts(text: string, delimiter: string): number[] {
  const counts: number[] = [];
  let [cells, quoted, fresh, empty] = [1, false, true, true];
  for (let at = 0; at < text.length && counts.length < LOOKED_AT; at++) {
    const sign = text[at];
    if (quoted) {
      if (sign === '"') quoted = false;
    } else if (sign === '"' && (fresh || text[at - 1] === '"')) [quoted, empty] = [true, false];
    else if (sign === "\n" || sign === "\r") {
      if (!empty) counts.push(cells);
      [cells, empty] = [1, true];
    } else if (sign === delimiter) [cells, empty] = [cells + 1, false];
    else empty = false;
    fresh = sign === delimiter || sign === "\n" || sign === "\r";
  }
  if (!empty && counts.length < LOOKED_AT) counts.push(cells);
  return counts;
}
