/**
 * From which rows a complaint comes. Of a contradiction only those count which filled one of its places, if there are any:
 *
 *   it is about a field that a row filled, or about an entry that a row made     that row: the nearest one on the way to the field
 *   it is about another field of a file that rows have changed                   every row that changed the file
 *   it is about another file, and names something that rows have brought in      those rows: 'part 7 still exists' where 7 moved
 *   else                                                                         every row, so that nothing faulty is written
 */
import type { Complaint } from "../../engine/records/complaint.ts";
import type { Draft, FieldPath, Touch } from "./drafts.ts";
import type { ImportRow } from "./import-rows.ts";

export function blame(complaint: Complaint, drafts: readonly Draft[], written: readonly ImportRow[]): ImportRow[] {
  const places = [complaint, ...(complaint.also ?? [])];
  const filled = places.filter(({ file, path }) => {
    const touched = drafts.find((one) => one.path === file)?.touched.values() ?? [];
    return path.length > 0 && [...touched].some((touch) => touch.path.length > 0 && begins(path, touch.path));
  });
  if (filled.length > 0 && places.length > 1)
    return [...new Set(filled.flatMap(({ file, path }) => blameOne({ ...complaint, file, path }, drafts, written)))];
  return blameOne(complaint, drafts, written);
}

function blameOne(complaint: Complaint, drafts: readonly Draft[], written: readonly ImportRow[]): ImportRow[] {
  const draft = drafts.find(({ path }) => path === complaint.file);
  if (draft) {
    const touches = [...draft.touched.values()];
    const near = nearestOf(touches, complaint.path);
    // The first of several rows made the file, and all of them want it.
    const shared = near.some(({ path, row }) => path.length === 0 && row.table.rows !== "file");
    if (near.length > 0 && !shared) return unique(near);
    const below = touches.filter(({ path }) => begins(path, complaint.path) && complaint.path.length > 0);
    return unique(below.length > 0 ? below : touches);
  }
  const named = [...complaint.message.matchAll(/'([^']+)'/g)].map(([, name]) => name as string);
  const naming = written.filter(({ parents, fields }) => {
    const values = [...parents, ...fields.flatMap(([, value]) => (Array.isArray(value) ? value : [value]))].map(String);
    return named.some((name) => values.includes(name));
  });
  return naming.length > 0 ? naming : [...written];
}

/** The touches furthest on the way to a field. */
function nearestOf(touches: readonly Touch[], path: FieldPath): Touch[] {
  const leading = touches.filter((touch) => begins(path, touch.path));
  const furthest = Math.max(...leading.map((touch) => touch.path.length));
  return leading.filter((touch) => touch.path.length === furthest);
}

function begins(path: FieldPath, start: FieldPath): boolean {
  return start.every((step, i) => path[i] === step);
}

function unique(touches: readonly Touch[]): ImportRow[] {
  return [...new Set(touches.map(({ row }) => row))];
}
