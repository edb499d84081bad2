/**
 * Files and folders that others rely on and that are not where they are read: under a wrong name, in a wrong place, or not there at
 * all. Each is one complaint, the cause; what only follows from it is counted in its message and not listed. It comes back when the
 * cause is mended and it has not vanished.
 *
 * A file that is misplaced (`misplaced.ts`) is a cause. If it is read as what it is not, what is wrong with its shape follows from it.
 *
 * A folder is a cause, if no file in it is read, none that is misplaced was meant to lie there, and many names are unknown that only
 * its files define. A few are shown one by one: a small data folder does without most folders, and there they are slips.
 *
 * From a file that is a cause follow the complaints about names that it may define, just as from a broken file (`echoOf`): so a name
 * that does not stand in it is still complained about. From a folder that is a cause follow the complaints about names that can be
 * defined nowhere else. What is cited in a bulletin may be a record, a part or a component: such a complaint follows, if another one
 * says which, or if no name that is known is near it.
 *
 * Files that lie in one folder and were all meant to lie in one are one cause together.
 */
import { DEFINED_IN, echoOf, isOnlyOf } from "./broken-files.ts";
import type { Complaint } from "./complaint.ts";
import { type DataFile, FILE_KINDS, type FileKindName } from "./file-kinds.ts";
import { linesWithoutFile } from "./lines-without-file.ts";
import { nearestFolder, type UnreadFile } from "./meant-place.ts";
import { type Misplaced, misplacedFiles } from "./misplaced.ts";
import { strayFile } from "./stray-file.ts";

/** More unknown names than these are no slips. */
const FEW = 5;

/** The complaints about `files`, and those about what is `unread`; the causes instead of what follows from them. */
export function withCauses(
  complaints: readonly Complaint[],
  files: readonly DataFile[],
  unread: readonly UnreadFile[],
): Complaint[] {
  const nested = files.length === 0 ? nestedFolder(unread) : undefined;
  if (nested !== undefined) return [nested];
  const misplaced = misplacedFiles(complaints, files, unread);
  const isMisplaced = new Set(misplaced.map(({ path }) => path));
  const right = files.filter(({ path }) => !isMisplaced.has(path));
  let left = withoutTraits(complaints, misplaced);
  const causes: Complaint[] = [];
  for (const group of Map.groupBy(misplaced, groupOf).values()) {
    const isEcho = echoOf(group.map(({ meant, value }) => ({ path: meant.path, kind: meant.kind, value })));
    const own = new Set(group.map(({ path }) => path));
    const [follow, stay] = parted(left, (one) => isEcho(one) || own.has(one.file));
    causes.push(causeOf(group, files, follow));
    left = stay;
  }
  for (const kind of ["system", "parts", "change", "bulletin"] as const) {
    if ([...right, ...misplaced.map(({ meant }) => meant)].some((one) => one.kind === kind)) continue;
    const [follow, stay] = parted(left, echoOfFolder(kind, left));
    if (follow.length <= FEW) continue;
    causes.push(noFolder(kind, follow));
    left = stay;
  }
  const isElsewhere = misplaced.some(({ meant }) => meant.kind === "vehicles");
  return [
    ...causes,
    ...(isElsewhere ? [] : linesWithoutFile(files)),
    ...left,
    ...unread.filter(({ path }) => !isMisplaced.has(path)).flatMap(strayFile),
  ];
}

function parted(list: readonly Complaint[], isFirst: (one: Complaint) => boolean): [Complaint[], Complaint[]] {
  const parts: [Complaint[], Complaint[]] = [[], []];
  for (const one of list) parts[isFirst(one) ? 0 : 1].push(one);
  return parts;
}

/** That the traits are missing is what their file in a wrong place says already. */
function withoutTraits(complaints: readonly Complaint[], misplaced: readonly Misplaced[]): readonly Complaint[] {
  return misplaced.some(({ meant }) => meant.kind === "traits")
    ? complaints.filter(({ rule }) => rule !== "missing-file")
    : complaints;
}

/** Only what lies in a folder together can be meant as one. Files that were meant to lie beside the folders have a name each. */
function groupOf({ path, meant }: Misplaced): string {
  return path.includes("/") || meant.path.includes("/") ? `${topOf(path)} ${topOf(meant.path)}` : path;
}

