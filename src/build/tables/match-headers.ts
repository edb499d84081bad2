/**
 * Which column of a table the header of a sheet's column means. In this order:
 *
 *   it is the column's name, whatever its letters and signs: 'Stands-In'        sure
 *   it is what the entry is called: 'Record ID' of the records                  sure
 *   it is either but for words such as 'no.': 'Part number'                     a guess
 *   it is the name but for a slip, or the name with words about it              a guess
 *   all its words stand in the description of the field                         a guess
 */
import { nearest } from "../../engine/scope/nearest.ts";
import { headersOf } from "./all-tables.ts";
import type { Table } from "./table.ts";

export interface Match {
  readonly header: string;
  /** The column of the table. */
  readonly name: string;
  readonly sure: boolean;
}

export function matchHeaders(table: Table, headers: readonly string[]): Match[] {
  const names = headersOf(table);
  const scored = headers.flatMap((header) =>
    names.map((name, i) => ({ header, name, score: score(table, header, name), i })).filter((pair) => pair.score > 0),
  );
  scored.sort((a, b) => b.score - a.score || a.i - b.i);
  const found: Match[] = [];
  for (const { header, name, score: points } of scored)
    if (!found.some((match) => match.header === header || match.name === name))
      found.push({ header, name, sure: points >= SURE });
  return found.sort((a, b) => headers.indexOf(a.header) - headers.indexOf(b.header));
}

const SURE = 3;

function score(table: Table, header: string, name: string): number {
  const said = wordsOf(header);
  if (said.length === 0) return 0;
  if (header.trim() === name) return 5;
  const other = [name, ...otherNames(table, name)].map(wordsOf);
  const [own = []] = other;
  if (same(said, own)) return 4;
  if (other.some((words) => same(said, words))) return SURE;
  if (other.some((words) => same(shortened(said), shortened(words)))) return 2.5;
  if (own.every((word) => said.includes(word)) || isSlipOf(said.join(" "), own.join(" "))) return 2;
  const about = wordsOf(table.columns.find((column) => column.name === name)?.about ?? "");
  return said.join("").length > 3 && said.every((word) => about.includes(word)) ? Math.min(1, said.length / 2) : 0;
}

/** Of one or two letters every word is a slip. */
function isSlipOf(said: string, name: string): boolean {
  return said.length > 2 && nearest(said, [name]) !== undefined;
}

/** The first column names the entry: the id of a record may stand under 'Record' or 'Record ID'. */
function otherNames(table: Table, name: string): string[] {
  const parent = table.parents.find(({ column }) => column === name);
  if (parent) return [`${name} ${parent.key}`];
  const [first] = table.columns;
  if (table.identity[0] !== name && !(table.rows === "file" && first?.name === name)) return [];
  const one = (table.field || table.name).replace(/s$/, "");
  return [one, `${one} ${name}`];
}

function wordsOf(text: string): string[] {
  return text
    .replaceAll(/(\p{Ll})(\p{Lu})/gu, "$1 $2")
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== "");
}

/** 'Part no.' and 'part number' are the part. */
function shortened(words: readonly string[]): string[] {
  const rest = words.filter((word) => !["no", "nr", "number", "num", "id", "code", "ref", "the", "of"].includes(word));
  return rest.length > 0 ? rest : [...words];
}

function same(a: readonly string[], b: readonly string[]): boolean {
  return a.length === b.length && a.every((word, i) => word === b[i]);
}
