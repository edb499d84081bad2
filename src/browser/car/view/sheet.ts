/**
 * The bay sheet: what of the page goes on paper, close together, with boxes to tick, the cautions, and a code that leads back to
 * the car. What to look at comes first; then, with a model year to compare with, what changed, and without one all that applies
 * with what this car has.
 */
import { html, nothing, type TemplateResult } from "lit-html";
import { renderSVG } from "uqr";
import type { Look } from "../../../engine/answers/shapes/look.ts";
import type { ChangeView, NetChangeAnswer } from "../../../engine/answers/shapes/net-change.ts";
import type { Catalog, Caution, ChangeRecord } from "../../../engine/records/catalog.ts";
import { type Figure, type Has, hasWords } from "../on-this-car.ts";
import type { Beside, Judged } from "../reading.ts";
import { outcomeWords, shortOutcome, valuesWords } from "./words.ts";

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
  readonly has: (record: ChangeRecord) => readonly Has[];
  readonly figures: (record: ChangeRecord) => readonly Figure[];
  readonly cancelled: (record: Judged) => "yes" | "look first" | undefined;
  /** The records on the sheet that are not open, for their own cautions. */
  readonly certain: readonly ChangeRecord[];
  readonly address: string;
}

export function sheetView(parts: SheetParts): TemplateResult {
  const { net, yes } = parts;
  return html`
    <section class="sheet" aria-label="Bay sheet">
      <p class="sheet-car">${parts.plate === undefined ? nothing : html`<b class="id">${parts.plate}</b> `}<b>${parts.facts.join(" · ")}</b>${parts.notKnown.length > 0 ? html`<br />Not known: ${parts.notKnown.join(", ")}` : nothing}<br />Printed ${parts.day}</p>
      <div class="sheet-columns">
        ${openBlocks(parts)}
        ${net ? [true, false].map((isOpen) => changes(parts.catalog, net, isOpen)) : nothing}
        ${block(
          net ? "Other parts than built" : "Applies",
          (net ? yes.filter((item) => isChanged(item, parts)) : yes).map((item) => yesItem(item, parts)),
        )}
        ${block(
          "On the other side of a running change",
          parts.beside.map(
            ({ item: { record }, has }) =>
              html`<li><b class="cite">${record.id}</b> ${record.facts.title}${thisCar(has.map(shortHas))}</li>`,
          ),
        )}
        ${net ? leftAlone(net) : nothing}
        ${cautionBlock(parts)}
        ${code(parts.address)}
      </div>
    </section>`;
}

/** What to look at, each thing once, with the records that it decides; not those whose changes say it themselves. */
function openBlocks({ open, net, looks, has, cancelled }: SheetParts): TemplateResult {
  const told = new Set((net?.changes ?? []).filter(({ ask }) => ask).flatMap(({ records }) => records));
  const rest = open.filter(({ record }) => !told.has(record.id));
  const byLook = Map.groupBy(rest, ({ record }) => looks.get(record.id)?.label ?? "");
  return html`${[...byLook].map(([label, items]) =>
    block(
      label === "" ? "Look first" : `Look at the ${label}`,
      items.map((item) => {
        const look = looks.get(item.record.id);
        const when = look ? shortOutcome(look) : "";
        const known = has(item.record).filter(({ how }) => how === "found");
        return html`<li>${title(item, cancelled)}${when ? html`: <i>${when}</i>` : nothing}${caution(item.record)}${thisCar(known.map(shortHas))}</li>`;
      }),
    ),
  )}`;
}

function isChanged({ record }: Judged, { has }: SheetParts): boolean {
  return has(record).some(({ how }) => how === "found");
}

/** So many figures fit in a line or two; the others stand on the page of the record. */
const FIGURES = 3;

function yesItem(item: Judged, { has, figures, cancelled }: SheetParts): TemplateResult {
  const all = figures(item.record).map(({ text, conditions }) =>
    conditions ? `${text} (${shorter(conditions)})` : text,
  );
  const rest = all.length > FIGURES ? [`${all.length - FIGURES} more figures on its page`] : [];
  const words = [...has(item.record).map(shortHas), ...all.slice(0, FIGURES), ...rest];
  return html`<li>${title(item, cancelled)}${caution(item.record)}${thisCar(words)}</li>`;
}

