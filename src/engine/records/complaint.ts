/** What is wrong with a file, said so that an editor can mend it. Lines and columns are added where the file is read. */
export type Path = readonly (string | number)[];

/** What a name is a name of, in the trade's words. */
export type Naming =
  | "change record"
  | "record"
  | "bulletin"
  | "system"
  | "component"
  | "place"
  | "part"
  | "feature"
  | "setting";

/** The rules by which files are read. What breaks one of them cannot be set otherwise or accepted. */
export type ReadingRule =
  | "missing-file"
  | "unreadable"
  | "shape"
  | "unknown-name"
  | "scope"
  | "disagreement"
  | "stray-file";

/** A field of a file, or a piece of its text. */
export interface Place {
  readonly file: string;
  /** Which field, from the top of the file. */
  readonly path: Path;
  /** The name of the field is meant, not its value. */
  readonly key?: boolean;
  /** Which characters of the field's text, where only some of them are meant. */
  readonly within?: readonly [from: number, to: number];
}

export interface Complaint extends Place {
  readonly severity: "error" | "warning";
  /** The id of the rule that is broken. */
  readonly rule: string;
  readonly message: string;
  readonly hint: string;
  /** The records that it comes from, where more than the file tells. */
  readonly records?: readonly string[];
  /** What else it is about: parts, settings, places. */
  readonly names?: readonly string[];
  /** What stands elsewhere and has to do with it. */
  readonly also?: readonly (Place & { readonly message: string })[];
  /** A car that shows it: trait by trait, and in words. */
  readonly car?: { readonly facts: Readonly<Record<string, string>>; readonly words: string };
  /** The whole complaint is that nothing has this name: no part, or no record, part or component. */
  readonly unknown?: {
    readonly name: string;
    readonly as: readonly Naming[];
    /** The known name nearest to it, where one is near. */
    readonly meant?: string;
  };
  /** How many complaints that only follow from this one were taken out of the list. */
  readonly follow?: number;
}

/** Collects complaints about one file. */
export class Complaints {
  readonly list: Complaint[] = [];
  readonly #file: string;

  constructor(file: string) {
    this.#file = file;
  }

  /** `rule` is "disagreement" unless it is said. */
  error(
    path: Path,
    message: string,
    hint: string,
    more: Pick<Complaint, "within" | "key" | "unknown"> & { rule?: ReadingRule } = {},
  ): void {
    const rule: ReadingRule = more.unknown ? "unknown-name" : "disagreement";
    this.list.push({ severity: "error", file: this.#file, path, rule, message, hint, ...more });
  }
}
