/**
 * The family of a part as a drawing: a column a part, oldest first, and a row a statement, so that no word can lie on another.
 *
 *     ┌─────┐      ┌─────┐      ┌─────┐
 *     │ old │      │ new │      │ other│
 *     └──┬──┘      └──┬──┘      └──┬──┘
 *        │ on conditions           │        every row is read from the dot to the head:
 *        │◄- - - - - -●            │        the one part, where the other belongs
 *        │            │  must not  │
 *        │            ●─────✕─────►│
 *
 * Everything in it is also said in words below it, so it is hidden from those who listen. Widths are reckoned for wide fonts.
 */
import type { FamilyLineView, FamilyMember, PartFamily } from "../../engine/answers/answer-part-family.ts";
import { type LineKind, NO_PART } from "../../engine/answers/family-lines.ts";
import { address } from "../../engine/graph/node.ts";
import { type Html, html } from "./html.ts";
import type { Page } from "./page.ts";

type RowKind = LineKind | "looks-alike";

export const LINE_WORDS: Readonly<Record<RowKind, string>> = {
  delivered: "delivered instead",
  yes: "may be fitted",
  "on-conditions": "on conditions",
  "does-not-go-on": "does not go on",
  "must-not-be-used": "must not be used",
  "looks-alike": "looks alike",
};

interface Row {
  readonly kind: RowKind;
  readonly tail: number;
  readonly head: number;
  readonly bothWays: boolean;
  readonly label: string;
  readonly note: string;
}

const EDGE = 8;
const GAP = 16;
/** Room for the longest label between two neighbours. */
const NEAREST = 132;
const DIGIT = 8.2;
const BOX = { top: 20, height: 42, least: 92 } as const;
const ROW = { label: 21, plain: 31, noted: 44, apart: 10 } as const;

export function familyDrawing(page: Page, family: PartFamily): Html | "" {
  const rows = rowsOf(family);
  if (rows.length === 0) return "";
  const { members } = family;
  const widths = members.map((it) => Math.max(BOX.least, Math.ceil(shown(it).length * DIGIT) + 20));
  const middles = middlesOf(widths);
  const width = (middles.at(-1) as number) + (widths.at(-1) as number) / 2 + EDGE;
  const { tops, bottom } = topsOf(rows);
  return html`<section class="scroll family" aria-label="Drawing of the family. The same is said in words below it." tabindex="0">
<svg viewBox="0 0 ${width} ${bottom}" width="${width / 16}rem" height="${bottom / 16}rem" aria-hidden="true" focusable="false">
${middles.map((x, i) => html`<path class="${members[i]?.number === family.part ? "rail own" : "rail"}" d="M${x} ${BOX.top + BOX.height}V${bottom - 4}"/>`)}
${members.map((it, i) => box(page, it, middles[i] as number, widths[i] as number, it.number === family.part))}
${rows.map((row, i) => drawRow(row, middles, (tops[i] as number) + ROW.label))}
</svg>
</section>
<p class="note">${howToRead(rows)}</p>`;
}

/** What is said of the part itself, what it may be taken for, and what is said between its relatives. */
function rowsOf({ part, members, lines, lookAlikes }: PartFamily): Row[] {
  const at = (number: string): number => members.findIndex((it) => it.number === number);
  const said = (line: FamilyLineView): Row => ({
    kind: line.kind,
    tail: at(line.tail),
    head: at(line.head),
    bothWays: line.bothWays,
    label: LINE_WORDS[line.kind],
    note: noteOf(line),
  });
  const isOfIt = (line: FamilyLineView): boolean => line.tail === part || line.head === part;
  const alike = lookAlikes
    .filter((it) => at(it.number) !== -1)
    .map((it): Row => {
      const kind = "looks-alike";
      const label = it.same.length > 0 ? LINE_WORDS[kind] : "no mark on record";
      const note = it.same.length > 0 && it.apart.length === 0 ? "no mark to tell by" : "";
      return { kind, tail: at(part), head: at(it.number), bothWays: true, label, note };
    });
  return [...lines.filter(isOfIt).map(said), ...alike, ...lines.filter((line) => !isOfIt(line)).map(said)];
}

/** What limits a line beyond its word. "On conditions" says already that other parts or work may go along. */
export function noteOf({ kind, someCars, withOthers, withWork }: Omit<FamilyLineView, "by">): string {
  const free = kind !== "on-conditions";
  return [someCars && "some cars", free && withOthers && "with other parts", free && withWork && "with work to do"]
    .filter(Boolean)
    .join(", ");
}

function middlesOf(widths: readonly number[]): number[] {
  const middles: number[] = [];
  widths.forEach((width, i) => {
    const before = middles[i - 1];
    const nearest = before === undefined ? EDGE + width / 2 : before + (widths[i - 1] as number) / 2 + GAP + width / 2;
    middles.push(Math.round(before === undefined ? nearest : Math.max(nearest, before + NEAREST)));
  });
  return middles;
}

