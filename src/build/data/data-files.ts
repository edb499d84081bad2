import { type DataFile, kindOf } from "../../engine/records/file-kinds.ts";
import type { Source } from "./source.ts";

/** What was read of a folder, as the engine takes it. Of what lies where no kind of file does, nothing. */
export function dataFilesOf(sources: Iterable<readonly [path: string, source: Source]>): DataFile[] {
  return [...sources].flatMap(([path, { value, faults }]): DataFile[] => {
    const kind = kindOf(path);
    return kind ? [{ path, kind, value, broken: faults.length > 0 }] : [];
  });
}
