/** The findings in documents elsewhere; where it is wanted, what is certain is mended in them. */
import { type CitedDocument, type CiteFinding, citeDocument } from "./cite-document.ts";
import type { Reading } from "./judge-cited.ts";

export interface TextFile {
  readonly file: string;
  readonly text: string;
}

export interface CiteOptions {
  /** The day of the documents; else the one that a document says itself. */
  readonly date?: string;
  /** Writes a mended document in place of what was read, or says in one line why that was not possible. Without it nothing is mended. */
  readonly write?: (file: string, text: string, read: string) => string | undefined;
}

export interface CitedDocuments {
  readonly citations: number;
  /** What was mended, at its place in the document as it was. */
  readonly mended: readonly CiteFinding[];
  /** What is left to look at, at its place in the document as it is now: an id that was put in may be cancelled itself. */
  readonly findings: readonly CiteFinding[];
  /** Codes that only look like ids, and are most likely somebody else's: to be told, and nothing to mend. */
  readonly strange: readonly CiteFinding[];
  /** Documents that could not be written, and why: nothing is mended in these. */
  readonly faults: readonly string[];
}

export function citeDocuments(
  reading: Reading,
  documents: readonly TextFile[],
  options: CiteOptions = {},
): CitedDocuments {
  const each = documents.map((document) => citeOne(reading, document, options));
  return {
    citations: each.reduce((sum, { citations }) => sum + citations, 0),
    mended: each.flatMap(({ mended }) => mended),
    findings: each.flatMap(({ findings }) => findings),
    strange: each.flatMap(({ strange }) => strange),
    faults: each.flatMap(({ faults }) => faults),
  };
}

function citeOne(reading: Reading, { file, text }: TextFile, { date, write }: CiteOptions): CitedDocuments {
  const { fixed, ...before } = citeDocument(reading, file, text, date);
  const asItIs: CitedDocuments = { ...parted(before), mended: [], faults: [] };
  if (write === undefined || fixed === text) return asItIs;
  const fault = write(file, fixed, text);
  if (fault !== undefined) return { ...asItIs, faults: [`${file}: ${fault}`] };
  const mended = before.findings.filter(({ certain }) => certain);
  return { ...asItIs, mended, ...parted(citeDocument(reading, file, fixed, date)) };
}

/** A code of somebody else is no citation. */
function parted({
  citations,
  findings,
}: Omit<CitedDocument, "fixed">): Pick<CitedDocuments, "citations" | "findings" | "strange"> {
  const strange = findings.filter(({ rule }) => rule === "strange");
  return {
    citations: citations - strange.length,
    findings: findings.filter(({ rule }) => rule !== "strange"),
    strange,
  };
}
