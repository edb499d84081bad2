/** What changed against the model year that the reader knows: traps first, then by system, each with its records. */
import { html, nothing, type TemplateResult } from "lit-html";
import type { ChangeView, NetChangeAnswer } from "../../../engine/answers/shapes/net-change.ts";
import type { Catalog } from "../../../engine/records/catalog.ts";
import { readingOrder, underHeadings } from "../order.ts";
import type { Actions } from "./actions.ts";
import { foldedGroups, isFolded } from "./fold.ts";
import { lookButton } from "./look-button.ts";
import { factViewWords, outcomeWords, valuesWords } from "./words.ts";

export interface ChangesParts {
  readonly catalog: Catalog;
  readonly years: readonly number[];
  /** The model year of the car, where it is known. */
  readonly year: number | undefined;
  readonly known: number | undefined;
  /** The answer, or why there is none. */
  readonly net: NetChangeAnswer | string | undefined;
  /** Whether all headings are open. */
  readonly whole: boolean;
}

export function changesView(parts: ChangesParts, act: Actions): TemplateResult {
  const { years, year, known } = parts;
  return html`
    <section aria-labelledby="changes">
      <h2 id="changes" tabindex="-1">What changed</h2>
      <div class="compare">
        <label for="known">The model year that you know</label>
        <select id="known" @change=${(event: Event) => {
          const value = (event.target as HTMLSelectElement).value;
          act.compareWith(value === "" ? undefined : Number(value));
        }}>
          <option value="" ?selected=${known === undefined}>none</option>
          ${years.filter((one) => one !== year || one === known).map((one) => html`<option value=${one} ?selected=${one === known}>${one}</option>`)}
        </select>
      </div>
      ${known === undefined ? html`<p class="note">Choose it, and what changed against it is composed: what was cancelled again is left out, several changes to one thing are one.</p>` : result(parts, act)}
    </section>`;
}

function result({ catalog, net, whole }: ChangesParts, act: Actions): TemplateResult {
  if (net === undefined) return html`<p>…</p>`;
  if (typeof net === "string") return html`<p class="wrong">${net}</p>`;
  if (net.verdict === "no such car in that year")
    return html`<p>A car like this one was not built for ${net.from}: ${(net.conflict ?? []).map((fact) => factViewWords(catalog.space, fact)).join(" and ")} do not go together.</p>`;
  if (net.changes.length === 0)
    return html`<p>No change on record between ${net.from} and ${net.to}. That is not the same as “no change”.</p>${notOnRecord(net, act)}`;
  const groups = underHeadings(
    readingOrder(net.changes, catalog.systems).map((place) => net.changes[place] as ChangeView),
    (change) => change,
    catalog.systems,
  );
  return html`
    <p>${net.changes.length === 1 ? "One thing" : `${net.changes.length} things`} changed from ${net.from} to ${net.to}.</p>
    ${foldedGroups(
      "changes",
      groups,
      (group) =>
        html`<ul class="records changes">${group.items.map((change) => changeItem(catalog, change, act))}</ul>`,
      whole,
    )}
    ${isFolded(net.changes.length, groups.length) && !whole ? html`<p class="more"><button type="button" class="plain" @click=${() => act.showAll("changes")}>Show all ${net.changes.length}</button></p>` : nothing}
    ${notOnRecord(net, act)}
    ${
      net.leftAlone.length > 0
        ? html`<h3>Left alone on purpose</h3><ul class="left-alone">${net.leftAlone.map(({ record, what }) => html`<li>${what} ${recordLink(record, act)}</li>`)}</ul>`
        : nothing
    }`;
}

function changeItem(catalog: Catalog, change: ChangeView, act: Actions): TemplateResult {
  const path =
    change.steps.length > 1
      ? change.steps.map(({ year, values }) => `${year}: ${values.map((it) => it.value).join(" or ")}`).join("; ")
      : "";
  return html`<li>
    <b>${change.name}</b> ${change.trap ? html`<span class="tag trap">Trap</span>` : nothing}
    ${
      change.kind === "record"
        ? html`<p>${recordChange(change)}</p>`
        : html`<p class="from-to"><span>${valuesWords(catalog, change.name, change.from)}</span> <span aria-hidden="true">→</span><span class="hidden">became</span> <b>${valuesWords(catalog, change.name, change.to)}</b></p>`
    }
    ${change.inPlaceOf?.map((words) => html`<p class="note">${words}</p>`)}
    ${change.byCars && change.byCars.length > 0 ? byCars(change.byCars) : nothing}
    ${change.verdict === "changed against some" ? html`<p class="note">Against some cars of the year you know only.</p>` : nothing}
    ${change.cancelled?.map((it) => html`<p class="note"><b>${it.by.every(({ verdict }) => verdict === "yes") ? "Cancelled" : "Perhaps cancelled"}:</b> what ${recordLink(it.record, act)} told to do is ended by ${it.by.map(({ record }) => html`${recordLink(record, act)} `)}. What was built stays built.</p>`)}
    ${change.ask ? html`<p class="look">${lookButton(change.ask, change.name, act)}. ${outcomeWords(change.ask)}.</p>` : nothing}
    ${change.verdict === "look first" && !change.ask ? html`<p class="look">Only the part itself tells: look at its marks.</p>` : nothing}
    ${path ? html`<p class="note">On the way: ${path}</p>` : nothing}
    <p class="who">${change.records.map((id) => html`${recordLink(id, act)} `)}</p>
  </li>`;
}

/** Which cars it changed for, where it is not one change for all. */
function byCars(rows: NonNullable<ChangeView["byCars"]>): TemplateResult {
  const [only, ...others] = rows;
  if (only?.cars && others.length === 0)
    return html`<p class="note">On <span class="scope">${only.cars.words}</span>.</p>`;
  return html`<ul class="note">${rows.map(({ cars, from, to }) => html`<li>${cars ? html`<span class="scope">${cars.words}</span>: ` : nothing}${from.join(" or ")} → ${to.join(" or ")}</li>`)}</ul>`;
}

/** Whether these changed is not known: records speak of one of the years only. */
function notOnRecord({ notOnRecord: items }: NetChangeAnswer, act: Actions): TemplateResult | typeof nothing {
  if (items.length === 0) return nothing;
  return html`<details><summary>On record in one of the years only: ${items.length}</summary>
    <p class="note">Whether these changed is not known. Silence is not “no change”.</p>
    <ul>${items.map(
      (
        it,
      ) => html`<li><b>${it.name}</b>: ${it.values.map(({ value }) => value).join(" or ")}${it.cars ? html` <span class="scope">(${it.cars.words})</span>` : nothing}; nothing is on record for ${it.year}.
        ${it.see.map((one) => html`<p class="note">${one.words} ${recordLink(one.record, act)}</p>`)}
        <p class="who">${it.records.map((id) => html`${recordLink(id, act)} `)}</p></li>`,
    )}</ul></details>`;
}

function recordChange({ to }: ChangeView): string {
  if (to.length > 1) return "Holds for some of these cars";
  return to[0]?.value === "holds" ? "New" : "Holds no longer";
}

function recordLink(id: string, act: Actions): TemplateResult {
  return html`<a class="id" href=${act.href(`records/${id}/`)}>${id}</a>`;
}
