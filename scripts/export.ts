/** npm run export -- --to PLACE: the tables of a data folder as CSV files or as one workbook. */

import { statSync } from "node:fs";
import { TABLES } from "../src/build/tables/all-tables.ts";
import { exportTables } from "../src/build/tables/export-tables.ts";
import { misuse, mustBeFolder, readOptions } from "./command-line.ts";

const NAMES = TABLES.map(({ name }) => name);
const USAGE = `npm run export -- --to FOLDER | FILE.xlsx [options]
Writes a CSV file for each table into the folder (comma, quotes as in RFC 4180, UTF-8 with a byte order mark), or one workbook.

  --data DIR      the data folder (default: data)
  --table NAME    only this table, as often as needed: ${NAMES.join(", ")}
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
const unknown = tables.find((name) => !NAMES.includes(name));
if (unknown !== undefined) misuse(USAGE, `no table is called '${unknown}'`);
const there = statSync(to, { throwIfNoEntry: false });
if (there && there.isDirectory() === /\.xlsx$/i.test(to))
  misuse(USAGE, `--to ${to}: that is a ${there.isDirectory() ? "folder" : "file"}`);
process.exitCode = await exportTables({ data, to, tables, overwrite }, console.log);