function topsOf(rows: readonly Row[]): { tops: number[]; bottom: number } {
  const pair = (row: Row | undefined): string | undefined => row && [row.tail, row.head].sort().join();
  let top = BOX.top + BOX.height;
  const tops = rows.map((row, i) => {
    if (pair(row) !== pair(rows[i - 1])) top += ROW.apart;
    const its = top;
    top += row.note ? ROW.noted : ROW.plain;
    return its;
  });
  return { tops, bottom: top + 8 };
}

function shown({ number }: FamilyMember): string {
  return number === NO_PART ? "no part" : number;
}

function box(page: Page, member: FamilyMember, x: number, width: number, own: boolean): Html {
  const since = member.since === undefined ? (member.repairOnly ? "repair only" : "") : `from ${member.since}`;
  const below = member.number === NO_PART ? "empty place" : since;
  const kind = own ? "box own" : member.number === NO_PART ? "box nothing" : "box";
  const frame = html`<rect class="${kind}" x="${x - width / 2}" y="${BOX.top}" width="${width}" height="${BOX.height}" rx="6"/>
<text class="number" x="${x}" y="${BOX.top + (below ? 18 : 26)}">${shown(member)}</text>${below && html`<text x="${x}" y="${BOX.top + 34}">${below}</text>`}`;
  if (own) return html`<g><text class="flag" x="${x}" y="13">this part</text>${frame}</g>`;
  if (member.number === NO_PART) return html`<g>${frame}</g>`;
  // Not in the order of keys, for the same link stands in the words below.
  return html`<a href="${page.href(address("part", member.number))}" tabindex="-1"><title>${member.name}</title>${frame}</a>`;
}

function drawRow(row: Row, middles: readonly number[], y: number): Html {
  const [from, to] = [middles[row.tail] as number, middles[row.head] as number];
  // In the gap at the left end of the line: there no other column runs through the words, and a phone shows them first.
  const left = Math.min(row.tail, row.head);
  const middle = ((middles[left] as number) + (middles[left + 1] as number)) / 2;
  return html`<g class="${row.kind}">${line(row, [from, middle, to], y)}
<text class="label" x="${middle}" y="${y - 9}">${row.label}</text>${row.note && html`<text x="${middle}" y="${y + 17}">${row.note}</text>`}</g>`;
}

function line(row: Row, [from, middle, to]: readonly [number, number, number], y: number): Html {
  const towards = to > from ? 1 : -1;
  if (row.kind === "looks-alike")
    return html`<path class="stroke" d="M${from + 6 * towards} ${y}H${to - 6 * towards}"/>`;
  const goesOn = row.kind !== "does-not-go-on";
  const refused = !goesOn || row.kind === "must-not-be-used";
  // Up to the back of the head; a part that does not go on never gets there.
  const reach = goesOn ? 11 : 12;
  const [start, end] = [row.bothWays ? from + reach * towards : from, to - reach * towards];
  const head = (x: number, way: number): Html =>
    goesOn
      ? html`<path class="tip" d="M${x - 2 * way} ${y}l${-9 * way} -5v10z"/>`
      : html`<path class="bar" d="M${x - 12 * way} ${y - 7}v14"/>`;
  const stroke =
    row.kind === "delivered"
      ? html`<path class="stroke" d="M${start} ${y - 2}H${end}M${start} ${y + 2}H${end}"/>`
      : html`<path class="stroke" d="M${start} ${y}H${end}"/>`;
  return html`${stroke}${head(to, towards)}${row.bothWays ? head(from, -towards) : html`<circle class="dot" cx="${from}" cy="${y}" r="4"/>`}${refused && html`<path class="cross" d="M${middle - 5} ${y - 5}l10 10m0 -10l-10 10"/>`}`;
}

const READ: Readonly<Record<RowKind, string>> = {
  delivered: "Double line: a delivery rule, which does not promise that the part fits.",
  yes: "",
  "on-conditions": "Dashed: only on conditions.",
  "does-not-go-on": "Crossed, with a bar: it does not go on.",
  "must-not-be-used": "Crossed, with a head: it goes on, but must not be used.",
  "looks-alike": "Dotted, without a head: one may be taken for the other.",
};

/** Only what occurs is explained. */
function howToRead(rows: readonly Row[]): string {
  const kinds = (Object.keys(READ) as RowKind[]).filter((kind) => rows.some((row) => row.kind === kind));
  const directed = rows.some((row) => row.kind !== "looks-alike");
  const both = rows.some((row) => row.kind !== "looks-alike" && row.bothWays);
  return [
    directed ? "Read each line from the dot to its end: the one part, where the other belongs." : "",
    both ? "Two heads or bars: either way." : "",
    ...kinds.map((kind) => READ[kind]),
    "Older parts stand on the left.",
  ]
    .filter(Boolean)
    .join(" ");
}
