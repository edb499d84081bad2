/**
 * How the columns of each sheet are read: by the mapping file, or by a proposal where that does not speak of the sheet. A header that
 * is the name of a column needs no mapping; everything guessed, and everything that would go nowhere, has to be settled by a person.
 */
import { nearest } from "../../engine/scope/nearest.ts";
import { cellTexts, mappingFaults, type Sheet } from "./import-rows.ts";
import type { Mappings, SheetMapping } from "./mapping.ts";
import { type Proposal, propose } from "./propose.ts";
import { counted } from "./show-plan.ts";

export interface Mapped {
  readonly sheet: Sheet;
  readonly mapping: SheetMapping;
  /** There was no mapping for it, so it was proposed. */
  readonly proposal: Proposal | undefined;
}

export interface MappedSheets {
  readonly mapped: readonly Mapped[];
  /** Sheets of which no header means anything. */
  readonly strange: readonly Sheet[];
  /** What has to be settled before anything is written, a sentence each. */
  readonly open: readonly string[];
  /** What a person may want to know, and nothing depends on. */
  readonly notes: readonly string[];
}

export function mapSheets(sheets: readonly Sheet[], mappings: Mappings): MappedSheets {
  const mapped: Mapped[] = [];
  const strange: Sheet[] = [];
  const open: string[] = [];
  const notes: string[] = [];
  for (const sheet of sheets) {
    const { name } = sheet.grid;
    const mapping = mappings.sheets.find((one) => one.sheet === name);
    const proposal = mapping ? undefined : propose(sheet);
    const used = mapping ?? proposal?.mapping;
    const said = (what: string): string => `'${name}': ${what}`;
    if (!used) {
      strange.push(sheet);
      open.push(said("no header means a column of any table; a mapping file may leave the sheet out"));
      continue;
    }
    mapped.push({ sheet, mapping: used, proposal });
    open.push(...(proposal?.guesses ?? []).map((guess) => said(`guessed: ${guess}`)));
    open.push(...mappingFaults(sheet, used).map(said));
    notes.push(...droppedBy(sheet, used).map(said));
    const missing = proposal?.missing ?? [];
    if (missing.length > 0) notes.push(said(`no column fills ${missing.join(", ")}: fine for what is there already`));
  }
  const there = sheets.map(({ grid }) => grid.name);
  const unmapped = mapped.flatMap(({ sheet, proposal }) => (proposal ? [sheet.grid.name] : []));
  // A sheet with good headers would be read without what its mapping says, by a slip in one name.
  for (const { sheet } of mappings.sheets) {
    const meant = there.includes(sheet) ? undefined : nearest(sheet, unmapped);
    if (meant) open.push(`'${meant}': the mapping does not speak of it, but of '${sheet}', which is not there`);
  }
  return { mapped, strange, open, notes };
}

/** What the mapping makes nothing of: it says nothing then, and takes nothing away where the records say something. */
function droppedBy(sheet: Sheet, { columns }: SheetMapping): string[] {
  return Object.values(columns).flatMap(({ column, translate = {} }) => {
    const cells = cellTexts(sheet, column);
    return Object.entries(translate).flatMap(([from, to]) => {
      const rows = to.trim() === "" ? cells.filter((cell) => cell === from).length : 0;
      if (rows === 0) return [];
      return [
        `'${from}' in '${column}' is translated to nothing: ${counted(rows, "cell")} as good as empty, which deletes nothing`,
      ];
    });
  });
}
