/**
 * How the columns of each sheet are read: by the mapping file, or by a proposal where that does not speak of the sheet. A header that
 * is the name of a column needs no mapping; everything guessed, and everything that would go nowhere, has to be settled by a person.
 */
import { mappingFaults, type Sheet } from "./import-rows.ts";
import type { Mappings, SheetMapping } from "./mapping.ts";
import { type Proposal, propose } from "./propose.ts";

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
    const missing = proposal?.missing ?? [];
    if (missing.length > 0) notes.push(said(`no column fills ${missing.join(", ")}: fine for what is there already`));
  }
  return { mapped, strange, open, notes };
}
