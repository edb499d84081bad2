/** The file of a new record, part or bulletin, from answers; it is looked at as if it lay there already, and nothing is written here. */
import type { Catalog } from "../../engine/records/catalog.ts";
import type { FileKindName } from "../../engine/records/file-kinds.ts";
import { audited, newlyFound } from "../data/audited.ts";
import type { Finding, ReadFolder } from "../data/read-folder.ts";
import type { Answers } from "./field.ts";
import { fileText } from "./file-text.ts";
import { lostComments } from "./lost-comments.ts";
import type { NewKind } from "./new-fields.ts";
import { readWith } from "./read-with.ts";
import { schemaAddress } from "./schema-address.ts";
import { updatedText } from "./updated-text.ts";
import { yamlOnOneLine } from "./yaml-text.ts";

export interface NewFile {
  readonly path: string;
  readonly text: string;
  /** It was there, and something was added to it. */
  readonly grown: boolean;
  /** Comments of the file that would not stand there any more, and what to write by hand in place of this. */
  readonly lost: readonly string[];
  readonly byHand: string;
  /** What would be found that is not found now. */
  readonly findings: readonly Finding[];
}

/**
 * `texts` are the files as they lie on the disk; `more` are further fields of the file, beside those that are asked for.
 * A part is added to the file of its component. Anything else gets a file of its own.
 */
export function newFile(
  folder: string,
  read: ReadFolder & { readonly catalog: Catalog },
  texts: ReadonlyMap<string, string>,
  kind: NewKind,
  answers: Answers,
  more: Readonly<Record<string, unknown>> = {},
): NewFile {
  const { file, path, value, old, added = value } = PLACES[kind](read, answers, more, texts);
  const text =
    old === undefined
      ? fileText(file, value, schemaAddress(folder, path, file, read.catalog.maker.site))
      : updatedText(file, old, value);
  const now = audited({ ...read, complaints: read.findings });
  const { findings } = readWith(read, new Map([[path, text]]));
  return {
    path,
    text,
    grown: old !== undefined,
    lost: old === undefined ? [] : lostComments(file, old, text),
    byHand: yamlOnOneLine(added),
    findings: newlyFound(findings, now),
  };
}

interface Placed {
  readonly file: FileKindName;
  readonly path: string;
  readonly value: Record<string, unknown>;
  readonly old?: string | undefined;
  /** What of the value is new, where not all of it is. */
  readonly added?: object;
}
type Place = (
  read: ReadFolder & { readonly catalog: Catalog },
  answers: Answers,
  more: Readonly<Record<string, unknown>>,
  texts: ReadonlyMap<string, string>,
) => Placed;

const PLACES: Readonly<Record<NewKind, Place>> = {
  record: ({ catalog }, { year, ...answers }, more) => {
    return {
      file: "change",
      path: `${recordFolder(catalog, String(year))}${answers.id}.md`,
      value: { ...answers, ...more },
    };
  },
  bulletin: (_, answers, more) => {
    return { file: "bulletin", path: `bulletins/${answers.id}.md`, value: { ...answers, ...more } };
  },
  part: ({ sources }, { component, marks, ...answers }, more, texts) => {
    const path = `parts/${component}.yaml`;
    const part = { ...answers, ...(marks === undefined ? {} : { marks: marksOf([marks].flat()) }), ...more };
    const before = (sources.get(path)?.value ?? { component, parts: [] }) as { parts: object[] };
    return {
      file: "parts",
      path,
      value: { ...before, parts: [...before.parts, part] },
      old: texts.get(path),
      added: part,
    };
  },
};

/** Where the other records lie: in a folder for each year, unless all of them lie elsewhere. */
function recordFolder(catalog: Catalog, year: string): string {
  const folders = [...catalog.records.values()].map(({ file }) => file.slice(0, file.lastIndexOf("/") + 1));
  if (folders.length === 0 || folders.some((folder) => /\/\d{4}\/$/.test(folder))) return `changes/${year}/`;
  return folders.at(-1) as string;
}

/** A number is one where the reader would take it for one. */
function marksOf(texts: readonly string[]): Record<string, string | number> {
  return Object.fromEntries(
    texts.map((text) => {
      const cut = text.indexOf("=");
      const value = text.slice(cut + 1).trim();
      return [text.slice(0, cut).trim(), /^-?\d+(\.\d+)?$/.test(value) ? Number(value) : value];
    }),
  );
}