function title(item: Judged, cancelled: SheetParts["cancelled"]): TemplateResult {
  const { record, trap } = item;
  const ended = cancelled(item);
  return html`${trap ? html`<b>Trap: </b>` : nothing}<b class="cite">${record.id}</b> ${record.facts.title}${ended ? html` <b>(${ended === "yes" ? "cancelled" : "perhaps cancelled"})</b>` : nothing}`;
}

function thisCar(words: readonly string[]): TemplateResult | typeof nothing {
  return words.length > 0 ? html` <span class="sheet-has">▸ ${words.join("; ")}</span>` : nothing;
}

/** A mark that takes a sentence to tell stays on the page of the part. */
const SHORT_MARK = 40;

function shortHas(has: Has): string {
  return hasWords({ ...has, mark: (has.mark?.length ?? 0) > SHORT_MARK ? undefined : has.mark });
}

/** Conditions are never left out without a word: a figure holds only under them. */
const SHORT_CONDITIONS = 45;

function shorter(conditions: string): string {
  return conditions.length <= SHORT_CONDITIONS ? conditions : "conditions: see its page";
}

function caution({ facts }: ChangeRecord): TemplateResult | typeof nothing {
  return facts.caution ? html` ▲` : nothing;
}

/** The usual cautions by their names; those of records that hold for this car with their first sentence, each once. */
function cautionBlock({ cautions, certain }: SheetParts): TemplateResult | typeof nothing {
  const own = Map.groupBy(certain, (record) => (record.facts.caution ? firstSentence(record.facts.caution) : ""));
  own.delete("");
  return block("▲ Caution", [
    html`<li class="plain-item">Read the cautions of every record marked ▲ on its page before the work.</li>`,
    ...(cautions.length > 0
      ? [html`<li class="plain-item"><b>${cautions.map(({ title: name }) => name).join(" · ")}</b></li>`]
      : []),
    ...(own.size > 0
      ? [
          html`<li class="plain-item">${[...own].map(
            ([text, by]) => html`<b>${by.map(({ id }) => id).join(", ")}</b> ${text} `,
          )}</li>`,
        ]
      : []),
  ]);
}

/** The whole caution stands on the page of each record; paper reminds of it. */
function firstSentence(text: string): string {
  return /^.*?[.!](?=\s|$)/.exec(text)?.[0] ?? text;
}

function block(heading: string, items: readonly TemplateResult[]): TemplateResult | typeof nothing {
  return items.length > 0 ? html`<h3>${heading}</h3><ul>${items}</ul>` : nothing;
}

/** One after the other: this is read, not done. */
function leftAlone({ leftAlone: left }: NetChangeAnswer): TemplateResult | typeof nothing {
  const byRecord = [...Map.groupBy(left, ({ record }) => record)];
  const words = byRecord.map(
    ([record, its]) => html`<b class="cite">${record}</b> ${its.map(({ what }) => what).join(" ")} `,
  );
  return block("Left alone on purpose", words.length > 0 ? [html`<li class="plain-item">${words}</li>`] : []);
}

/** The changes that depend on something to look at, or the others. */
function changes(catalog: Catalog, net: NetChangeAnswer, isOpen: boolean): TemplateResult | typeof nothing {
  const item = (change: ChangeView): TemplateResult => {
    const what =
      change.kind === "record"
        ? change.to.map((it) => it.value).join(" or ")
        : html`${short(valuesWords(catalog, change.name, change.from))} → <b>${short(valuesWords(catalog, change.name, change.to))}</b>`;
    const look = change.ask ? `. Look at the ${change.ask.label}: ${outcomeWords(change.ask)}.` : "";
    return html`<li>${change.trap ? html`<b>Trap: </b>` : nothing}${change.name}: ${what}${look} (${change.records.map((id, i) => html`${i > 0 ? ", " : nothing}<span class="cite">${id}</span>`)})</li>`;
  };
  const its = net.changes.filter((change) => (change.ask !== undefined) === isOpen);
  return block(`Changed from ${net.from} to ${net.to}${isOpen ? ", look first" : ""}`, its.map(item));
}

/** Without the remarks in brackets. */
function short(words: string): string {
  return words.replaceAll(/ \([^()]*\)/g, "");
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
