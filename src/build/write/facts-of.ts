/** The two halves of a file's text: its facts in YAML, and the text below them in a Markdown file. */

import { FILE_KINDS, type FileKind, type FileKindName } from "../../engine/records/file-kinds.ts";
import { splitFacts } from "../data/split-facts.ts";

export interface Halves {
  readonly yaml: string;
  /** Where the facts begin in the text. */
  readonly at: number;
  /** The field that the text below fills. */
  readonly body: string | undefined;
  readonly bodyAt: number;
}

/** Nothing when a Markdown file does not begin with facts between two lines of '---'. */
export function factsOf(kind: FileKindName, text: string): Halves | undefined {
  const { body }: FileKind = FILE_KINDS[kind];
  const mark = text.startsWith("\uFEFF") ? 1 : 0;
  if (body === undefined) return { yaml: text.slice(mark), at: mark, body, bodyAt: text.length };
  const split = splitFacts(text.slice(mark));
  return split && { yaml: split.yaml, at: mark + split.at, body, bodyAt: mark + split.restAt };
}
