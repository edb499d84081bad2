/** What is due on the car, beside what was due on cars like it of the year before. */
import { html, nothing, type TemplateResult } from "lit-html";
import type { ScheduleAnswer } from "../../../engine/answers/shapes/setting.ts";
import { lookBox } from "../../at-hand/look-box.ts";
import type { AtHand } from "../../at-hand/page.ts";
import { recordLink } from "../../fit/view/reason.ts";

type Item = ScheduleAnswer["items"][number];

const CHANGES: Readonly<Record<Item["change"], string>> = {
  same: "the same",
  changed: "changed",
  new: "new on record",
  "no longer on record": "no longer on record",
  open: "depends",
  "not compared": "",
};

export function scheduleView(hand: AtHand, answer: ScheduleAnswer): TemplateResult {
  const { items, against } = answer;
  return html`
    <section aria-labelledby="schedule">
      <h2 id="schedule">Service intervals: ${items.length}</h2>
      ${items.length === 0 ? html`<p class="none">${answer.words}</p>` : nothing}
      ${
        items.length > 0
          ? html`<div class="wide" tabindex="0" role="region" aria-label="Service intervals"><table>
        <thead><tr><th scope="col">What</th><th scope="col">On this car</th>${against === undefined ? nothing : html`<th scope="col">${against}, cars like it</th>`}</tr></thead>
        <tbody>${items.map(
          (
            item,
          ) => html`<tr><th scope="row">${item.name}${against === undefined || item.change === "not compared" ? nothing : html`<br><span class="tag">${CHANGES[item.change]}</span>`}</th>
            <td data-year="On this car">${duesView(hand, item, item.due)}${item.ask ? html`<details class="on-screen"><summary>What to look at<span class="hidden">: ${item.name}</span></summary>${lookBox(hand, item.ask)}</details>` : nothing}</td>${against === undefined ? nothing : html`<td data-year=${`${against}, cars like it`}>${duesView(hand, item, item.before)}</td>`}</tr>`,
        )}</tbody></table></div>
        <p class="note">Whichever comes first, counted from the last time it was done. A part with an interval of its own brings it to the car.</p>`
          : nothing
      }
    </section>`;
}

function duesView(hand: AtHand, item: Item, dues: Item["due"]): TemplateResult {
  if (dues.length === 0) return html`<span class="note">not on record</span>`;
  return html`${dues.map(
    (due) => html`<p>${due.none ? "no interval" : due.said} ${due.records.map((id) => recordLink(hand, id))}
      ${due.cars ? html`<br><span class="note">On: ${due.cars.words}</span>` : nothing}
      ${due.note === undefined ? nothing : html`<br><span class="note">${due.note}</span>`}</p>`,
  )}${item.perhapsNone && dues === item.due ? html`<p class="note">On others not on record</p>` : nothing}`;
}
