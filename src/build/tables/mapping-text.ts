/** Proposals as a mapping file that a person looks over: what was guessed stands in comments beside it. */
import { stringify } from "yaml";
import type { Proposal } from "./propose.ts";

export function mappingText(proposals: readonly Proposal[], leaveOut: readonly string[]): string {
  const lead = [
    "# How the columns of the sheets fill the tables. Proposed by 'npm run import'; look it over, then import with --map.",
    "# A column may say more: { column: its header, split: what stands between values, dates: day.month.year, comma: true,",
    "#   translate: { what the sheet says: what is meant } }. 'constants' says what every row says.",
    proposals.length > 0 ? "sheets:" : "sheets: []",
  ];
  const left = leaveOut.length > 0 ? [stringify({ "leave-out": leaveOut }).trimEnd()] : [];
  return `${[...lead, ...proposals.map(oneSheet), ...left].join("\n")}\n`;
}

function oneSheet({ mapping, guesses, unmatched, missing }: Proposal): string {
  const { sheet, table, columns } = mapping;
  const short = Object.entries(columns).map(([name, { column, ...how }]) => [
    name,
    Object.keys(how).length === 0 ? column : { column, ...how },
  ]);
  const leaveOut = unmatched.length > 0 ? { "leave-out": unmatched } : {};
  const yaml = stringify({ sheet, table, columns: Object.fromEntries(short), ...leaveOut }, { lineWidth: 0 }).trimEnd();
  const notes = [
    ...guesses.map((guess) => `look at this: ${guess}`),
    ...(unmatched.length > 0
      ? ["nothing is known that these headers mean, so they are left out; move what is wanted to columns"]
      : []),
    ...(missing.length > 0
      ? [`no column fills ${missing.join(", ")}; a new entry needs it: give it a column, or a constant`]
      : []),
  ].map((note) => `    # ${note.replaceAll(/\s+/g, " ")}`);
  const [first, ...rest] = yaml.split("\n");
  return [`  - ${first}`, ...notes, ...rest.map((line) => `    ${line}`)].join("\n");
}
