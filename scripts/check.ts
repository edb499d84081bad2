/** npm run check: everything that is wrong with a data folder, all at once. */
import { type CheckedFolder, checkFolder } from "../src/build/data/check-folder.ts";
import { wordsLackingIn } from "../src/build/data/check-words.ts";
import { type ReadFolder, readFolder } from "../src/build/data/read-folder.ts";
import { RULE_TEXTS } from "../src/build/data/rule-texts.ts";
import { showAccepted, showChecked } from "../src/build/data/show-checked.ts";
import { listRules, showRule } from "../src/build/data/show-rules.ts";
import { toSarif } from "../src/build/data/to-sarif.ts";
import { withAgainst } from "../src/build/data/with-against.ts";
import { NoManifest } from "../src/build/publish/read-manifest.ts";
import { nearest } from "../src/engine/scope/nearest.ts";
import { goApart } from "./check-apart.ts";
import { misuse, mustBeFolder, readOptions } from "./command-line.ts";

const USAGE = `npm run check [-- --data DIR]      everything that is wrong with a data folder (data)
  --against PUBLISHED              and which addresses of a published site (its folder or manifest) would die
  --json | --sarif                 for programs; SARIF 2.1.0 for code review tools
npm run check -- --accepted        what files accept as it stands, each with its reason
npm run check -- --rules [RULE]    the rules, or one of them with an example
npm run check -- --words [--json]  the words that the ask box does not know

Exit code: 0, 1 when the data has an error, 2 when called wrongly.`;

/** A terminal holds so many, and the frequent ones come first. */
const MOST_WORDS = 100;

const { values, positionals } = readOptions(USAGE, {
  options: {
    data: { type: "string" },
    against: { type: "string" },
    json: { type: "boolean", default: false },
    sarif: { type: "boolean", default: false },
    accepted: { type: "boolean", default: false },
    rules: { type: "boolean", default: false },
    words: { type: "boolean", default: false },
  },
  allowPositionals: true,
});
if (positionals.length > 0 && !values.rules) misuse(USAGE, `'${positionals[0]}' is no option`);
const apart = goApart(values);
if (apart) misuse(USAGE, `${apart.join(" and ")} do not go together`);
const folder = values.data ?? "data";
const print = (answer: unknown): void => console.log(JSON.stringify(answer, null, 2));

if (values.rules) tellRules(positionals);
else {
  const read = await readFolder(mustBeFolder(USAGE, "--data", folder));
  if (values.words && read.catalog) tellWords(read);
  else tellFindings(read);
  if (!read.catalog) process.exitCode = 1;
}

function tellRules(wanted: readonly string[]): void {
  const ids = RULE_TEXTS.map(({ id }) => id);
  const unknown = wanted.find((id) => !ids.includes(id));
  if (unknown !== undefined) {
    const meant = nearest(unknown, ids);
    misuse(USAGE, `no rule is called '${unknown}'${meant ? `: did you mean '${meant}'?` : ""}`);
  }
  const rules = RULE_TEXTS.filter(({ id }) => wanted.includes(id));
  console.log(rules.length > 0 ? rules.map(showRule).join("\n\n") : listRules());
}

function tellFindings(read: ReadFolder): void {
  const { compared, ...checked } = compare(checkFolder(read), read);
  if (values.sarif) print(toSarif(checked, folder));
  // A program that asked for words would take the findings for them.
  else if (values.json && values.words) console.error(showChecked(checked, read.files, folder));
  else if (values.json) print({ files: read.files, ...checked });
  else if (values.accepted && read.catalog) console.log(showAccepted(checked, folder));
  else console.log(showChecked(checked, read.files, folder, compared));
  if (checked.findings.some(({ severity }) => severity === "error")) process.exitCode = 1;
}

function compare(checked: CheckedFolder, read: ReadFolder): CheckedFolder & { readonly compared?: number } {
  try {
    return values.against === undefined ? checked : withAgainst(checked, read, values.against);
  } catch (error) {
    if (!(error instanceof NoManifest)) throw error;
    return misuse(USAGE, `--against: ${error.message.replace(/\.$/, "")}`);
  }
}

function tellWords(read: ReadFolder): void {
  const { words, more } = wordsLackingIn(read, MOST_WORDS);
  if (values.json) {
    print({ words, more });
    return;
  }
  for (const { word, count, file, line, column } of words)
    console.log(`${String(count).padStart(5)}  ${word.padEnd(20)} ${folder}/${file}:${line}:${column}`);
  const all = words.length + more;
  console.log(`${more > 0 ? `${words.length} of ${all}` : all} words that no name, alias or saying of the data holds`);
}
