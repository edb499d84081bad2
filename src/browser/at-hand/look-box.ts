/** What to look at on the car, and what each answer would mean; an answer pressed is said of the car. */
import { html, nothing, type TemplateResult } from "lit-html";
import type { Look } from "../../engine/answers/shapes/look.ts";
import { FITTED } from "../../engine/scope/space.ts";
import { capital } from "../car/view/words.ts";
import type { AtHand } from "./page.ts";

/** `isSaid`: what to look at stands above already. */
export function lookBox(hand: Pick<AtHand, "say">, look: Look, isSaid = false): TemplateResult {
  const kind = look.trait.startsWith(`${FITTED} `) ? "found" : "fact";
  return html`
    <div class="box look">
      ${isSaid ? nothing : html`<p><b>${look.what}</b></p>`}
      <p class="choices">${look.outcomes.map(
        ({ values, words, means }) =>
          html`<button type="button" class="choice" @click=${() => hand.say({ kind, trait: look.trait, value: values.join(",") })}>
            ${capital(words)} <small>${means}</small></button>`,
      )}</p>
    </div>`;
}
