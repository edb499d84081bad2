/** What is wrong with a file, said so that an editor can mend it. Lines and columns are added where the file is read. */
export type Path = readonly (string | number)[];

/** What a name is a name of, in the trade's words. */
export type Naming = "change record" | "record" | "bulletin" | "system" | "component" | "place" | "part";

export interface Complaint {
  readonly severity: "error" | "warning";
  readonly file: string;
  /** Which field, from the top of the file. */
  readonly path: Path;
  /** The complaint is about the name of the field, not about its value. */
  readonly key?: boolean;
  /** Which characters of the field's text, where only some of them are at fault. */
  readonly within?: readonly [from: number, to: number];
  readonly message: string;
  readonly hint: string;
  /** The whole complaint is that nothing has this name: no part, or no record, part or component. */
  readonly unknown?: { readonly name: string; readonly as: readonly Naming[] };
}

/** Collects complaints about one file. */
export class Complaints {
  readonly list: Complaint[] = [];
  readonly #file: string;

  constructor(file: string) {
    this.#file = file;
  }

  error(path: Path, message: string, hint: string, more: Pick<Complaint, "within" | "key" | "unknown"> = {}): void {
    this.list.push({ severity: "error", file: this.#file, path, message, hint, ...more });
  }

  warning(path: Path, message: string, hint: string): void {
    this.list.push({ severity: "warning", file: this.#file, path, message, hint });
  }
}
