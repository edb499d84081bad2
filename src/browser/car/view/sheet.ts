/**
 * The bay sheet: what of the page goes on paper, close together, with boxes to tick, the cautions, and a code that leads back to
 * the car. With a model year to compare with it is about what changed, without one about all that applies.
 */
import { html, nothing, type TemplateResult } from "lit-html";
import { renderSVG } from "uqr";
import type { Look } from "../../../engine/answers/shapes/look.ts";
import type { ChangeView, NetChangeAnswer } from "../../../engine/answers/shapes/net-change.ts";
import type { Catalog, Caution, ChangeRecord } from "../../../engine/records/catalog.ts";
import type { Beside, Judged } from "../reading.ts";
import { outcomeWords, valuesWords } from "./words.ts";

export interface SheetParts {
  readonly catalog: Catalog;
  /** The car in words, fact by fact. */
  readonly facts: readonly string[];
  readonly plate: string | undefined;
  /** The day of printing, as people write it. */
  readonly day: string;
  readonly notKnown: readonly string[];
  readonly open: readonly Judged[];
  readonly yes: readonly Judged[];
  readonly beside: readonly Beside[];
  readonly looks: ReadonlyMap<string, Look>;
  readonly net: NetChangeAnswer | undefined;
  readonly cautions: readonly Caution[];
  /** The records on the sheet, for their own cautions. */
  readonly records: readonly ChangeRecord[];
  readonly address: string;
}

export function sheetView(parts: SheetParts): TemplateResult {
  const { net, open, yes, cautions, records } = parts;
  const own = Map.groupBy(records, (record) => record.facts.caution ?? "");
  own.delete("");
  return html`
    <section class="sheet" aria-label="Bay sheet">
      <p class="sheet-car">${parts.plate === undefined ? nothing : html`<b class="id">${parts.plate}</b> `}<b>${parts.facts.join(" · ")}</b>${parts.notKnown.length > 0 ? html`<br />Not known: ${parts.notKnown.join(", ")}` : nothing}<br />Printed ${parts.day}</p>
      <div class="sheet-columns">
        ${net ? changes(parts.catalog, net) : block("Applies", yes.map(titleItem))}
        ${block(
          "Look first",
          open.map((item) => openItem(item, parts.looks.get(item.record.id))),
        )}
        ${block(
          "On the other side of a running change",
          parts.beside.map(
            ({ item: { record }, has }) =>
              html`<li><b>${record.id}</b> ${record.facts.title}${has.length > 0 ? html`; it has ${has.join("; ")}` : nothing}</li>`,
          ),
        )}
        ${block("Left alone on purpose", net ? net.leftAlone.map(({ what, record }) => html`<li class="plain-item">${what} (${record})</li>`) : [])}
${block("▲ Caution", [
  ...cautions.map(({ title, text }) => html`<li class="plain-item"><b>${title}.</b> ${firstSentence(text)}</li>`),
  ...[...own].map(
    ([text, by]) =>
      html`<li class="plain-item"><b>${by.map(({ id }) => id).join(", ")}</b> ${firstSentence(text)}</li>`,
  ),
])}
        ${code(parts.address)}
      </div>
    </section>`;
}

/** The whole caution stands on the page of each record; paper reminds of it. */
function firstSentence(text: string): string {
  return /^.*?[.!](?=\s|$)/.exec(text)?.[0] ?? text;
}

function block(heading: string, items: readonly TemplateResult[]): TemplateResult | typeof nothing {
  return items.length > 0 ? html`<h3>${heading}</h3><ul>${items}</ul>` : nothing;
}

function changes(catalog: Catalog, net: NetChangeAnswer): TemplateResult | typeof nothing {
  const item = (change: ChangeView): TemplateResult => {
    const what =
      change.kind === "record"
        ? change.to.map((it) => it.value).join(" or ")
        : html`${short(valuesWords(catalog, change.name, change.from))} → <b>${short(valuesWords(catalog, change.name, change.to))}</b>`;
    const look = change.ask ? `. Look at the ${change.ask.label}: ${outcomeWords(change.ask)}.` : "";
    return html`<li>${change.trap ? html`<b>Trap: </b>` : nothing}${change.name}: ${what}${look} (${change.records.join(", ")})</li>`;
  };
  return block(`Changed from ${net.from} to ${net.to}`, net.changes.map(item));
}

/** "Yes" means that it applies and "no" that it does not: that need not be printed. */
function plain(look: Look): boolean {
  return look.outcomes.every(({ values, verdict }) => values.length === 1 && values[0] === verdict);
}

/** Without the remarks in brackets. */
function short(words: string): string {
  return words.replaceAll(/ \([^()]*\)/g, "");
}

function titleItem({ record, trap }: Judged): TemplateResult {
  return html`<li>${trap ? html`<b>Trap: </b>` : nothing}<b>${record.id}</b> ${record.facts.title}</li>`;
}

function openItem({ record, trap }: Judged, look: Look | undefined): TemplateResult {
  return html`<li>${trap ? html`<b>Trap: </b>` : nothing}<b>${record.id}</b> ${record.facts.title}${look ? `. Look: ${look.label}${plain(look) ? "" : ` (${outcomeWords(look)})`}.` : nothing}</li>`;
}

/** The code with the address; an address longer than a code holds is printed in letters only. */
function code(address: string): TemplateResult {
  let picture: string | undefined;
  try {
    picture = `data:image/svg+xml,${encodeURIComponent(renderSVG(address, { border: 2 }))}`;
  } catch {
    picture = undefined;
  }
  return html`<div class="sheet-code">${picture ? html`<img src=${picture} alt="Code with the address of this car" width="96" height="96" />` : nothing}
    <p>Check before use.<br />${address}</p></div>`;
}
