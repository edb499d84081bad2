import { placeOf } from "../place-of.ts";
import type { Rule } from "../rule.ts";

/** What is cancelled was issued before, counts, does not cancel back, and is about cars that the cancellation is about. */
export const cancelsNothing: Rule = {
  id: "cancels-nothing",
  gravity: "warning",
  about: "A cancellation ends something: an earlier record that counts, on cars of its scope.",
  why: "The instruction that was to end goes on, for the cars that were meant.",
  mend: "Mend the id or the scope.",
  example: {
    wrong: { "changes/1959/HY59-01.md": ["{ record: FR58-01, scope: line=B }", "{ record: FR58-01, scope: my=1957 }"] },
    right: {},
  },
  *find({ catalog }) {
    const { space, buildable } = catalog;
    for (const record of catalog.records.values())
      for (const it of record.statements) {
        const target = it.type === "cancels" ? catalog.records.get(it.target) : undefined;
        if (it.type !== "cancels" || !target) continue;
        const cars = space.sets.and(buildable, target.scope.cars);
        const why =
          target === record
            ? "it is this record itself"
            : target.facts.withdrawn !== undefined
              ? "it is withdrawn already"
              : target.facts.issued > record.facts.issued
                ? `it was issued later, on ${target.facts.issued}`
                : target.facts.cancels.some((one) => one.record === record.id)
                  ? "it cancels this record in turn"
                  : it.scope && !space.sets.meet(cars, it.scope.cars)
                    ? "no car is in both scopes"
                    : undefined;
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
