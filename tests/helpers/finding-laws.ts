/** What holds for every finding about any data folder, however it was spoilt; and a folder read without a disk. */
import { dataFilesOf } from "../../src/build/data/data-files.ts";
import { type Finding, locate, type ReadFolder } from "../../src/build/data/read-folder.ts";
import { RULE_TEXTS } from "../../src/build/data/rule-texts.ts";
import { harmless, showFinding } from "../../src/build/data/show-findings.ts";
import type { Position, Source } from "../../src/build/data/source.ts";
import { kindOf } from "../../src/engine/records/file-kinds.ts";
import { readCatalog } from "../../src/engine/records/read-catalog.ts";
import { type Folder, sourceOf } from "./tiny-folder.ts";

/** `known` holds what was read before, by path: it is taken where the text is the same. */
export function folderOf(texts: Folder, known: ReadonlyMap<string, Source> = new Map()): ReadFolder {
  const sources = new Map<string, Source>();
  for (const [path, text] of Object.entries(texts).sort(([a], [b]) => (a < b ? -1 : 1))) {
    if (!kindOf(path)) continue;
    const before = known.get(path);
    sources.set(path, before?.text === text ? before : sourceOf(path, text));
  }
  const files = dataFilesOf(sources);
  const { complaints, ...read } = readCatalog(files);
  const all = [...[...sources.values()].flatMap(({ faults }) => faults), ...complaints];
  const findings = all.map((complaint) => locate(complaint, sources.get(complaint.file)));
  return { ...read, findings, files: files.length, sources, stamps: new Map() };
}

const RULE_IDS = new Set(RULE_TEXTS.map(({ id }) => id));

/**
 * A finding names a rule that exists, says something and what to do, and stands in a file of the folder at a line and column that it
 * has; what is marked there ends within the line. Two sorts of file have no lines to show: that of the traits where it is missing,
 * and one that is not read.
 */
export function brokenLaws(finding: Finding, texts: Folder): string[] {
  const { file, rule, message, hint, position, shown, also = [] } = finding;
  const hasNoLines = rule === "stray-file" || (texts[file] === undefined && file === "vehicles/traits.yaml");
  const line = lineOf(hasNoLines ? "" : texts[file], position);
  const laws: [string, boolean][] = [
    ["rule exists", RULE_IDS.has(rule)],
    ["says something", message.trim() !== "" && hint.trim() !== ""],
    // What is quoted was written by the editor.
    ["says it in words", !/undefined|\[object|NaN/.test(`${message} ${hint}`.replaceAll(/'[^']*'/g, ""))],
    ["line exists", line !== undefined && shown === line.replace(/\r$/, "")],
    ["mark is in the line", line !== undefined && isInLine(line, position)],
    ["what is shown is marked", isShown(finding)],
    [
      "other places exist",
      also.every((it) => {
        const other = it.position && lineOf(texts[it.file], it.position);
        return it.position === undefined || (other !== undefined && isInLine(other, it.position));
      }),
    ],
  ];
  return laws.flatMap(([law, holds]) => (holds ? [] : [`${law}: ${JSON.stringify(finding)}`]));
}

/** As an editor counts lines: a byte order mark is no character of the first. The first half of a Windows line end is one of its line. */
function lineOf(text: string | undefined, { line }: Position): string | undefined {
  return text?.replace(/^\uFEFF/, "").split("\n")[line - 1];
}

/** A mark at the very end of a line stands behind its last character. */
function isInLine(line: string, { column, length }: Position): boolean {
  const end = column - 1 + length;
  return column >= 1 && length >= 1 && (end <= line.length || (column === line.length + 1 && length === 1));
}

/** On the terminal the signs under the line stand below what is marked; a long line is cut round it. */
function isShown(finding: Finding): boolean {
  const { shown, position } = finding;
  const text = showFinding(finding, "data");
  if (/[^\P{Cc}\n]/u.test(text)) return false;
  if (shown === "") return true;
  const [, line = "", mark = ""] = text.split("\n");
  const from = mark.indexOf("^");
  const marked = harmless(shown.slice(position.column - 1, position.column - 1 + position.length));
  const above = line.slice(from, mark.length);
  return from >= 9 && (above === marked || (above.endsWith("…") && marked.startsWith(above.slice(0, -1))));
}
