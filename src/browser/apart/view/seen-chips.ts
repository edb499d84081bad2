/** What was seen so far, each with a button that takes it back. */
import { html, nothing, type TemplateResult } from "lit-html";

/** A mark, its name and what was seen of it, in words. */
export interface SeenSaid {
  readonly feature: string;
  readonly name: string;
  readonly seen: string;
}

export function seenChips(
  seen: readonly SeenSaid[],
  takeBack: (mark: string) => void,
): TemplateResult | typeof nothing {
  if (seen.length === 0) return nothing;
  return html`
    <h3>Seen</h3>
    <ul class="chips seen">${seen.map(
      (it) => html`<li><span>${it.name}: <b>${it.seen}</b></span> ${takeBackButton(it, takeBack)}</li>`,
    )}</ul>`;
}

function takeBackButton({ feature, name, seen }: SeenSaid, takeBack: (mark: string) => void): TemplateResult {
  return html`<button type="button" class="plain take-back" @click=${() => takeBack(feature)}><span aria-hidden="true">✕</span><span class="hidden">Take back ${name}: ${seen}</span></button>`;
}
