/**
 * Ids that differ in capitals only lead to addresses and files that not every web server and disk tells apart: one of two pages is gone.
 * Records, parts and components are cited alike, so among these it does not matter which of them has the other id.
 */
import type { Complaints, Path } from "../complaint.ts";

interface Spelling {
  readonly id: string;
  /** The trade's word for it, 'part'. */
  readonly what: string;
  readonly file: string;
}

export class Spellings {
  readonly #known = new Map<string, Spelling>();

  /** Of what is read already, or checked elsewhere. */
  add(spelling: Spelling): void {
    const key = spelling.id.toLowerCase();
    if (!this.#known.has(key)) this.#known.set(key, spelling);
  }

  /** Complains where another one was added before that differs in capitals only. */
  check(spelling: Spelling, path: Path, complaints: Complaints): void {
    const { id, what } = spelling;
    const twin = this.#known.get(id.toLowerCase());
    if (twin !== undefined && twin.id !== id)
      complaints.error(
        path,
        `${what} '${id}' and ${twin.what} '${twin.id}' in ${twin.file} differ in capitals only`,
        "give one of them another id: not every web server tells such addresses apart",
      );
    this.add(spelling);
  }
}
