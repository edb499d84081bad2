import { whyVain } from "../../records/vain-cancels.ts";
import { placeOf } from "../place-of.ts";
import type { Rule } from "../rule.ts";

/** What is cancelled was issued before, does not cancel back, and is about cars that the cancellation is about. */
export const cancelsNothing: Rule = {
  id: "cancels-nothing",
  gravity: "error",
  about: "A cancellation ends something: an earlier record, on cars of its scope.",
  why: "The instruction that was to end goes on, for the cars that were meant. The answers do as if nothing were cancelled.",
  mend: "Mend the id or the scope.",
  example: {
    wrong: { "changes/1959/HY59-01.md": ["{ record: FR58-01, scope: line=B }", "{ record: FR58-01, scope: my=1957 }"] },
    right: {},
  },
  *find({ catalog }) {
    const { space, buildable, records } = catalog;
    for (const record of records.values())
      for (const it of record.facts.withdrawn === undefined ? record.stated : []) {
        const target = it.type === "cancels" ? records.get(it.target) : undefined;
        if (it.type !== "cancels" || !target || target.facts.withdrawn !== undefined) continue;
        const cars = space.sets.and(buildable, target.scope.cars);
        const meets = it.scope === undefined || space.sets.meet(cars, it.scope.cars);
        const why = whyVain(records, record, target) ?? (meets ? undefined : "no car is in both scopes");
        if (why === undefined) continue;
        yield {
          at: placeOf(catalog, it),
          message: `nothing of ${it.target} is cancelled: ${why}`,
          hint: "mend the id or the scope",
          records: [record.id, it.target],
          names: [],
        };
      }
  },
};
