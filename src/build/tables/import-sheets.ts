/** npm run import: from spreadsheet files to a data folder, tried out first and written only when told. */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { dataFilesOf } from "../data/data-files.ts";
import { type ReadFolder, readFolder } from "../data/read-folder.ts";
import { countFindings, showFinding } from "../data/show-findings.ts";
import { folderTexts } from "../write/folder-texts.ts";
import { lostComments } from "../write/lost-comments.ts";
import { schemaAddress } from "../write/schema-address.ts";
import { finishFirst, tryWrite } from "../write/try-write.ts";
import { tableNamed } from "./all-tables.ts";
import { type ImportRow, importRows, type Sheet } from "./import-rows.ts";
import { MOST_ROWS } from "./limits.ts";
import { type MappedSheets, mapSheets } from "./map-sheets.ts";
import { type Mappings, readMapping } from "./mapping.ts";
import { mappingText } from "./mapping-text.ts";
import { openSheets } from "./open-sheets.ts";
import { type Plan, planImport } from "./plan-import.ts";
import type { Proposal } from "./propose.ts";
import type { CsvManner } from "./read-csv.ts";
import { counted, type Rejected, showFiles, showRejected, showSums } from "./show-plan.ts";
import type { Table } from "./table.ts";
import { type RejectedSheet, rejectsFile, rejectsPath } from "./write-rejects.ts";

export interface ImportOptions extends CsvManner {
  readonly data: string;
  readonly map?: string | undefined;
  readonly propose?: string | undefined;
  readonly rejects?: string | undefined;
  readonly write: boolean;
  readonly overwrite: boolean;
}

/** Where the command says what it does. */
export type Say = (line: string) => void;

/** The exit code: 0, or 1 when something was rejected or could not be done. */
export async function importSheets(paths: readonly string[], options: ImportOptions, print: Say): Promise<number> {
  // Signs of somebody's sheet that would move the cursor, colour the terminal or turn the line round are shown as blanks.
  const say: Say = (line) => print(line.replaceAll(/(?!\n)[\p{Cc}\p{Bidi_Control}]/gu, " "));
  const mappings = mappingsOf(options.map, say);
  const sheets = mappings && (await openSheets(paths, mappings, options, say));
  if (!sheets) return 1;
  const found = mapSheets(sheets, mappings);
  for (const { sheet, mapping } of found.mapped) say(`'${sheet.grid.name}' is read as the table '${mapping.table}'`);
  for (const what of [...found.open, ...found.notes]) say(`  ${what}`);
  if (options.propose !== undefined && !writeProposal(options.propose, found, mappings, say)) return 1;
  if (options.write && found.open.length > 0) {
    say("\nNothing was written: what is guessed or goes nowhere has to be settled first.");
    say("Write the mapping to a file with --propose FILE, look it over, and import with --map FILE.");
    return 1;
  }

  if (options.write && finishFirst(options.data, say) === "fault") return 1;
  const read = await readFolder(options.data);
  const texts = folderTexts(options.data, read);
  const faulty = read.findings.filter(({ severity }) => severity === "error").length;
  if (faulty > 0)
    say(`The data folder has ${counted(faulty, "error")} of its own (npm run check); rows answer only for new ones.`);
  const rows: ImportRow[] = [];
  const rejected: Rejected[] = [];
  for (const { sheet, mapping } of found.mapped)
    for (const row of importRows(sheet, tableNamed(mapping.table) as Table, mapping))
      if ("reason" in row) rejected.push({ row: { sheet, row: row.row }, reasons: [row.reason] });
      else rows.push(row);
  const plan = planImport(folderOf(options.data, read, texts), rows, options.overwrite);
  for (const [row, reasons] of plan.rejected) rejected.push({ row, reasons });
  const order = (row: Rejected["row"]): number => sheets.indexOf(row.sheet) * MOST_ROWS * 2 + row.row.number;
  rejected.sort((a, b) => order(a.row) - order(b.row));
  for (const line of [...showFiles(plan), ...showLost(plan, texts), ...showRejected(rejected)]) say(line);
  for (const { file, message, hint } of plan.warnings) say(`warning  ${file}: ${message}; ${hint}`);
  const fault = options.write ? tryWrite(options.data, plan.texts, new Map(), texts) : undefined;
  if (fault !== undefined) {
    say(`\n${fault}`);
    return 1;
  }
  await writeRejects(rejected, options, say);
  say(`\n${showSums({ written: plan.written.length, unchanged: plan.unchanged.length, rejected: rejected.length })}`);
  say(closing(plan, read, options));
  return rejected.length > 0 ? 1 : 0;
}

