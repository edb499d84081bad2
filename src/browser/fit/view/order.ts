/** What has to be ordered, as a list to copy or to print. */
import { html, nothing, type TemplateResult } from "lit-html";
import type { MayFitAnswer } from "../../../engine/answers/shapes/may-fit.ts";
import { copyOrder } from "../../at-hand/copy-order.ts";
import type { AtHand } from "../../at-hand/page.ts";
import { partLink } from "./reason.ts";

export function orderView(hand: AtHand, { order, places }: MayFitAnswer): TemplateResult | typeof nothing {
  if (order.length === 0 || !hand.line) return nothing;
  const { parts } = hand.line.knowledge.catalog;
  const lines = order.map((number) => `${number} ${parts.get(number)?.name ?? ""}`.trim());
  // The work says how many of each: "all four of them".
  const work = [...new Set(places.flatMap((at) => at.fits.flatMap(({ ways: [best] }) => best?.do ?? [])))];
  return html`
    <div class="order">
      <h3>To order</h3>
      <ul>${order.map((number) => html`<li>${partLink(hand, number)} ${parts.get(number)?.name}</li>`)}</ul>
      ${work.map((it) => html`<p class="note">Note: ${it}</p>`)}
      <p class="choices"><button type="button" class="plain" @click=${(event: Event) => copyOrder(event, [...lines, ...work.map((it) => `Note: ${it}`)])}>Copy the list</button>
        <button type="button" class="plain" @click=${() => print()}>Print</button> <span role="status"></span></p>
    </div>`;
}
