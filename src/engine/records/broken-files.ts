/**
 * Files that have a fault of their own define names that nobody could read. A second complaint, in another file, that such a
 * name is unknown would only echo the fault, so it is held back until the fault is mended:
 *
 *   a broken change record, bulletin or system is still known by its file's name (and by its id, where that can be read);
 *   a broken change record may define every setting that stands in it;
 *   a broken file of parts may define every number and feature that stands in it;
 *   a broken system may define every component and place that stands in it.
 *
 * A file of which nothing could be read may define anything of its kind.
 */
import type { Complaint, Naming } from "./complaint.ts";
import type { DataFile, FileKindName } from "./file-kinds.ts";

export const DEFINED_IN: Readonly<Record<Naming, FileKindName>> = {
  "change record": "change",
  record: "change",
  setting: "change",
  bulletin: "bulletin",
  system: "system",
  component: "system",
  place: "system",
  part: "parts",
  feature: "parts",
};

/** Known by the name of its file or its id. All else may stand anywhere in a file. */
const HAS_A_FILE: ReadonlySet<Naming> = new Set<Naming>(["change record", "record", "bulletin", "system"]);

/** What the broken files of one kind may define. */
interface Names {
  readonly ofFiles: Set<string>;
  /** Every word that stands in one: thousands of files are asked for thousands of names. */
  readonly words: Set<string>;
  /** For names of more than one word. */
  readonly texts: string[];
  /** Of one of them nothing could be read. */
  anything: boolean;
}

/** Whether a complaint only says that a name is unknown which one of the broken files may well define. */
export function echoOf(broken: readonly DataFile[]): (complaint: Complaint) => boolean {
  const byKind = new Map<FileKindName, Names>();
  for (const { kind, path, value } of broken) {
    const names = byKind.get(kind) ?? { ofFiles: new Set(), words: new Set(), texts: [], anything: false };
    byKind.set(kind, names);
    names.ofFiles.add(path.slice(path.lastIndexOf("/") + 1).replace(/\.[a-z]+$/, ""));
    if (typeof value === "object" && value !== null && "id" in value) names.ofFiles.add(String(value.id));
    const text = textOf(value);
    if (text === undefined) names.anything = true;
    else {
      names.texts.push(text);
      for (const word of text.split(BETWEEN)) names.words.add(word);
    }
  }
  return ({ unknown }) =>
    unknown?.as.some((naming) => {
      const names = byKind.get(DEFINED_IN[naming]);
      return names !== undefined && mayDefine(names, naming, unknown.name);
    }) ?? false;
}

/** Only files of this kind define such a name. */
export function isOnlyOf({ unknown }: Complaint, kind: FileKindName): boolean {
  return unknown?.as.every((naming) => DEFINED_IN[naming] === kind) ?? false;
}

function mayDefine({ ofFiles, words, texts, anything }: Names, naming: Naming, name: string): boolean {
  if (HAS_A_FILE.has(naming)) return ofFiles.has(name);
  return anything || (BETWEEN.test(name) ? texts.some((text) => standsIn(text, name)) : words.has(name));
}

const BETWEEN = /[^\w.-]+/;

/** The name stands there as a whole, not as a piece of a longer one. */
function standsIn(text: string, name: string): boolean {
  const letter = /[\w.-]/;
  for (let at = text.indexOf(name); at >= 0; at = text.indexOf(name, at + 1))
    if (!letter.test(text[at - 1] ?? " ") && !letter.test(text[at + name.length] ?? " ")) return true;
  return false;
}

/** Everything that can be read in a value of any shape, as one text; nothing when there is no value. */
function textOf(value: unknown): string | undefined {
  if (value === undefined) return undefined;
  const found: string[] = [];
  const left: unknown[] = [value];
  while (left.length > 0) {
    const next = left.pop();
    if (typeof next === "object" && next !== null) {
      for (const [key, inner] of Object.entries(next)) {
        found.push(key);
        left.push(inner);
      }
    } else found.push(String(next));
  }
  return found.join("\n");
}