function topOf(path: string): string {
  return path.slice(0, path.indexOf("/") + 1);
}

function causeOf(group: readonly Misplaced[], files: readonly DataFile[], follow: readonly Complaint[]): Complaint {
  const [{ path, meant, readAs }] = group as [Misplaced, ...Misplaced[]];
  const [from, to] = [topOf(path), topOf(meant.path)];
  const others = group.length - 1;
  if (others > 0 && readAs === undefined && from !== to && nearestFolder(from.slice(0, -1)) === to.slice(0, -1)) {
    const isThere = files.some((file) => topOf(file.path) === to);
    return cause(
      from,
      `the folder is not read, and seems to be ${to}: ${group.length} files lie in it, such as ${path}`,
      isThere ? `move its files to ${to}` : `call it ${to}`,
      follow,
    );
  }
  const isTaken = files.some((file) => file.path === meant.path);
  const { what } = FILE_KINDS[meant.kind];
  const here = readAs === undefined ? "it is not read here" : `it is read as ${FILE_KINDS[readAs].what}`;
  return cause(
    path,
    `${here}, and seems to be ${what}${others > 0 ? `; so it is with ${counted(others, "more file")} in ${from || "the data folder"}` : ""}`,
    isTaken
      ? `such a file lies in ${meant.path} already: take one of the two away`
      : `${from === to ? "call it" : "move it to"} ${meant.path}${others > 0 ? ", and the others likewise" : ""}${meant.isNear || follow.length === 0 ? "" : ", or take out what names it"}`,
    follow,
    meant.isNear ? [] : follow.slice(0, 1),
  );
}

/** What follows when no file of a kind is read, and no file in a wrong place is one. */
function echoOfFolder(kind: FileKindName, complaints: readonly Complaint[]): (complaint: Complaint) => boolean {
  const names = new Set(complaints.filter((one) => isOnlyOf(one, kind)).map(({ unknown }) => unknown?.name));
  const mayBe = ({ unknown }: Complaint): boolean => unknown?.as.some((naming) => DEFINED_IN[naming] === kind) ?? false;
  return (one) =>
    isOnlyOf(one, kind) || (mayBe(one) && (names.has(one.unknown?.name) || one.unknown?.meant === undefined));
}

function noFolder(kind: FileKindName, follow: readonly Complaint[]): Complaint {
  const { home, what } = FILE_KINDS[kind];
  return cause(
    topOf(home),
    "the folder is missing, or holds nothing that is read, so what others name of it is not known",
    `each file ${home} holds ${what}; move them there from where they are, or write them`,
    follow,
    follow.slice(0, 1),
  );
}

/** The whole data folder may lie one folder deeper than was said. */
function nestedFolder(unread: readonly UnreadFile[]): Complaint | undefined {
  const traits = unread.find(({ path }) => path.endsWith(`/${FILE_KINDS.traits.home}`));
  const folder = traits?.path.slice(0, -FILE_KINDS.traits.home.length);
  return folder === undefined
    ? undefined
    : cause(
        folder,
        "nothing is read, as the data folder seems to be this one",
        `take it as the data folder, or move what lies in ${folder} one folder up`,
        [],
      );
}

/** Where it is a guess, `examples` of what follows from it. */
function cause(
  file: string,
  message: string,
  hint: string,
  follow: readonly Complaint[],
  examples: readonly Complaint[] = [],
): Complaint {
  const count = follow.length;
  const more = `${counted(count, "complaint")} that only ${count === 1 ? "follows from this is" : "follow from this are"} not shown`;
  const also = examples.map((one) => ({ file: one.file, path: one.path, message: one.message, ...placeIn(one) }));
  return {
    ...{ severity: "error", rule: "missing-file", file, path: [] },
    message: count === 0 ? message : `${message}. ${more}`,
    hint,
    ...(also.length > 0 ? { also } : {}),
    ...(count === 0 ? {} : { follow: count }),
  };
}

function placeIn({ key, within }: Complaint): Pick<Complaint, "key" | "within"> {
  return { ...(key === undefined ? {} : { key }), ...(within === undefined ? {} : { within }) };
}

function counted(count: number, word: string): string {
  return `${count} ${word}${count === 1 ? "" : "s"}`;
}
