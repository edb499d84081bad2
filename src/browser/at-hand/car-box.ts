/** Which car the question is about, with what was said of it; what is not known is said on the page "this car". */
import { html, nothing, type TemplateResult } from "lit-html";
import { sayFact } from "../../engine/answers/look.ts";
import { capital, stepWords } from "../car/view/words.ts";
import { factSaid } from "./fact-said.ts";
import type { AtHand } from "./page.ts";

export function carBox(hand: AtHand): TemplateResult {
  const { lines, state, reading } = hand;
  const known = state.steps.filter((step) => step.kind !== "skip");
  return html`
    <section aria-labelledby="which">
      <h2 id="which">The car</h2>
      ${
        known.length > 0
          ? html`<ul class="chips">${known.map(
              (step) => html`<li>
              <span>${stepWords(lines.space, step, reading.facts)}</span>
              <button type="button" class="plain take-back" @click=${() => hand.takeBack(step)}><span aria-hidden="true">✕</span><span class="hidden">Take back ${stepWords(lines.space, step, reading.facts)}</span></button></li>`,
            )}</ul>`
          : nothing
      }
      ${reading.refused.map(({ why }) => html`<p class="wrong">${why}</p>`)}
      ${reading.plate && reading.plate.verdict !== "read" ? html`<p class="wrong">${reading.plate.ask?.what ?? "The number on the plate was misread."}</p>` : nothing}
      ${reading.conflict.length > 0 ? html`<p class="wrong">No such car was built: ${reading.conflict.map((fact) => factSaid(lines.space, sayFact(lines.space, fact))).join(" and ")} do not go together.</p>` : nothing}
      ${reading.lines.length > 1 ? lineButtons(hand) : nothing}
      <p class="on-screen"><a href=${hand.hrefWithCar("car/", hand.own)}>${known.length > 0 ? "Say more about this car" : `Say which car it is${lines.plates.length > 0 ? ", or read its plate" : ""}`}</a></p>
      ${known.length === 0 && hand.recent.length > 0 ? recentList(hand) : nothing}
    </section>`;
}

function lineButtons(hand: AtHand): TemplateResult {
  const { lines, reading } = hand;
  const trait = lines.space.trait(lines.space.role("line") as number);
  const possible = lines.lines.filter((line) => reading.lines.includes(line.id));
  return html`<p class="choices" role="group" aria-label=${capital(trait.label)}>${possible.map(
    (line) =>
      html`<button type="button" class="choice" @click=${() => hand.say({ kind: "fact", trait: trait.id, value: line.id })}>${line.name}</button>`,
  )}</p>`;
}

function recentList(hand: AtHand): TemplateResult {
  return html`<h3>Cars looked at before, in this browser</h3>
    <ul>${hand.recent.map((car) => html`<li><a href=${hand.hrefWithQuestion(car.search)}>${car.label}</a></li>`)}</ul>`;
}
