import { placeOf } from "../place-of.ts";
import type { Rule } from "../rule.ts";

/** What is cancelled counts: of a record that was withdrawn there is nothing to end. */
export const cancelsWithdrawn: Rule = {
  id: "cancels-withdrawn",
  gravity: "warning",
  about: "What a record cancels is not withdrawn already.",
  why: "Readers are told that an instruction ended which never counted, or another one was meant.",
  mend: "Take the cancellation out, or mend the id.",
  example: {
    wrong: { "changes/1958/FR58-01.md": ["scope: my>=1958\n", "scope: my>=1958\nwithdrawn: never done\n"] },
    right: {
      "changes/1958/FR58-01.md": ["scope: my>=1958\n", "scope: my>=1958\nwithdrawn: never done\n"],
      "changes/1959/HY59-01.md": ["cancels:\n  - { record: FR58-01, scope: line=B }\n", ""],
    },
  },
  *find({ catalog }) {
    for (const record of catalog.records.values())
      for (const it of record.statements)
        if (it.type === "cancels" && catalog.records.get(it.target)?.facts.withdrawn !== undefined)
          yield {
            at: placeOf(catalog, it),
            message: `${it.target} is withdrawn already, so there is nothing to cancel`,
            hint: "take the cancellation out, or mend the id",
            records: [record.id, it.target],
            names: [],
          };
  },
};
