/** Reads a data folder as it would be with some files written otherwise, audit included, so that nothing is written that does not hold. */
import { FILE_KINDS, type FileKind, kindOf } from "../../engine/records/file-kinds.ts";
import { readCatalog } from "../../engine/records/read-catalog.ts";
import { audited } from "../data/audited.ts";
import { dataFilesOf } from "../data/data-files.ts";
import { byGravity, type Finding, locate, type ReadFolder } from "../data/read-folder.ts";
import { readSource, type Source } from "../data/source.ts";

export function readWith(
  read: Pick<ReadFolder, "sources">,
  files: ReadonlyMap<string, string>,
  gone: readonly string[] = [],
): Pick<ReadFolder, "catalog" | "findings" | "sources"> {
  const sources = new Map<string, Source>(read.sources);
  for (const path of gone) sources.delete(path);
  for (const [path, text] of files) {
    const kind = kindOf(path);
    if (!kind) throw new Error(`no kind of file lies at ${path}`);
    const { body }: FileKind = FILE_KINDS[kind];
    sources.set(path, readSource(path, text, body));
  }
  const sorted = [...sources].sort(([a], [b]) => (a < b ? -1 : 1));
  const whole = readCatalog(dataFilesOf(sorted));
  const findings: Finding[] = [...sorted.flatMap(([, source]) => source.faults), ...audited(whole)]
    .map((complaint) => locate(complaint, sources.get(complaint.file), sources))
    .sort(byGravity);
  return { catalog: whole.catalog, findings, sources: new Map(sorted) };
}
