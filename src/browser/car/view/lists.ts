/** The records of the car: those to look into, those that apply, those that do not; each says why. */
import { html, nothing, type TemplateResult } from "lit-html";
import { repeat } from "lit-html/directives/repeat.js";
import type { AppliesAnswer } from "../../../engine/answers/shapes/applies.ts";
import type { Look } from "../../../engine/answers/shapes/look.ts";
import type { Catalog } from "../../../engine/records/catalog.ts";
import { describe } from "../../../engine/scope/describe.ts";
import type { Space } from "../../../engine/scope/space.ts";
import { type Figure, type Has, hasWords } from "../on-this-car.ts";
import { underHeadings } from "../order.ts";
import type { Judged, Verdicts } from "../reading.ts";
import type { Actions } from "./actions.ts";
import { foldedGroups, isFolded } from "./fold.ts";
import { lookButton } from "./look-button.ts";
import { factViewWords, labelOf, outcomeWords } from "./words.ts";

export interface ListParts {
  readonly catalog: Catalog;
  readonly verdicts: Verdicts;
  /** What to look at for an open record, as far as it is worked out. */
  readonly looks: ReadonlyMap<string, Look>;
  /** Explanations that were asked for. */
  readonly explained: ReadonlyMap<string, AppliesAnswer>;
  /** Records that another one has cancelled for this car: yes, or perhaps. */
  readonly cancelled: (record: Judged) => "yes" | "look first" | undefined;
  /** Which part the car has where the record names one, and which figures of the record hold on it. */
  readonly has: (record: Judged) => readonly Has[];
  readonly figures: (record: Judged) => readonly Figure[];
  /** Lists of which all is shown. */
  readonly whole: ReadonlySet<string>;
  /** Any other list is drawn whole if it has no more records than this; otherwise a screenful. */
  readonly limit: number;
}

const SCREENFUL = 12;

export function listsView(parts: ListParts, act: Actions): TemplateResult {
  const { yes, open, no, beside } = parts.verdicts;
  return html`
    <section aria-labelledby="open-head" class="open-list">
      <h2 id="open-head" tabindex="-1">Look first: ${open.length}</h2>
      ${open.length === 0 ? html`<p class="none">No record depends on anything that is not known.</p>` : list(parts, "open", open, act)}
    </section>
    <section aria-labelledby="yes-head" class="yes-list">
      <h2 id="yes-head" tabindex="-1">Applies: ${yes.length}</h2>
      ${yes.length === 0 ? html`<p class="none">No record. That is not the same as “no change”.</p>` : list(parts, "yes", yes, act)}
    </section>
    ${beside.length > 0 ? besideView(beside, act) : nothing}
    <section aria-labelledby="no-head" class="no-list">
      <h2 id="no-head" tabindex="-1">Does not apply: ${no.length}</h2>
      ${no.length === 0 ? html`<p class="none">No record is ruled out.</p>` : parts.whole.has("no") ? list(parts, "no", no, act) : showButton("no", no.length, act)}
    </section>`;
}

/** The car is from before the point, or from after it: what it has is not what the record brings. */
function besideView(beside: Verdicts["beside"], act: Actions): TemplateResult {
  return html`
    <section aria-labelledby="beside-head" class="beside-list">
      <h2 id="beside-head">On the other side of a running change: ${beside.length}</h2>
      <ul class="records">${beside.map(
        ({ item: { record }, has }) => html`<li>
        <a href=${act.href(`records/${record.id}/`)}><span class="id">${record.id}</span> ${record.facts.title}</a>
        <p>Not on this car by its number.</p>${hasView(has, [])}</li>`,
      )}</ul>
    </section>`;
}

function list(parts: ListParts, name: "yes" | "open" | "no", records: readonly Judged[], act: Actions): TemplateResult {
  const whole = parts.whole.has(name) || records.length <= parts.limit;
  const limit = whole ? records.length : SCREENFUL;
  const groups = underHeadings(
    records.slice(0, limit),
    ({ record, trap }) => ({ trap, systems: record.systems }),
    parts.catalog.systems,
  );
  return html`
    ${foldedGroups(
      name,
      groups,
      (group) =>
        html`<ul class="records judged">${repeat(
          group.items,
          (item) => item.record.id,
          (item) => recordItem(parts, name, item, act),
        )}</ul>`,
      parts.whole.has(name),
    )}
    ${records.length > limit || (isFolded(records.length, groups.length) && !parts.whole.has(name)) ? showButton(name, records.length, act) : nothing}`;
}

function showButton(name: string, count: number, act: Actions): TemplateResult {
  return html`<p class="more"><button type="button" class="plain" @click=${() => act.showAll(name)}>Show all ${count}</button></p>`;
}

function recordItem(parts: ListParts, name: string, item: Judged, act: Actions): TemplateResult {
  const { record, trap } = item;
  const look = parts.looks.get(record.id);
  const ended = parts.cancelled(item);
  return html`<li>
    <a href=${act.href(`records/${record.id}/`)}><span class="id">${record.id}</span> ${record.facts.title}</a>
    ${trap ? html`<span class="tag trap">Trap</span>` : nothing}
    ${ended ? html`<span class="tag ended">${ended === "yes" ? "Cancelled" : "Perhaps cancelled"}</span>` : nothing}
    <p class="who">${describe(parts.catalog.space, record.scope)}</p>
    ${name === "open" && look ? html`<p class="look">${lookButton(look, record.id, act)}. ${outcomeWords(look)}.</p>` : nothing}
    ${
      name === "no"
        ? nothing
        : hasView(
            parts.has(item).filter(({ how }) => name === "yes" || how !== "look first"), // That an open record depends is said above.
            name === "yes" ? parts.figures(item) : [],
          )
    }
    <details class="why" @toggle=${(event: Event) => {
      if ((event.target as HTMLDetailsElement).open) act.explain(record.id);
    }}><summary>Why?<span class="hidden"> ${record.id}</span></summary>${explanation(parts.catalog.space, parts.explained.get(record.id))}</details>
  </li>`;
}

function hasView(has: readonly Has[], figures: readonly Figure[]): TemplateResult | typeof nothing {
  if (has.length + figures.length === 0) return nothing;
  return html`<p class="has"><b>This car:</b> ${[
    ...has.map(hasWords),
    ...figures.map(({ text, conditions }) => (conditions ? `${text} (${conditions})` : text)),
  ].join("; ")}.</p>`;
}

function explanation(space: Space, answer: AppliesAnswer | undefined): TemplateResult {
  if (!answer) return html`<p>…</p>`;
  return html`
    <p>${answer.words}</p>
    ${answer.facts.length > 0 && answer.verdict !== "look first" ? html`<p>It rests on: ${answer.facts.map((fact) => factViewWords(space, fact)).join("; ")}.</p>` : nothing}
    ${answer.verdict !== "look first" && answer.facts.length === 0 ? html`<p>It holds for every car that was built of this line, or for none.</p>` : nothing}
    ${answer.notNeeded.length > 0 ? html`<p class="note">Not needed for it: ${answer.notNeeded.map((fact) => factViewWords(space, fact)).join("; ")}.</p>` : nothing}
    ${
      answer.ask
        ? html`<p>${answer.ask.deciding.length === 1 ? "This alone decides it." : `To decide it: ${answer.ask.deciding.map((id) => labelOf(space, id)).join(", ")}.`}</p>
      <ul>${answer.ask.outcomes.map(({ words, means }) => html`<li>${words}: ${means}</li>`)}</ul>`
        : nothing
    }`;
}
