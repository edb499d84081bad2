/**
 * npm run check [-- --data DIR] [--json]: everything that is wrong with a data folder, all at once.
 * npm run check -- --words: which words of it the ask box does not know.
 */
import { parseArgs } from "node:util";
import { checkWords, wordsLackingIn } from "../src/build/data/check-words.ts";
import { readFolder } from "../src/build/data/read-folder.ts";
import { countFindings, showFinding } from "../src/build/data/show-findings.ts";

/** A terminal holds so many, and the frequent ones come first. */
const MOST_WORDS = 100;

const { values } = parseArgs({
  options: {
    data: { type: "string", default: "data" },
    json: { type: "boolean", default: false },
    words: { type: "boolean", default: false },
  },
});
const read = await readFolder(values.data);
const findings = [...read.findings, ...checkWords(read)];
const print = (answer: unknown): void => console.log(JSON.stringify(answer, null, 2));
if (values.words && read.catalog) {
  const { words, more } = wordsLackingIn(read, MOST_WORDS);
  if (values.json) print({ words, more });
  else {
    for (const { word, count, file, line, column } of words)
      console.log(`${String(count).padStart(5)}  ${word.padEnd(20)} ${values.data}/${file}:${line}:${column}`);
    const all = words.length + more;
    console.log(
      `${more > 0 ? `${words.length} of ${all}` : all} words that no name, alias or saying of the data holds`,
    );
  }
} else if (values.json) print({ files: read.files, findings });
else {
  for (const finding of findings) console.log(`${showFinding(finding, values.data)}\n`);
  console.log(`${read.files} files: ${countFindings(findings)}`);
}
process.exitCode = read.catalog ? 0 : 1;
