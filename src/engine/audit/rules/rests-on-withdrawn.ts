import type { Place } from "../../records/complaint.ts";
import type { Fault, Rule } from "../rule.ts";

/** No mark and no shop sum rests on a record that is withdrawn. */
export const restsOnWithdrawn: Rule = {
  id: "rests-on-withdrawn",
  gravity: "error",
  about: "A mark, or a shop sum, rests on a record that counts.",
  why: "The answer shows a record that says itself that it does not count.",
  mend: "Name the record that says so now, or take the mark or the sum out.",
  example: {
    wrong: {
      "parts/pump.yaml": [
        "made: cast, where: on the car, effort: 2, record: HY59-01 }",
        "made: cast, where: on the car, effort: 2, record: FR58-01 }",
      ],
      "changes/1958/FR58-01.md": ["scope: my>=1958\n", "scope: my>=1958\nwithdrawn: never done\n"],
      "changes/1959/HY59-01.md": ["cancels:\n  - { record: FR58-01, scope: line=B }\n", ""],
    },
    right: {
      "changes/1958/FR58-01.md": ["scope: my>=1958\n", "scope: my>=1958\nwithdrawn: never done\n"],
      "changes/1959/HY59-01.md": ["cancels:\n  - { record: FR58-01, scope: line=B }\n", ""],
    },
  },
  *find({ catalog }) {
    const fault = (what: string, id: string, name: string, at: Place): Fault[] =>
      catalog.records.get(id)?.facts.withdrawn === undefined
        ? []
        : [
            {
              at,
              message: `this ${what} rests on ${id}, which is withdrawn`,
              hint: `name the record that says so now, or take the ${what} out`,
              records: [id],
              names: [name],
            },
          ];
    const files = new Map([...catalog.parts.values()].map((part) => [part.component, part.features]));
    for (const [component, features] of files)
      for (const [i, { id, record }] of features.entries())
        yield* fault("mark", record, id, {
          file: `parts/${component}.yaml`,
          path: ["features", i, "record"],
        });
    for (const [i, { title, record }] of catalog.sums.entries())
      yield* fault("sum", record, title, { file: "sums.yaml", path: ["sums", i, "record"] });
  },
};
