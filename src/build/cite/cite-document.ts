/** The findings in one document, each with its place, and the document with what is certain mended. */
import { documentDate } from "./document-date.ts";
import { type Cited, findCited } from "./find-cited.ts";
import { type Judged, judgeCited, type Reading } from "./judge-cited.ts";
import { readableText } from "./readable-text.ts";

export interface CiteFinding extends Judged {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  /** As it stands there, and as it would stand there mended. */
  readonly written: string;
  readonly mended?: string;
  /** The line in the document. */
  readonly shown: string;
}

export interface CitedDocument {
  /** How many citations it has, right or wrong. */
  readonly citations: number;
  readonly findings: readonly CiteFinding[];
  /** The text with every moved id mended; the same text where there is none. */
  readonly fixed: string;
}

/** `date`, a day, overrules the one that the document says itself. */
export function citeDocument(reading: Reading, file: string, text: string, date?: string): CitedDocument {
  const cited = findCited(readableText(file, text), reading.catalog);
  const ids = new Set(cited.map(({ id }) => id));
  const day = date ?? documentDate(text);
  const findings: CiteFinding[] = [];
  const placeOf = placesIn(text);
  let fixed = "";
  let last = 0;
  for (const one of cited) {
    for (const judged of judgeCited(reading, one, ids, day)) {
      findings.push({ ...judged, file, ...placeOf(one), ...mended(text, one, judged) });
      if (!judged.certain || judged.instead === undefined) continue;
      fixed += text.slice(last, one.idFrom) + judged.instead;
      last = one.idTo;
    }
  }
  return { citations: cited.length, findings, fixed: fixed + text.slice(last) };
}

function mended(
  text: string,
  { from, to, idFrom, idTo }: Cited,
  { instead }: Judged,
): { written: string; mended?: string } {
  const written = text.slice(from, to);
  if (instead === undefined) return { written };
  return { written, mended: text.slice(from, idFrom) + instead + text.slice(idTo, to) };
}

/** To be asked in the order of the document: the lines are counted once. */
function placesIn(text: string): (cited: Cited) => Pick<CiteFinding, "line" | "column" | "shown"> {
  let line = 1;
  let start = 0;
  return ({ from }) => {
    for (let end = text.indexOf("\n", start); end >= 0 && end < from; end = text.indexOf("\n", start)) {
      line++;
      start = end + 1;
    }
    const end = text.indexOf("\n", from);
    // An editor does not count the byte order mark as a column.
    const mark = start === 0 && text.startsWith("\uFEFF") ? 1 : 0;
    const shown = text.slice(start + mark, end < 0 ? text.length : end).replace(/\r$/, "");
    return { line, column: from - start + 1 - mark, shown };
  };
}
