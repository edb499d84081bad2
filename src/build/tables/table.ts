/** A table: the columns under which the entries of one list of a data folder stand in a spreadsheet, a row an entry. */
import type { FileKindName } from "../../engine/records/file-kinds.ts";

/** What the cells of a column hold. A list holds several such values in one cell. */
export type CellKind = "text" | "number" | "yes-no" | "text-or-number" | "choice";

export interface Column {
  /** Its header. */
  readonly name: string;
  /** The field it fills, from the top of the entry. */
  readonly path: readonly string[];
  readonly kind: CellKind;
  readonly list: boolean;
  readonly required: boolean;
  /** What the field holds where nothing is said; nothing where it then stays empty. */
  readonly fallback: unknown;
  /** The values of a choice. */
  readonly options: readonly string[];
  /** A calendar day, which spreadsheets write in many ways. */
  readonly day: boolean;
  /** A window of two figures, 3.5..3.62: the one text that has amounts in it and no words. */
  readonly window: boolean;
  readonly about: string;
}

/** A column that says in which entry of a list further up this one stands. */
export interface Parent {
  readonly column: string;
  /** The list, and its field that tells the entries apart; of the file itself only the latter. */
  readonly list?: string;
  readonly key: string;
  /** There is a table for these entries. Without one, a row makes the entry that it stands in. */
  readonly hasTable: boolean;
}

export interface Table {
  readonly name: string;
  readonly about: string;
  readonly kind: FileKindName;
  readonly parents: readonly Parent[];
  /**
   * Where its rows stand. 'file': a row is a file. 'list': a row is an entry of the list `field`. 'texts': the same, and the
   * entry is a text. 'named': `field` is a set of named values, and a row is a name with its value.
   */
  readonly rows: "file" | "list" | "texts" | "named";
  readonly field: string;
  readonly columns: readonly Column[];
  /** The columns by which two rows speak of the same thing. Without them a row is its own whole, and is never changed. */
  readonly identity: readonly string[];
}

/** Where the path of a file is written down, for kinds whose files may lie in a folder of the editor's choice. */
export const FILE_COLUMN = "file";
