/** "Look at the engine": pressing it makes that the question asked. */
import { html, type TemplateResult } from "lit-html";
import type { Look } from "../../../engine/answers/shapes/look.ts";
import type { Actions } from "./actions.ts";

export function lookButton({ trait, label }: Look, of: string, act: Actions): TemplateResult {
  return html`<button type="button" class="as-link" @click=${() => act.askFor(trait)}>Look at the ${label}<span class="hidden"> for ${of}</span></button>`;
}
