/**
 * What is wrong with the data: what the pages show now, and what the terminal has not been told yet. Reading finds errors at once; the
 * check of data without errors takes longer and comes after it.
 */
import type { Finding, ReadFolder } from "../data/read-folder.ts";

type Read = Pick<ReadFolder, "catalog" | "findings"> | undefined;

/** What the terminal is to be told, and what it knows of that. */
export interface Told {
  readonly now: readonly Finding[];
  readonly known: readonly Finding[];
}

export class Complaints {
  /** What the check said last of data without errors. */
  #checked: readonly Finding[] | undefined;
  /** What the terminal was told of last: of data without errors, and of errors since then. */
  #told: readonly Finding[] = [];
  #toldErrors: readonly Finding[] = [];

  /** What holds of the folder as it was read: what the check said of it, as soon as that is known. */
  of(read: Read): readonly Finding[] {
    const { catalog, findings = [] } = read ?? {};
    return (catalog && this.#checked) ?? findings;
  }

  /** What was checked before there were errors may have changed more than once since. */
  forgetCheck(): void {
    this.#checked = undefined;
  }

  /** Data with errors were read. */
  errors(read: Read): Told {
    const now = this.of(read);
    const known = this.#toldErrors;
    this.#toldErrors = now;
    return { now, known };
  }

  /** Data without errors were checked. */
  checked(now: readonly Finding[]): Told {
    const known = [...this.#told, ...this.#toldErrors];
    this.#checked = now;
    this.#told = now;
    this.#toldErrors = [];
    return { now, known };
  }
}
