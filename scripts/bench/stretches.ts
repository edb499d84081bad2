/** What follows what at one place of one family of lines, and on which cars each holds: no car twice, none left out. */

/** From when a change holds: the start of a model year, or at one plant a sequence number within it. */
export interface Point {
  readonly year: number;
  readonly sequence: number | undefined;
}

/**
 * The scope between two points, as an editor writes it. A running change holds at its own plant from the number on; at
 * the other plants from the start of the next model year.
 *
 *   from 1963 number 24501 at N, until the start of 1966      line=D,W; at=N1963#24501+; my<=1965 || line=D,W; plant!=N; my=1964-1965
 */
export function stretch(
  lines: readonly string[],
  plant: string,
  from: Point | undefined,
  until: Point | undefined,
): string {
  const line = `line=${lines.join()}`;
  if (from?.sequence === undefined && until?.sequence === undefined)
    return clauses(line, years(from?.year, until && until.year - 1)) as string;
  const here = clauses(
    line,
    from?.sequence === undefined ? "" : `at=${plant}${from.year}#${from.sequence}+`,
    until?.sequence === undefined ? "" : `at=${plant}${until.year}#${until.sequence}-`,
    years(
      from?.sequence === undefined ? from?.year : undefined,
      until && until.sequence === undefined ? until.year - 1 : undefined,
    ),
  );
  const first = from && (from.sequence === undefined ? from.year : from.year + 1);
  const last = until && (until.sequence === undefined ? until.year - 1 : until.year);
  const elsewhere =
    first !== undefined && last !== undefined && first > last
      ? []
      : [clauses(line, `plant!=${plant}`, years(first, last))];
  return [here, ...elsewhere].join(" || ");
}

function clauses(...parts: string[]): string {
  return parts.filter(Boolean).join("; ");
}

function years(first: number | undefined, last: number | undefined): string {
  if (first === undefined) return last === undefined ? "" : `my<=${last}`;
  if (last === undefined) return `my>=${first}`;
  return first === last ? `my=${first}` : `my=${first}-${last}`;
}
