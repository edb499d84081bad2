import type { ChangeRecord } from "./catalog.ts";

/** A trap is a change in which some part goes on that must not be used: nothing stops the hand that makes the mistake. */
export function isTrap(record: ChangeRecord): boolean {
  return record.statements.some(
    (statement) => statement.type === "stands-in" && statement.verdict === "must-not-be-used",
  );
}
