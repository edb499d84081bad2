/** Which part the question is about: by number, name or component, with what may be meant as it is typed. */
import { html, nothing, type TemplateResult } from "lit-html";
import { findPart } from "../../../engine/answers/part-number.ts";
import type { Part } from "../../../engine/records/catalog.ts";
import type { AtHand } from "../../at-hand/page.ts";
import { isNoNumber, partsMeant } from "./parts-meant.ts";

/** What is typed and not yet asked. */
let typed: string | undefined;

export function partBox(hand: AtHand): TemplateResult {
  const { line, own } = hand;
  const text = typed ?? own.part ?? "";
  const ask = (part: string): void => {
    typed = undefined;
    hand.ask({ part });
  };
  return html`
    <section aria-labelledby="which-part" class="on-screen">
      <h2 id="which-part">The part</h2>
      <form @submit=${(event: SubmitEvent) => {
        event.preventDefault();
        if (text.trim() !== "") ask(text.trim());
      }}>
        <label for="part">Part number, name or component</label>
        <div class="row">
          <input id="part" type="text" autocomplete="off" autocapitalize="characters" spellcheck="false" .value=${text}
            @input=${(event: Event) => {
              typed = (event.target as HTMLInputElement).value;
              hand.draw();
            }} aria-describedby="part-hint" />
          <button type="submit">Ask</button>
        </div>
        <p id="part-hint" class="note">Spaces, dashes and letters read for figures are forgiven. A number cast into a part is often another one.</p>
      </form>
      ${line ? meantView(hand, text, ask) : nothing}
    </section>`;
}

function meantView(hand: AtHand, text: string, ask: (part: string) => void): TemplateResult | typeof nothing {
  const catalog = hand.line?.knowledge.catalog;
  const words = text.trim();
  if (!catalog || words === "") return nothing;
  const found = findPart(catalog, text);
  const isAsked = typed === undefined || (found.as === "part number" && found.part.number === hand.own.part);
  if (isAsked && !isNoNumber(catalog, text)) return nothing;
  const { as, parts } = partsMeant(catalog, text);
  if (as === "casting number")
    return html`<p>“${words}” is cast into these parts; it is not a part number. Which one is it?</p>${choices(parts, ask)}`;
  if (parts.length > 0)
    return html`${isAsked ? html`<p>“${words}” is no part number. Which of these is it?</p>` : nothing}${choices(parts, ask)}`;
  // Of what was asked already the page says below that there is nothing.
  return html`<p class="none">${isAsked ? nothing : html`Records of this line name no part like “${words}”. `}<a href=${hand.href(`ask/?q=${encodeURIComponent(words)}`)}>Search everything for “${words}”</a></p>`;
}

function choices(parts: readonly Part[], ask: (part: string) => void): TemplateResult {
  return html`<ul class="choices plain-list" aria-label="Parts that may be meant">${parts.map(
    (part) =>
      html`<li><button type="button" class="choice" @click=${() => ask(part.number)}><span class="id">${part.number}</span> <small>${part.name}</small></button></li>`,
  )}</ul>`;
}
