/** npm run cite -- FILE…: looks whether documents that live elsewhere cite the records as they stand now. */
import { existsSync, readFileSync, realpathSync } from "node:fs";
import { basename, dirname } from "node:path";
import { MISUSE, misuse, mustBeFolder, readOptions } from "./command-line.ts";

const USAGE = `npm run cite -- FILE… [--date DAY] [--fix] [--json] [--data DIR]
  looks in Markdown, HTML and plain text for citations of the records of the data folder (data): [[ID]], links to their site, and
  ids of records in the text. Found is what is unknown, moved, withdrawn, cancelled or superseded; then the exit code is 1
  A code that only looks like an id, with letters that no id has, is told too and is no reason for it
  --date  the day of the documents, year-month-day; else the one that a document says itself (date, issued or published)
  --fix   writes the new id in place of one that moved; nothing else is touched`;

const { values, positionals } = readOptions(USAGE, {
  options: {
    data: { type: "string", default: "data" },
    date: { type: "string" },
    fix: { type: "boolean", default: false },
    json: { type: "boolean", default: false },
  },
  allowPositionals: true,
});
if (positionals.length === 0) misuse(USAGE, "name at least one file");
const folder = mustBeFolder(USAGE, "--data", values.data);
const [
  { readFolder },
  { day },
  { openReading },
  { citeDocuments },
  { countCited, showCited, showMended, showStrange },
  { tryWrite },
] = await Promise.all([
  import("../src/build/data/read-folder.ts"),
  import("../src/engine/records/shapes/common.ts"),
  import("../src/build/cite/judge-cited.ts"),
  import("../src/build/cite/cite-documents.ts"),
  import("../src/build/cite/show-cited.ts"),
  import("../src/build/write/try-write.ts"),
]);
if (values.date !== undefined && !day.safeParse(values.date).success)
  misuse(USAGE, `--date ${values.date}: a day is written year-month-day`);
// All are read before any is judged: a name mistyped is no reason to mend only some of them.
const documents = onlyOnce(positionals).map((file) => ({ file, text: textOf(file) }));
const { catalog } = await readFolder(folder);
if (!catalog) {
  console.error(`${folder} has errors, so nothing can be compared with it: npm run check shows them.`);
  process.exit(MISUSE);
}
const reading = openReading(catalog);
const { citations, findings, mended, strange, faults } = citeDocuments(reading, documents, {
  ...(values.date === undefined ? {} : { date: values.date }),
  ...(values.fix ? { write } : {}),
});
if (values.json)
  console.log(JSON.stringify({ documents: documents.length, citations, mended, findings, strange }, null, 2));
else {
  for (const one of mended) console.log(showMended(one));
  if (mended.length > 0) console.log();
  for (const finding of findings) console.log(`${showCited(finding)}\n`);
  for (const one of strange) console.log(showStrange(one));
  if (strange.length > 0) console.log();
  console.log(countCited(documents.length, citations, findings.length, mended.length, strange.length));
}
for (const fault of faults) console.error(fault);
process.exitCode = faults.length > 0 || findings.length > 0 ? 1 : 0;

/** A link to a file stays a link. */
function write(file: string, text: string, read: string): string | undefined {
  const place = realpathSync(file);
  const name = basename(place);
  return tryWrite(dirname(place), new Map([[name, text]]), new Map(), new Map([[name, read]]));
}

/** The first name of each file: what is mended under one is changed under the other. */
function onlyOnce(files: readonly string[]): string[] {
  const places = files.map((file) => (existsSync(file) ? realpathSync(file) : file));
  return files.filter((_, i) => places.indexOf(places[i] as string) === i);
}

function textOf(file: string): string {
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(readFileSync(file));
  } catch (error) {
    if (error instanceof TypeError) return misuse(USAGE, `${file} is not UTF-8 text: save it with that encoding`);
    return misuse(USAGE, `${file} cannot be read: ${(error as Error).message}`);
  }
}
