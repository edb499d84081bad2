import { inRecord } from "../place-of.ts";
import type { Rule } from "../rule.ts";

/** What a withdrawn record names under 'instead' is not withdrawn itself, and is another record. */
export const insteadWithdrawn: Rule = {
  id: "instead-withdrawn",
  gravity: "error",
  about: "The record that holds instead of a withdrawn one is not withdrawn itself.",
  why: "Who follows it comes to a record that does not count either, or in a circle.",
  mend: "Name the record that holds now; where none does, take 'instead' out.",
  example: {
    wrong: {
      "changes/1958/FR58-01.md": ["scope: my>=1958\n", "scope: my>=1958\nwithdrawn: never done\ninstead: [HY59-01]\n"],
      "changes/1959/HY59-01.md": [
        ...["issued:", "withdrawn: It was never built.\nissued:"],
        ...["cancels:\n  - { record: FR58-01, scope: line=B }\n", ""],
      ],
    },
    right: {
      "changes/1958/FR58-01.md": ["scope: my>=1958\n", "scope: my>=1958\nwithdrawn: never done\ninstead: [HY59-01]\n"],
      "changes/1959/HY59-01.md": ["cancels:\n  - { record: FR58-01, scope: line=B }\n", ""],
    },
  },
  *find({ catalog }) {
    for (const record of catalog.records.values())
      for (const [i, id] of record.facts.instead.entries()) {
        const named = catalog.records.get(id);
        if (named?.facts.withdrawn === undefined) continue;
        const next = named.facts.instead.filter((it) => it !== record.id);
        yield {
          at: inRecord(record, "instead", i),
          message: `${id} is to hold instead, and is ${id === record.id ? "this record itself" : "withdrawn too"}`,
          hint:
            next.length > 0
              ? `is ${next.join(" or ")} meant, which it names?`
              : "name the record that holds now, or take it out",
          records: [record.id, id],
          names: [],
          also: id === record.id ? [] : [{ ...inRecord(named, "withdrawn"), message: "withdrawn here" }],
        };
      }
  },
};