/** What a person noted in a file may not go without a word. */
function showLost({ drafts, texts }: Plan, before: ReadonlyMap<string, string>): string[] {
  return drafts.flatMap(({ path, kind }) => {
    const [old, next] = [before.get(path), texts.get(path)];
    if (old === undefined || next === undefined) return [];
    return lostComments(kind, old, next).map((comment) => `lost     ${path}: the comment '${comment}'`);
  });
}

function mappingsOf(path: string | undefined, say: Say): Mappings | undefined {
  if (path === undefined) return { sheets: [], leaveOut: [] };
  const { findings, ...mappings } = readMapping(path, readFileSync(path, "utf8"));
  if (findings.length === 0) return mappings;
  for (const finding of findings) say(`${showFinding(finding, ".").replace(/^\.\//, "")}\n`);
  say(`${path}: ${countFindings(findings)}; nothing was done`);
  return undefined;
}

function writeProposal(path: string, { mapped, strange }: MappedSheets, mappings: Mappings, say: Say): boolean {
  if (existsSync(path)) {
    say(`${path} is there already, so the mapping was not written; name another file`);
    return false;
  }
  const proposals = mapped.map(({ proposal, mapping }): Proposal => {
    const table = tableNamed(mapping.table) as Table;
    return proposal ?? { mapping, table, guesses: [], unmatched: mapping["leave-out"], missing: [] };
  });
  const leaveOut = [...mappings.leaveOut, ...strange.map(({ grid }) => grid.name)];
  writeFileSync(path, mappingText(proposals, leaveOut));
  say(`The mapping is in ${path}. Look it over, then import with --map ${path}`);
  return true;
}

async function writeRejects(rejected: readonly Rejected[], options: ImportOptions, say: Say): Promise<void> {
  if (rejected.length === 0 || !(options.write || options.rejects !== undefined)) return;
  const byFile = new Map<string, Map<Sheet, Map<number, readonly string[]>>>();
  for (const { row, reasons } of rejected) {
    const sheets = byFile.get(row.sheet.path) ?? new Map<Sheet, Map<number, readonly string[]>>();
    byFile.set(
      row.sheet.path,
      sheets.set(row.sheet, (sheets.get(row.sheet) ?? new Map()).set(row.row.number, reasons)),
    );
  }
  for (const [path, sheets] of byFile) {
    const list = [...sheets].map(([sheet, reasons]): RejectedSheet => ({ sheet, reasons }));
    const bytes = await rejectsFile(path, list);
    const place = rejectsPath(path, bytes, options.rejects);
    writeFileSync(place, bytes);
    say(
      `The rejected rows are in ${place}. Mend them, and then: npm run import -- ${place}${options.map === undefined ? "" : ` --map ${options.map}`}${options.data === "data" ? "" : ` --data ${options.data}`} --write`,
    );
  }
}

function closing({ texts }: Plan, { sources }: ReadFolder, { write, data }: ImportOptions): string {
  const files = [...texts.keys()];
  const fresh = files.filter((path) => !sources.has(path)).length;
  const what = `${counted(fresh, "new file")}, ${counted(files.length - fresh, "changed file")}`;
  if (write) return `${what} in ${data}.${files.length > 0 ? " Next: npm run check" : ""}`;
  return `${what}. Nothing was written yet: this was a trial. --write writes.`;
}

function folderOf(
  data: string,
  { sources, catalog }: ReadFolder,
  texts: ReadonlyMap<string, string>,
): Parameters<typeof planImport>[0] {
  return {
    files: new Map(dataFilesOf(sources).map((file) => [file.path, file])),
    text: (path) => texts.get(path) ?? "",
    schema: (path, kind) => catalog && schemaAddress(data, path, kind, catalog.maker.site),
  };
}
