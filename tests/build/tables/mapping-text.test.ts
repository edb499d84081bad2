import { expect, test } from "vitest";
import { readMapping } from "../../../src/build/tables/mapping.ts";
import { mappingText } from "../../../src/build/tables/mapping-text.ts";
import { type Proposal, propose } from "../../../src/build/tables/propose.ts";
import { sheetOf } from "./tiny-import.ts";

const proposal = propose(
  sheetOf("Delivery: '59", "Record ID\tOld part\tNew part\twith\tClerk", "HY59-01\tHT-101\tHT-102\tHT-201, HT-290\tJo"),
) as Proposal;

test("what was guessed, left out and missing stands beside it", () => {
  const lines = mappingText([proposal], ["Notes"]).split("\n");
  expect(lines.slice(3)).toEqual([
    "sheets:",
    `  - sheet: "Delivery: '59"`,
    "    # look at this: 'Old part' is taken for the column 'old'",
    "    # look at this: 'New part' is taken for the column 'new'",
    "    # look at this: the rows are taken for rows of the table 'supersedes'",
    `    # look at this: 'with': its lists are split at ","`,
    "    # nothing is known that these headers mean, so they are left out; move what is wanted to columns",
    "    table: supersedes",
    "    columns:",
    "      record: Record ID",
    "      old: Old part",
    "      new: New part",
    "      with:",
    "        column: with",
    '        split: ","',
    "    leave-out:",
    "      - Clerk",
    "leave-out:",
    "  - Notes",
    "",
  ]);
});

test("it is a mapping file that says just what was proposed", () => {
  const { sheets, leaveOut, findings } = readMapping("map.yaml", mappingText([proposal], ["Notes"]));
  expect(findings).toEqual([]);
  expect(leaveOut).toEqual(["Notes"]);
  expect(sheets).toEqual([{ ...proposal.mapping, "leave-out": ["Clerk"] }]);
  expect(readMapping("map.yaml", mappingText([], ["Notes"]))).toMatchObject({
    sheets: [],
    leaveOut: ["Notes"],
    findings: [],
  });
});
