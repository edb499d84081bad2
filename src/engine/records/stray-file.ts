import { nearest } from "../scope/nearest.ts";
import type { Complaint } from "./complaint.ts";
import { FILE_KINDS } from "./file-kinds.ts";
import { meantPlace, nearestFolder, type UnreadFile } from "./meant-place.ts";

const NAMES = Object.values(FILE_KINDS).flatMap(({ home }) => (home.includes("<") ? [] : [home]));

/** A warning about a file that an editor may take for one that is read; pictures, sheets and the like are none. */
export function strayFile(file: UnreadFile): Complaint[] {
  const { path } = file;
  if (!/\.(ya?ml|md)$/.test(path)) return [];
  const meant = meantPlace(file)?.path ?? nearestPath(path);
  return [
    {
      severity: "warning",
      rule: "stray-file",
      file: path,
      path: [],
      message: "no kind of file lies here, so it is not read",
      hint: meant
        ? `did you mean ${meant}?`
        : "move it to vehicles/, components/, parts/, changes/<year>/ or bulletins/",
    },
  ];
}

/** Of a file that holds nothing of any kind. */
function nearestPath(path: string): string | undefined {
  const [top = "", ...below] = path.split("/");
  const folder = below.length > 0 ? nearestFolder(top) : undefined;
  return folder !== undefined && folder !== top ? [folder, ...below].join("/") : nearest(path, NAMES);
}
