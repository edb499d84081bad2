/** The scores of "ask" in words: one table, the halves side by side. */
import { type AskResult, type HalfScores, SEARCHES } from "./ask.ts";
import type { Tried } from "./ask-minisearch.ts";
import type { Score } from "./ask-score.ts";

const FIRST_RIGHT_AIM = 0.85;

const COLUMNS: readonly [title: string, value: (score: Score) => string][] = [
  ["first right", ({ firstRight }) => percent(firstRight)],
  ["MRR", ({ meanReciprocalRank }) => meanReciprocalRank.toFixed(3)],
  ["recall at 5", ({ recallAt5 }) => percent(recallAt5)],
  ["nothing found", ({ nothingFound }) => percent(nothingFound)],
  ["rightly nothing", ({ rightlyNothing }) => percent(rightlyNothing)],
];

export function showAsk({ records, halves, tried, wrong }: AskResult): string {
  const [best] = tried;
  const wide = 9 * halves.length;
  return [
    `Questions over ${records} records`,
    ...halves.map(sayHalf),
    "",
    row("", ...COLUMNS.map(([title]) => title.padStart(Math.max(wide, 17)))),
    row("", ...COLUMNS.map(() => cells(halves.map(({ half }) => half)))),
    ...SEARCHES.map((name) =>
      row(name, ...COLUMNS.map(([, value]) => cells(halves.map(({ searches }) => value(searches[name]))))),
    ),
    "",
    row("Yearmark's answers", cells(halves.map(({ half }) => half))),
    row("right question on top", cells(halves.map(({ answers }) => percent(answers.rightOnTop)))),
    row("right words in it", cells(halves.map(({ answers }) => percent(answers.rightWords)))),
    "",
    ...(best
      ? [`MiniSearch: the best of ${tried.length} settings on the half for building: ${saySettings(best)}`]
      : []),
    ...halves.flatMap(aims),
    ...(wrong.length > 0 ? ["", "wrong:"] : []),
    ...wrong.map(({ question, what, wanted, got }) => `  ${question}\n      ${what}: ${wanted}; got ${got}`),
  ].join("\n");
}

function sayHalf({ half, searches: { Yearmark }, answers }: HalfScores): string {
  return `${half}: ${Yearmark.asked} with a record and ${Yearmark.withoutRecord} without; ${answers.asked} to be answered, ${answers.worded} of them in set words`;
}

function saySettings({ settings: { stems, fuzzy, prefix, combine, title } }: Tried): string {
  return `${combine}, ${stems ? "stems" : "no stems"}, fuzzy ${fuzzy}, ${prefix ? "prefixes" : "no prefixes"}, title ${title} times`;
}

/** The aims are those for the end; while building one sees how far it is. */
function aims({ half, searches: { Yearmark, "its words alone": words, FTS5 } }: HalfScores): string[] {
  const aim = (what: string, value: string, isMet: boolean): string =>
    `${half}: ${what}: ${value}, ${isMet ? "met" : "NOT MET"}`;
  return [
    aim(
      `first right at least ${percent(FIRST_RIGHT_AIM)}`,
      percent(Yearmark.firstRight),
      Yearmark.firstRight >= FIRST_RIGHT_AIM,
    ),
    aim("nothing found 0 %", percent(Yearmark.nothingFound), Yearmark.nothingFound === 0),
    aim(
      "words alone not below FTS5, first right and MRR",
      `${percent(words.firstRight)} and ${words.meanReciprocalRank.toFixed(3)} to ${percent(FTS5.firstRight)} and ${FTS5.meanReciprocalRank.toFixed(3)}`,
      words.firstRight >= FTS5.firstRight && words.meanReciprocalRank >= FTS5.meanReciprocalRank,
    ),
  ];
}

function percent(share: number): string {
  return `${(share * 100).toFixed(1)} %`;
}

/** One column of the table: a figure for each half. */
function cells(values: readonly string[]): string {
  return values
    .map((value) => value.padStart(9))
    .join("")
    .padStart(17);
}

function row(first: string, ...columns: string[]): string {
  return (first.padEnd(22) + columns.join("")).trimEnd();
}
