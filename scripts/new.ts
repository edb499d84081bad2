/** npm run new -- record|part|bulletin: writes a new one, complete and valid, from flags or from what is typed in a terminal. */
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

const [{ NEW_FIELDS, NEW_KINDS }, { moreFields }, { openTerminal }, { finishFirst }, { writeNew }] = await Promise.all([
  import("../src/build/write/new-fields.ts"),
  import("../src/build/write/more-fields.ts"),
  import("../src/build/write/open-terminal.ts"),
  import("../src/build/write/try-write.ts"),
  import("../src/build/write/write-new.ts"),
]);
const kind = NEW_KINDS.find((one) => one === what);
if (!kind) misuse(USAGE, `say what: ${NEW_KINDS.join(", ")}${what === undefined ? "" : `; '${what}' is none of them`}`);
for (const name of Object.keys(flags))
  if (!["data", "set"].includes(name) && !NEW_FIELDS[kind].some((field) => field.name === name))
    misuse(USAGE, `a ${kind} takes no --${name}`);
const more = moreFields(flags.set ?? []);
if ("fault" in more) misuse(USAGE, more.fault);
mustBeFolder(USAGE, "--data", folder);
if (finishFirst(folder, console.error) === "fault") process.exit(1);

const now = new Date();
const today = [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((it) => String(it).padStart(2, "0")).join("-");
const terminal = process.stdin.isTTY && process.stdout.isTTY ? openTerminal(process.stdin, process.stdout) : undefined;
const { code, said } = await writeNew({ folder, kind, flags, more: more.fields, today, terminal });
terminal?.close();
(code === 0 ? console.log : console.error)(said);
process.exitCode = code;
