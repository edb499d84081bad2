/** Cars looked at before in this browser. */
import { html, nothing, type TemplateResult } from "lit-html";
import type { RecentCar } from "../recent.ts";
import type { Actions } from "./actions.ts";

export function recentView(cars: readonly RecentCar[], act: Actions): TemplateResult | typeof nothing {
  if (cars.length === 0) return nothing;
  return html`
    <details class="recent">
      <summary>Recent cars</summary>
      <p class="note">Kept in this browser only.</p>
      <ul class="known">${cars.map(
        ({ search, label }) => html`<li><a href=${search}>${label}</a>
        <button type="button" class="plain" @click=${() => act.forget(search)}>Remove<span class="hidden">: ${label}</span></button></li>`,
      )}</ul>
      <p><button type="button" class="plain" @click=${() => act.forget(undefined)}>Remove all</button></p>
    </details>`;
}
