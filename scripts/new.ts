/** npm run new -- record|part|bulletin: writes a new one, complete and valid, from flags or from what is typed in a terminal. */
import { existsSync } from "node:fs";
import { join } from "node:path";
import { parse } from "yaml";
import type { Catalog } from "../src/engine/records/catalog.ts";
import { misuse, mustBeFolder, readOptions } from "./command-line.ts";

const USAGE = `npm run new -- record [--title WORDS] [--kinds KIND,…] [--components ID,…] [--starts WORDS] [--scope SCOPE] [--issued DAY]
                      [--year YEAR] [--id ID] [--words WORDS,…] [--tell-apart WORDS] [--otherwise WORDS] [--caution WORDS]
                      [--customer WORDS] [--links ID,…] [--story WORDS]
npm run new -- part [--component ID] [--number NUMBER] [--name WORDS] [--aliases WORDS,…] [--hand left|right] [--castings NUMBER,…]
                    [--marks FEATURE=VALUE,…]
npm run new -- bulletin [--title WORDS] [--issued DAY] [--id ID] [--about WORDS] [--text WORDS]
  with each: --set FIELD=YAML for any further field of the file, such as --set 'built=[{ place: …, part: …, scope: all }]';
             --data DIR for another data folder than data. In a terminal it asks for what no flag says.
npm run new -- settings   prints settings by which an editor with a YAML language server checks the files of the data folder`;

const text = { type: "string", multiple: true } as const;
const FLAGS = [
  ...["title", "kinds", "components", "starts", "scope", "issued", "year", "id", "words", "tell-apart", "otherwise"],
  ...["caution", "customer", "links", "story", "component", "number", "name", "aliases", "hand", "castings", "marks"],
  ...["about", "text", "set"],
];
const { values, positionals } = readOptions(USAGE, {
  options: { ...Object.fromEntries(FLAGS.map((name) => [name, text])), data: { type: "string", default: "data" } },
  allowPositionals: true,
});
const flags = values as unknown as Record<string, string[] | undefined>;
const folder = String(values.data);
const [what, ...others] = positionals;
if (others.length > 0)
  misuse(USAGE, `'${others[0]}' is one word too many: put quotes round words that belong together`);
if (what === "settings") {
  mustBeFolder(USAGE, "--data", folder);
  const [{ editorSettings }, { readFolder }] = await Promise.all([
    import("../src/build/write/editor-settings.ts"),
    import("../src/build/data/read-folder.ts"),
  ]);
  const paths = [...(await readFolder(folder)).sources.keys()];
  console.log(JSON.stringify(editorSettings("schemas", folder, paths), null, 2));
  process.exit(0);
}

const [{ NEW_FIELDS, NEW_KINDS }, { readFolder }, { folderTexts }, gather, { newFile }, show, { tryWrite }] =
  await Promise.all([
    import("../src/build/write/new-fields.ts"),
    import("../src/build/data/read-folder.ts"),
    import("../src/build/write/folder-texts.ts"),
    import("../src/build/write/gather-answers.ts"),
    import("../src/build/write/new-file.ts"),
    import("../src/build/write/show-new.ts"),
    import("../src/build/write/try-write.ts"),
  ]);
const kind = NEW_KINDS.find((one) => one === what);
if (!kind)
  misuse(
    USAGE,
    what === undefined ? "say what: record, part or bulletin" : `'${what}': new ones are record, part or bulletin`,
  );
const fields = NEW_FIELDS[kind];
for (const name of Object.keys(flags))
  if (!["data", "set"].includes(name) && !fields.some((field) => field.name === name))
    misuse(USAGE, `a ${kind} takes no --${name}`);
const more = moreFields(flags.set ?? []);
mustBeFolder(USAGE, "--data", folder);
const read = await readFolder(folder);
if (!read.catalog) {
  console.error(
    `${folder} has errors, so nothing can be learnt from it: npm run check shows them. Nothing was written.`,
  );
  process.exit(1);
}

const now = new Date();
const today = [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((it) => String(it).padStart(2, "0")).join("-");
const desk = { catalog: read.catalog, today };
const gathered =
  process.stdin.isTTY && process.stdout.isTTY ? await asked() : gather.answersOfFlags(fields, flags, desk);
if ("stopped" in gathered) {
  console.error("\nStopped. Nothing was written.");
  process.exitCode = 1;
} else if ("missing" in gathered) {
  console.error(show.showMissing(kind, gathered));
  process.exitCode = 2;
} else {
  const file = newFile(
    folder,
    { ...read, catalog: read.catalog as Catalog },
    folderTexts(folder, read),
    kind,
    gathered.answers,
    more,
  );
  if (file.findings.length > 0) {
    console.error(show.showWrong(kind, file, folder, gathered.answers, { set: flags.set }));
    process.exitCode = 1;
  } else if (!file.grown && existsSync(join(folder, file.path))) {
    // A link, or what was written there a moment ago.
    console.error(`${folder}/${file.path} is there already. Nothing was written.`);
    process.exitCode = 1;
  } else {
    const fault = tryWrite(folder, new Map([[file.path, file.text]]));
    if (fault === undefined) console.log(show.showNew(kind, file, folder));
    else console.error(fault);
    process.exitCode = fault === undefined ? 0 : 1;
  }
}

async function asked() {
  const { openTerminal } = await import("../src/build/write/open-terminal.ts");
  const terminal = openTerminal(process.stdin, process.stdout);
  try {
    return await gather.answersAsked(fields, flags, desk, terminal);
  } finally {
    terminal.close();
  }
}

function moreFields(given: readonly string[]): Record<string, unknown> {
  return Object.fromEntries(
    given.map((one) => {
      const cut = one.indexOf("=");
      if (cut < 1) misuse(USAGE, `--set ${one}: write FIELD=YAML`);
      try {
        return [one.slice(0, cut), parse(one.slice(cut + 1)) as unknown];
      } catch (error) {
        return misuse(USAGE, `--set ${one}: this is not YAML: ${(error as Error).message.split("\n")[0]}`);
      }
    }),
  );
}
