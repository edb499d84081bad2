/**
 * The XML of one sheet of a workbook, made ready for the library that reads it. The library gives up a whole workbook for one cell
 * without a value and tells no formula from what it came to, so before it reads:
 *
 *   a cell with nothing in it                 goes (whole columns are often coloured and nothing else)
 *   a formula with a stored result            stays, and its address is noted
 *   a formula without one, and an error       becomes a text that says so, behind a sign that marks the row as unreadable
 *   a number that is shown as a percentage    becomes the number shown, behind a sign that marks the cell: 0.5 is shown as 50 %
 *
 * What is hidden, and has anything in it, is noted and stays.
 *
 * One pass over the tags, whatever stands between them: a hostile file takes no longer than an honest one.
 */
import { MOST_COLUMNS, MOST_ROWS } from "./limits.ts";
import { isXmlTrue, xmlAttribute } from "./xml-attribute.ts";

/** A sign of no language, in front of what is wrong with a cell. */
export const FAULT = "\uE0F7";
/** Another one, in front of the number of a percentage. */
export const PERCENT = "\uE0F8";

export interface Tamed {
  readonly xml: string;
  /** Addresses of cells with a formula whose stored result is read. */
  readonly formulas: readonly string[];
  /** Addresses of cells that show a percentage. */
  readonly percentages: readonly string[];
  /** Numbers of rows, and letters of columns, with something in them that the program does not show. */
  readonly hiddenRows: readonly string[];
  readonly hiddenColumns: readonly string[];
  /** A filter is set, which hides rows. */
  readonly filtered: boolean;
  /** The sheet is larger than any that a person writes: the address of the first cell beyond. */
  readonly beyond: string | undefined;
}

interface Cell {
  readonly start: number;
  readonly address: string;
  readonly error: boolean;
  /** It holds a number, and shows it as a percentage. */
  readonly percent: boolean;
  formula: boolean;
  value: boolean;
}

const TAG = /<(\/?)(?:\w+:)?(row|col|c|f|v|is)(?=[\s/>])([^<>]*)>/g;

/** `percentStyles` are the numbers of the styles that show percentages. */
export function tameSheet(xml: string, percentStyles: ReadonlySet<string> = new Set()): Tamed {
  const pieces: string[] = [];
  const formulas: string[] = [];
  const percentages: string[] = [];
  const hiddenRows = new Set<string>();
  const hiddenColumns = new Set<string>();
  const covered: (readonly [from: number, to: number])[] = [];
  let rowHidden = false;
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
      rowHidden = !slash && isXmlTrue(xmlAttribute(attributes, "hidden"));
      if (closed) replace(tag.index, end, "");
    } else if (name === "col") {
      if (isXmlTrue(xmlAttribute(attributes, "hidden")))
        covered.push([Number(xmlAttribute(attributes, "min")), Number(xmlAttribute(attributes, "max"))]);
    } else if (name !== "c") {
      if (!cell || slash) continue;
      if (name === "f") cell.formula = true;
      else if (!closed) cell.value = true;
    } else if (closed) replace(tag.index, end, "");
    else if (!slash) cell = openCell(tag.index, attributes, percentStyles);
    else if (cell) {
      const { start, address, error, percent, formula, value } = cell;
      cell = undefined;
      if (error || (formula && !value)) {
        const shown = textBetween(xml.slice(start, end));
        const fault = error
          ? `cell ${address} shows the error ${shown}`
          : `cell ${address} is a formula without a stored result`;
        replace(start, end, `<c r="${address}" t="inlineStr"><is><t>${FAULT}${fault}</t></is></c>`);
      } else if (!value) replace(start, end, "");
      else if (formula) formulas.push(address);
      const amount = percent && value && !error ? numberBetween(xml.slice(start, end)) : undefined;
      if (amount !== undefined) {
        percentages.push(address);
        replace(start, end, `<c r="${address}" t="inlineStr"><is><t>${PERCENT}${timesHundred(amount)}</t></is></c>`);
      }
      if ((value || formula) && (rowHidden || covered.length > 0)) {
        const [letters, row] = partsOf(address);
        const column = numberOf(letters);
        if (rowHidden) hiddenRows.add(row);
        if (covered.some(([from, to]) => from <= column && column <= to)) hiddenColumns.add(letters);
      }
      if ((value || formula) && isBeyond(address)) beyond ??= address;
    }
  }
  return {
    xml: pieces.join("") + xml.slice(kept),
    formulas,
    percentages,
    hiddenRows: [...hiddenRows],
    hiddenColumns: [...hiddenColumns],
    filtered: isXmlTrue(xmlAttribute(/<(?:\w+:)?sheetPr\s([^<>]*)>/.exec(xml)?.[1] ?? "", "filterMode")),
    beyond,
  };
}

function openCell(start: number, attributes: string, percentStyles: ReadonlySet<string>): Cell {
  const address = /\br="([A-Z]{1,3}\d{1,7})"/.exec(attributes)?.[1] ?? "";
  const kind = xmlAttribute(attributes, "t") ?? "n";
  const percent = percentStyles.size > 0 && kind === "n" && percentStyles.has(xmlAttribute(attributes, "s") ?? "0");
  return { start, address, error: kind === "e", percent, formula: false, value: false };
}

function numberBetween(cell: string): number | undefined {
  const said = /<(?:\w+:)?v>\s*([-+.\dEe]{1,40})\s*<\//.exec(cell)?.[1];
  return said === undefined || Number.isNaN(Number(said)) ? undefined : Number(said);
}

/** As many figures as a workbook keeps: 0.07 times a hundred is 7, and not 7.000000000000001. */
function timesHundred(amount: number): number {
  return Number((amount * 100).toPrecision(15));
}

/** What the last value of a cell says, as it stands in the XML: an error's name has no signs to be read otherwise. */
function textBetween(cell: string): string {
  return /<(?:\w+:)?v>([#\w/!?]{1,20})<\//.exec(cell)?.[1] ?? "in it";
}

function isBeyond(address: string): boolean {
  const [letters, row] = partsOf(address);
  return numberOf(letters) > MOST_COLUMNS || Number(row) > MOST_ROWS + 1;
}

function partsOf(address: string): readonly [letters: string, row: string] {
  const [, letters = "", row = "0"] = /^([A-Z]*)(\d*)$/.exec(address) ?? [];
  return [letters, row];
}

function numberOf(letters: string): number {
  return [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
}
