import { statementsOf } from "../../records/statement.ts";
import { placeOf } from "../place-of.ts";
import type { Rule } from "../rule.ts";

/** No part that is for repair only was fitted by a plant. */
export const repairPartBuiltIn: Rule = {
  id: "repair-part-built-in",
  gravity: "error",
  about: "A part that is for repair only was on no car when it was built.",
  why: "The one record says that no car left a plant with it, the other one names the cars that did.",
  mend: "Take it out of 'service-only', or mend the number that the plant fitted.",
  example: {
    wrong: { "changes/1959/HY59-01.md": ["service-only: [HT-201]", "service-only: [HT-201, HT-101]"] },
    right: {},
  },
  *find({ catalog, index }) {
    for (const record of catalog.records.values())
      for (const it of statementsOf(record.statements, "service-only")) {
        const [built, ...others] = index.builtWith.get(it.part) ?? [];
        if (!built) continue;
        yield {
          at: placeOf(catalog, it),
          message: `${it.part} is for repair only here, and fitted by the plant in '${built.place}' by ${built.record === record.id ? "this record itself" : built.record}`,
          hint: "take it out of 'service-only', or mend the number that the plant fitted",
          records: [record.id, ...[built, ...others].map((one) => one.record)],
          names: [it.part],
          also: [built, ...others].map((one) => ({ ...placeOf(catalog, one), message: `fitted in '${one.place}'` })),
          cars: catalog.space.sets.and(catalog.buildable, built.scope.cars),
        };
      }
  },
};
