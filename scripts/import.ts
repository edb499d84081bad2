/** npm run import -- FILE…: rows of spreadsheets into a data folder; a trial unless --write is said. */
import { statSync } from "node:fs";
import { dirname } from "node:path";
import { misuse, mustBeFolder, readOptions } from "./command-line.ts";

const USAGE = `npm run import -- FILE… [options]
FILE is a CSV file (any usual separator and encoding) or an XLSX workbook. Without --write it only shows what it would do.

  --data DIR         the data folder (default: data)
  --map FILE         how the columns fill the tables
  --propose FILE     write a mapping for these sheets, to be looked over
  --write            write what is shown, and the rejected rows beside their sheet
  --overwrite        also change what records say already
  --rejects FILE     where the rejected rows go (also without --write)
  --encoding NAME    of CSV files, such as windows-1252 (default: found out)
  --delimiter SIGN   of CSV files (default: found out)

Exit code: 0 when every row is well, 1 when some were rejected or nothing could be done, 2 when called wrongly.`;

const { values, positionals } = readOptions(USAGE, {
  allowPositionals: true,
  options: {
    data: { type: "string", default: "data" },
    map: { type: "string" },
    propose: { type: "string" },
    write: { type: "boolean", default: false },
    overwrite: { type: "boolean", default: false },
    rejects: { type: "string" },
    encoding: { type: "string" },
    delimiter: { type: "string" },
  },
});
if (positionals.length === 0) misuse(USAGE, "a file is missing: which spreadsheet is to be brought in?");
mustBeFolder(USAGE, "--data", values.data);
const files = [...positionals, ...(values.map === undefined ? [] : [values.map])];
for (const path of files)
  if (!statSync(path, { throwIfNoEntry: false })?.isFile()) misuse(USAGE, `${path}: there is no such file`);
for (const path of [values.propose, values.rejects])
  if (path !== undefined) mustBeFolder(USAGE, `the folder of ${path},`, dirname(path));
if (values.delimiter !== undefined && !/^([^\r\n"]|\\t)$/.test(values.delimiter))
  misuse(USAGE, "--delimiter takes one sign, such as ';' or '\\t'");
if (values.rejects !== undefined && positionals.length > 1)
  misuse(USAGE, "--rejects takes one file, and so does the import then: rejected rows keep the form of their file");
const delimiter = values.delimiter?.replace("\\t", "\t");
// Loaded only now: what is wrong with the call is said at once.
const { importSheets } = await import("../src/build/tables/import-sheets.ts");
process.exitCode = await importSheets(positionals, { ...values, delimiter }, console.log);
