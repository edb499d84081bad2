export interface SplitFacts {
  readonly yaml: string;
  /** Where the facts begin in the text. */
  readonly at: number;
  readonly rest: string;
  readonly restAt: number;
}

/** The facts between two lines of '---' with which a Markdown file begins, and the text below them; nothing where it does not begin so. */
export function splitFacts(text: string): SplitFacts | undefined {
  const match = /^(---[ \t]*\r?\n)([\s\S]*?)(^---[ \t]*(?:\r?\n|$))/m.exec(text);
  if (match?.index !== 0) return undefined;
  const restAt = match[0].length;
  return { yaml: match[2] as string, at: (match[1] as string).length, rest: text.slice(restAt), restAt };
}
