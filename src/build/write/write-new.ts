/** Writes a new record, part or bulletin into a data folder, from flags and from what is typed. */
import { existsSync } from "node:fs";
import { join } from "node:path";
import { isFaultless, readFolder } from "../data/read-folder.ts";
import { folderTexts } from "./folder-texts.ts";
import { answersAsked, answersOfFlags, type Flags, type Terminal } from "./gather-answers.ts";
import { NEW_FIELDS, type NewKind } from "./new-fields.ts";
import { newFile } from "./new-file.ts";
import { showMissing, showNew, showStopped, showWrong } from "./show-new.ts";
import { tryWrite } from "./try-write.ts";

export interface WriteNew {
  readonly folder: string;
  readonly kind: NewKind;
  readonly flags: Flags;
  /** Fields that are not asked for. */
  readonly more: Readonly<Record<string, unknown>>;
  /** A day, year-month-day. */
  readonly today: string;
  /** Nobody to ask: what the flags do not say is missing. */
  readonly terminal?: Terminal | undefined;
}

/** Exit code and what to say: 0 and the file that was written; 1 what would be wrong; 2 what is missing. */
export interface WrittenNew {
  readonly code: 0 | 1 | 2;
  readonly said: string;
}

export async function writeNew({ folder, kind, flags, more, today, terminal }: WriteNew): Promise<WrittenNew> {
  const read = await readFolder(folder);
  const { catalog } = read;
  if (!catalog) return wrong(`${folder} has errors, so nothing can be learnt from it: npm run check shows them`);
  const fields = NEW_FIELDS[kind];
  const desk = { catalog, today };
  const gathered = terminal ? await answersAsked(fields, flags, desk, terminal) : answersOfFlags(fields, flags, desk);
  if ("stopped" in gathered) return { code: 1, said: showStopped(kind, folder, gathered.answers, { set: flags.set }) };
  if ("missing" in gathered) return { code: 2, said: showMissing(kind, gathered) };
  const { answers } = gathered;
  const file = newFile(folder, { ...read, catalog }, folderTexts(folder, read), kind, answers, more);
  if (!isFaultless(file.findings)) return { code: 1, said: showWrong(kind, file, folder, answers, { set: flags.set }) };
  // A link, or what somebody else wrote there a moment ago.
  if (!file.grown && existsSync(join(folder, file.path))) return wrong(`${folder}/${file.path} is there already`);
  const fault = tryWrite(folder, new Map([[file.path, file.text]]));
  return fault === undefined ? { code: 0, said: showNew(kind, file, folder) } : { code: 1, said: fault };
}

function wrong(why: string): WrittenNew {
  return { code: 1, said: `${why}. Nothing was written.` };
}
