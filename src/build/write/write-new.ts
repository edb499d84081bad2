/** Writes a new record, part or bulletin into a data folder, from flags and from what is typed. */
import { isFaultless, readFolder } from "../data/read-folder.ts";
import { MAX_BYTES } from "../data/source.ts";
import { folderTexts } from "./folder-texts.ts";
import { answersAsked, answersOfFlags, type Flags, type Terminal } from "./gather-answers.ts";
import { saidAssumed, withNamedYears } from "./named-years.ts";
import { NEW_FIELDS, type NewKind } from "./new-fields.ts";
import { newFile } from "./new-file.ts";
import { showByHand, showMissing, showNew, showStopped, showWrong } from "./show-new.ts";
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
  const fields = kind === "record" ? withNamedYears(NEW_FIELDS[kind]) : NEW_FIELDS[kind];
  const desk = { catalog, today };
  const gathered = terminal ? await answersAsked(fields, flags, desk, terminal) : answersOfFlags(fields, flags, desk);
  if ("stopped" in gathered) return { code: 1, said: showStopped(kind, folder, gathered.answers, { set: flags.set }) };
  if ("missing" in gathered) {
    const isFar = kind === "record" && gathered.missing.includes("issued");
    const why = isFar
      ? `\n--issued: today, ${today}, is far from the model years of these cars, so it is not taken`
      : "";
    return { code: 2, said: showMissing(kind, gathered) + why };
  }
  const { answers } = gathered;
  const texts = folderTexts(folder, read);
  const file = newFile(folder, { ...read, catalog }, texts, kind, answers, more);
  if (!isFaultless(file.findings)) return { code: 1, said: showWrong(kind, file, folder, answers, { set: flags.set }) };
  if (file.lost.length > 0) return { code: 1, said: showByHand(file, folder) };
  if (Buffer.byteLength(file.text) > MAX_BYTES)
    return wrong(`${folder}/${file.path} would be larger than ${MAX_BYTES} bytes, and would not be read any more`);
  const fault = tryWrite(folder, new Map([[file.path, file.text]]), new Map(), file.grown ? texts : new Map());
  if (fault !== undefined) return { code: 1, said: fault };
  // Whoever was asked in a terminal has seen what was suggested.
  const assumed = terminal ? "" : saidAssumed(answers, { flags, today });
  return { code: 0, said: [assumed, showNew(kind, file, folder)].filter(Boolean).join("\n") };
}

function wrong(why: string): WrittenNew {
  return { code: 1, said: `${why}. Nothing was written.` };
}
