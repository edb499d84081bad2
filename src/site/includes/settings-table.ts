/** Settings as pages show them: the record's own unit first, the other system beside it. */
import type { RecordView } from "../../engine/answers/answer-record.ts";
import { sayWindow } from "../../engine/answers/say.ts";
import { type Html, html } from "./html.ts";
import type { Page } from "./page.ts";

export function settingsTable(page: Page, settings: RecordView["settings"]): Html {
  return html`<ul class="settings">${settings.map(
    (it) => html`<li id="${it.anchor}">
<h3>${it.name}</h3>
<p class="figure"><b>${sayWindow(it.low, it.high)} ${it.unit}</b>${it.nominal !== undefined && it.low !== it.high ? html`, aim for ${it.stated ?? it.nominal}` : ""}${it.converted ? html` <span class="other">(${sayWindow(it.converted.low, it.converted.high)} ${it.converted.unit})</span>` : ""}</p>
${it.conditions ? html`<p>Conditions: ${it.conditions}</p>` : ""}
<p class="scope">${it.scope.words}</p>
<p class="on-screen"><a href="${page.href("/settings/")}?setting=${encodeURIComponent(it.name)}">On your car, and your reading judged<span class="hidden">: ${it.name}</span></a></p></li>`,
  )}</ul>
<p class="note">Limits count as inside. The record's unit comes first; converted limits are rounded inward and only help the eye.</p>`;
}
