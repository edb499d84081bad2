/** npm run export -- --to PLACE: the tables of a data folder as CSV files or as one workbook. */

import { statSync } from "node:fs";
import { misuse, mustBeFolder, readOptions } from "./command-line.ts";

const USAGE = `npm run export -- --to FOLDER | FILE.xlsx | FILE.csv [options]
Writes a CSV file for each table into the folder (comma, quotes as in RFC 4180, UTF-8 with a byte order mark), or one workbook,
or one table (--table) as one CSV file.

  --data DIR      the data folder (default: data)
  --table NAME    only this table, such as records or settings; as often as needed
  --overwrite     write over files that are there already`;

const { values } = readOptions(USAGE, {
  options: {
    data: { type: "string", default: "data" },
    to: { type: "string" },
    table: { type: "string", multiple: true, default: [] },
    overwrite: { type: "boolean", default: false },
  },
});
const { data, to, table: tables, overwrite } = values;
if (to === undefined) misuse(USAGE, "--to is missing: where shall the tables go?");
mustBeFolder(USAGE, "--data", data);
const there = statSync(to, { throwIfNoEntry: false });
if (there && there.isDirectory() === /\.(xlsx|csv)$/i.test(to))
  misuse(USAGE, `--to ${to}: that is a ${there.isDirectory() ? "folder" : "file"}`);
// Loaded only now: what is wrong with the call is said at once.
const { TABLES } = await import("../src/build/tables/all-tables.ts");
const names = TABLES.map(({ name }) => name);
const unknown = tables.find((name) => !names.includes(name));
if (unknown !== undefined) misuse(USAGE, `no table is called '${unknown}'; tables are ${names.join(", ")}`);
const { exportTables } = await import("../src/build/tables/export-tables.ts");
process.exitCode = await exportTables({ data, to, tables, overwrite }, console.log);
