import type { Rule } from "../rule.ts";

/** No mark rests on a record that is withdrawn. */
export const restsOnWithdrawn: Rule = {
  id: "rests-on-withdrawn",
  gravity: "error",
  about: "A mark rests on a record that counts.",
  why: "The answer shows a record that says itself that it does not count.",
  mend: "Name the record that says so now, or take the mark out.",
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
    const files = new Map([...catalog.parts.values()].map((part) => [part.component, part.features]));
    for (const [component, features] of files)
      for (const [i, feature] of features.entries()) {
        const record = catalog.records.get(feature.record);
        if (record?.facts.withdrawn === undefined) continue;
        yield {
          at: { file: `parts/${component}.yaml`, path: ["features", i, "record"] },
          message: `this mark rests on ${record.id}, which is withdrawn`,
          hint: "name the record that says so now, or take the mark out",
          records: [record.id],
          names: [feature.id],
        };
      }
  },
};
