/** npm run rename -- OLD NEW: gives a record, part, component, system or bulletin another id, everywhere at once. */
import { misuse, mustBeFolder, readOptions } from "./command-line.ts";

const USAGE = `npm run rename -- OLD NEW [--kind KIND] [--why WORDS] [--dry-run] [--data DIR]
  gives a record, part, component, system or bulletin of the data folder (data) another id: every reference, citation and mention
  changes, and moved.yaml leads from the old id to the new one
  --kind     record, part, component, system or bulletin, where OLD is the id of several
  --why      why, in words for the page of the old id ("Renamed.")
  --dry-run  only shows what would change`;

const { values, positionals } = readOptions(USAGE, {
  options: {
    kind: { type: "string" },
    why: { type: "string", default: "Renamed." },
    "dry-run": { type: "boolean", default: false },
    data: { type: "string", default: "data" },
  },
  allowPositionals: true,
});
const [old, next] = positionals;
if (old === undefined || next === undefined) misuse(USAGE, "two ids are needed: the old one and the new one");
if (positionals.length > 2) misuse(USAGE, `two ids are needed, and '${positionals[2]}' is a third`);
const folder = mustBeFolder(USAGE, "--data", values.data);
const [
  { readFolder },
  { folderTexts },
  { renameId },
  { KINDS_TO_RENAME },
  { showNotRenamed, showRenamed },
  { finishFirst, tryWrite },
] = await Promise.all([
  import("../src/build/data/read-folder.ts"),
  import("../src/build/write/folder-texts.ts"),
  import("../src/build/write/rename-id.ts"),
  import("../src/build/write/what-to-rename.ts"),
  import("../src/build/write/show-renamed.ts"),
  import("../src/build/write/try-write.ts"),
]);
const kind = KINDS_TO_RENAME.find((one) => one === values.kind);
if (values.kind !== undefined && kind === undefined)
  misuse(USAGE, `--kind ${values.kind}: kinds are ${KINDS_TO_RENAME.join(", ")}`);
const first = values["dry-run"] ? "nothing" : finishFirst(folder, console.error);
if (first === "fault") process.exit(1);
const read = await readFolder(folder);
const renaming = { old, next, kind, why: values.why };
if (first === "finished" && read.catalog?.moved.some((move) => move.from === old && move.to === next)) {
  console.log(`'${old}' leads to '${next}'. Next: npm run check`);
  process.exit(0);
}
const texts = folderTexts(folder, read);
const renamed = renameId(folder, read, texts, renaming);
if ("refused" in renamed) {
  console.error(showNotRenamed(renamed, folder));
  process.exitCode = 1;
} else {
  const fault = values["dry-run"] ? undefined : tryWrite(folder, renamed.files, renamed.gone, texts);
  if (fault === undefined) console.log(showRenamed(renamed, renaming, folder, values["dry-run"]));
  else console.error(fault);
  process.exitCode = fault === undefined ? 0 : 1;
}
