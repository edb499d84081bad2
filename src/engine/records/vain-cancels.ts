/**
 * Cancellations that end nothing.
 *
 *   A record cannot end itself, nor one that was issued after it last spoke (its last revision counts).
 *   Where records end each other, in a circle, none of them is ended.
 *
 * Such a cancellation is a slip, and a finding of the check. The answers go on as if it were not there: what it seems to end may be a
 * warning.
 */
import type { ChangeRecord } from "./catalog.ts";

type Records = ReadonlyMap<string, ChangeRecord>;

/** Why nothing of a record is ended by one that says so; nothing where it is. Both are known, and neither is withdrawn. */
export function whyVain(records: Records, by: ChangeRecord, target: ChangeRecord): string | undefined {
  if (target === by) return "it is this record itself";
  if (!isInTime(by, target)) return `it was issued later, on ${target.facts.issued}`;
  if (leadsTo(records, target, by)) return "it cancels this record in turn";
  return undefined;
}

/** The records without the statements by which they end nothing; what an editor wrote stays in `stated`. */
export function withoutVainCancels(records: ReadonlyMap<string, ChangeRecord>): Map<string, ChangeRecord> {
  return new Map(
    [...records].map(([id, record]) => {
      const statements = record.statements.filter((it) => {
        const target = it.type === "cancels" ? records.get(it.target) : undefined;
        return target === undefined || whyVain(records, record, target) === undefined;
      });
      return [id, statements.length < record.statements.length ? { ...record, statements } : record];
    }),
  );
}

function isInTime(by: ChangeRecord, target: ChangeRecord): boolean {
  return (by.facts.revised ?? by.facts.issued) >= target.facts.issued;
}

/** Whether a record, or one that it ends, and so on, ends another one. */
function leadsTo(records: Records, from: ChangeRecord, to: ChangeRecord): boolean {
  const seen = new Set<ChangeRecord>();
  const todo = [from];
  for (let at = todo.pop(); at !== undefined; at = todo.pop()) {
    if (at === to) return true;
    if (seen.has(at)) continue;
    seen.add(at);
    for (const it of at.facts.withdrawn === undefined ? at.stated : []) {
      const target = it.type === "cancels" ? records.get(it.target) : undefined;
      if (target !== undefined && target !== at && isInTime(at, target)) todo.push(target);
    }
  }
  return false;
}
