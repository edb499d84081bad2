/** The sheets of a workbook in its own order: in which of its files each one lies, and whether it is hidden. */
import { xmlAttribute } from "./xml-attribute.ts";

export interface BookSheet {
  /** The end of its path in the archive. */
  readonly file: string;
  /** The program shows no tab for it. */
  readonly hidden: boolean;
}

/** `book` is the XML of the workbook, `relations` that of the file beside it, which says where the sheets lie. */
export function workbookSheets(book: string, relations: string): BookSheet[] {
  const targets = new Map(
    [...relations.matchAll(/<(?:\w+:)?Relationship\s([^<>]*)>/g)].map(([, tag = ""]) => [
      xmlAttribute(tag, "Id"),
      xmlAttribute(tag, "Target"),
    ]),
  );
  return [...book.matchAll(/<(?:\w+:)?sheet\s((?:"[^"]*"|'[^']*'|[^"'<>])*)>/g)].flatMap(([, tag = ""]) => {
    if (!xmlAttribute(tag, "name")) return [];
    const file = (targets.get(xmlAttribute(tag, "id")) ?? "").replace(/^(?:\.?\/)?(?:xl\/)?/, "");
    return [{ file, hidden: /hidden$/i.test(xmlAttribute(tag, "state") ?? "") }];
  });
}
