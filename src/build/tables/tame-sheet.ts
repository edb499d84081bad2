/**
 * The XML of one sheet of a workbook, made ready for the library that reads it. The library gives up a whole workbook for one cell
 * without a value and tells no formula from what it came to, so before it reads:
 *
 *   a cell with nothing in it                 goes (whole columns are often coloured and nothing else)
 *   a formula with a stored result            stays, and its address is noted
 *   a formula without one, and an error       becomes a text that says so, behind a sign that marks the row as unreadable
 *
 * One pass over the tags, whatever stands between them: a hostile file takes no longer than an honest one.
 */
import { MOST_COLUMNS, MOST_ROWS } from "./limits.ts";

/** A sign of no language, in front of what is wrong with a cell. */
export const FAULT = "\uE0F7";

export interface Tamed {
  readonly xml: string;
  /** Addresses of cells with a formula whose stored result is read. */
  readonly formulas: readonly string[];
  /** The sheet is larger than any that a person writes: the address of the first cell beyond. */
  readonly beyond: string | undefined;
}

interface Cell {
  readonly start: number;
  readonly address: string;
  readonly error: boolean;
  formula: boolean;
  value: boolean;
}

const TAG = /<(\/?)(?:\w+:)?(row|c|f|v|is)(?=[\s/>])([^<>]*)>/g;

export function tameSheet(xml: string): Tamed {
  const pieces: string[] = [];
  const formulas: string[] = [];
  let beyond: string | undefined;
  let cell: Cell | undefined;
  let kept = 0; // everything before is in the pieces
  const replace = (from: number, to: number, by: string): void => {
    pieces.push(xml.slice(kept, from), by);
    kept = to;
  };
  for (const tag of xml.matchAll(TAG)) {
    const [whole, slash, name, attributes = ""] = tag;
    const end = tag.index + whole.length;
    const closed = attributes.endsWith("/");
    if (name === "row") {
      if (closed) replace(tag.index, end, "");
    } else if (name !== "c") {
      if (!cell || slash) continue;
      if (name === "f") cell.formula = true;
      else if (!closed) cell.value = true;
    } else if (closed) replace(tag.index, end, "");
    else if (!slash) cell = openCell(tag.index, attributes);
    else if (cell) {
      const { start, address, error, formula, value } = cell;
      cell = undefined;
      if (error || (formula && !value)) {
        const shown = textBetween(xml.slice(start, end));
        const fault = error
          ? `cell ${address} shows the error ${shown}`
          : `cell ${address} is a formula without a stored result`;
        replace(start, end, `<c r="${address}" t="inlineStr"><is><t>${FAULT}${fault}</t></is></c>`);
      } else if (!value) replace(start, end, "");
      else if (formula) formulas.push(address);
      if ((value || formula) && isBeyond(address)) beyond ??= address;
    }
  }
  return { xml: pieces.join("") + xml.slice(kept), formulas, beyond };
}

function openCell(start: number, attributes: string): Cell {
  const address = /\br="([A-Z]{1,3}\d{1,7})"/.exec(attributes)?.[1] ?? "";
  return { start, address, error: /\bt="e"/.test(attributes), formula: false, value: false };
}

/** What the last value of a cell says, as it stands in the XML: an error's name has no signs to be read otherwise. */
function textBetween(cell: string): string {
  return /<(?:\w+:)?v>([#\w/!?]{1,20})<\//.exec(cell)?.[1] ?? "in it";
}

function isBeyond(address: string): boolean {
  const [, letters = "", row = "0"] = /^([A-Z]*)(\d*)$/.exec(address) ?? [];
  const column = [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
  return column > MOST_COLUMNS || Number(row) > MOST_ROWS + 1;
}
