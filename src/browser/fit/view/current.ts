/** Which number is delivered today for the part asked: that is a delivery rule, and promises nothing about fitting. */
import { html, nothing, type TemplateResult } from "lit-html";
import type { CurrentAnswer } from "../../../engine/answers/shapes/current.ts";
import { lookBox } from "../../at-hand/look-box.ts";
import type { AtHand } from "../../at-hand/page.ts";
import { partLink, reasonView } from "./reason.ts";

export function currentView(hand: AtHand, answer: CurrentAnswer): TemplateResult | typeof nothing {
  const others = answer.currents.filter((it) => it.steps.length > 0);
  if (others.length === 0) return nothing;
  return html`
    <h3>What is delivered today</h3>
    <p>${answer.words}</p>
    ${answer.ask ? lookBox(hand, answer.ask) : nothing}
    <ul>${others.map(
      (
        it,
      ) => html`<li>${partLink(hand, it.part)} ${it.name}; may it go on this car: <a href=${hand.hrefWithCar("fit/", { part: it.part })}>${it.fits}</a>
        <ol class="argument">${it.steps.map((step) => html`<li>${reasonView(hand, step)}</li>`)}</ol></li>`,
    )}</ul>
    <p class="note">A delivery rule. It does not promise that the part fits.</p>`;
}
