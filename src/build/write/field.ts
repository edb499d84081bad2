/** A question for a new file, and what is known while it is answered. */
import type { z } from "zod";
import type { Catalog } from "../../engine/records/catalog.ts";

export type Answers = Readonly<Record<string, string | readonly string[] | undefined>>;

export interface Desk {
  readonly catalog: Catalog;
  /** A day, year-month-day. */
  readonly today: string;
}

export interface Option {
  /** With '=' at its end it only begins an answer. */
  readonly value: string;
  readonly words: string;
}

export interface Field {
  /** Its name in the file, and as a flag. */
  readonly name: string;
  readonly ask: string;
  readonly needed?: boolean;
  /** Several, with commas between them. */
  readonly many?: boolean;
  /** Several lines. */
  readonly long?: boolean;
  readonly shape?: z.ZodType;
  readonly options?: (desk: Desk, answers: Answers) => readonly Option[];
  readonly suggest?: (desk: Desk, answers: Answers) => string | undefined;
  /** What is wrong with one answer beyond its shape. */
  readonly fault?: (value: string, desk: Desk, answers: Answers) => string | undefined;
}
