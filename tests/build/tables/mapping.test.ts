import { expect, test } from "vitest";
import { readMapping } from "../../../src/build/tables/mapping.ts";

const said = (text: string): string[] =>
  readMapping("map.yaml", text).findings.map(
    ({ position, message, hint }) => `${position.line}:${position.column} ${message} → ${hint}`,
  );

test("a mapping is read, short and long columns alike", () => {
  const text = `sheets:
  - sheet: delivery
    table: supersedes
    header: 3
    columns: { old: Old part, with: { column: Along, split: "," } }
    constants: { record: HY59-01 }
leave-out: [Notes]
`;
  expect(readMapping("map.yaml", text)).toEqual({
    findings: [],
    leaveOut: ["Notes"],
    sheets: [
      {
        sheet: "delivery",
        table: "supersedes",
        header: 3,
        columns: { old: { column: "Old part" }, with: { column: "Along", split: "," } },
        constants: { record: "HY59-01" },
        "leave-out": [],
      },
    ],
  });
});

test.each([
  ["sheets: [", /^1:10 this is not YAML: /],
  ["sheet: []\n", /^1:1 no field is called 'sheet' here → did you mean 'sheets'\?$/],
  [
    "sheets:\n  - { sheet: a, table: bilt, columns: {} }\n",
    /^2:24 no table is called 'bilt' → did you mean 'built'\?$/,
  ],
  [
    "sheets:\n  - { sheet: a, table: built, columns: { plaec: Place } }\n",
    /^2:42 the table built has no column 'plaec' → did you mean 'place'\?$/,
  ],
  [
    "sheets:\n  - { sheet: a, table: built, columns: { place: P }, constants: { place: pump } }\n",
    /^2:67 'place' has a column already → leave one of them out$/,
  ],
  [
    "sheets:\n  - { sheet: a, table: built, columns: { place: { column: P, dates: dmy } } }\n",
    /^2:69 'dmy' is no value of 'dates' → values are day\.month\.year, month\/day\/year$/,
  ],
])("%s is complained about with its place", (text, complaint) => {
  const [first, ...more] = said(text);
  expect(first).toMatch(complaint);
  expect(more).toEqual([]);
});
