/** Which part the question is about: by number, name or component, with what may be meant as it is typed. */
import { html, nothing, type TemplateResult } from "lit-html";
import { partCandidates } from "../../../engine/answers/part-candidates.ts";
import { findPart } from "../../../engine/answers/part-number.ts";
import type { Catalog, Part } from "../../../engine/records/catalog.ts";
import type { AtHand } from "../../at-hand/page.ts";

/** What is typed and not yet asked. */
let typed: string | undefined;
const MOST = 12;

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
      ${line ? candidates(line.knowledge.catalog, text, own.part, ask) : nothing}
    </section>`;
}

function candidates(
  catalog: Catalog,
  text: string,
  asked: string | undefined,
  ask: (part: string) => void,
): TemplateResult | typeof nothing {
  if (text.trim() === "") return nothing;
  const found = findPart(catalog, text);
  if (found.as === "part number" && (typed === undefined || found.part.number === asked)) return nothing;
  if (found.as === "casting number")
    return html`<p>“${text.trim()}” is cast into these parts; it is not a part number. Which one is it?</p>${choices(found.parts, ask)}`;
  const parts = partCandidates(catalog, text, MOST);
  if (parts.length === 0) return html`<p class="none">Records of this line name no part like “${text.trim()}”.</p>`;
  return choices(parts, ask);
}

function choices(parts: readonly Part[], ask: (part: string) => void): TemplateResult {
  return html`<ul class="choices plain-list" aria-label="Parts that may be meant">${parts.map(
    (part) =>
      html`<li><button type="button" class="choice" @click=${() => ask(part.number)}><span class="id">${part.number}</span> <small>${part.name}</small></button></li>`,
  )}</ul>`;
}
