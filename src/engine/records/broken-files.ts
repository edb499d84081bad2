/**
 * Files that have a fault of their own define names that nobody could read. A second complaint, in another file, that such a
 * name is unknown would only echo the fault, so it is held back until the fault is mended:
 *
 *   a broken change record, bulletin or system is still known by its file's name (and by its id, where that can be read);
 *   a broken file of parts may define every number that stands in it;
 *   a broken system may define every component and place that stands in it.
 *
 * A file of which nothing could be read may define anything of its kind.
 */
import type { Complaint, Naming } from "./complaint.ts";
import type { DataFile, FileKindName } from "./file-kinds.ts";

const DEFINED_IN: Record<Naming, FileKindName> = {
  "change record": "change",
  record: "change",
  bulletin: "bulletin",
  system: "system",
  component: "system",
  place: "system",
  part: "parts",
};

/** Whether a complaint only says that a name is unknown which one of the broken files may well define. */
export function echoOf(broken: readonly DataFile[]): (complaint: Complaint) => boolean {
  const texts = new Map(broken.map((file) => [file, textOf(file.value)]));
  return ({ unknown }) =>
    unknown?.as.some((naming) =>
      broken.some((file) => file.kind === DEFINED_IN[naming] && mayDefine(file, texts.get(file), naming, unknown.name)),
    ) ?? false;
}

function mayDefine(file: DataFile, text: string | undefined, naming: Naming, name: string): boolean {
  if (naming === "part" || naming === "component" || naming === "place")
    return text === undefined || standsIn(text, name);
  const { value } = file;
  const id = typeof value === "object" && value !== null && "id" in value ? value.id : undefined;
  return name === id || name === file.path.slice(file.path.lastIndexOf("/") + 1).replace(/\.[a-z]+$/, "");
}

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
