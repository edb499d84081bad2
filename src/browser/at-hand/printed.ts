/** The last line of an answer on paper: when it was printed, and where to look whether it still holds. */
import { html, type TemplateResult } from "lit-html";

export function printedLine(): TemplateResult {
  const day = new Date().toLocaleDateString(document.documentElement.lang, { dateStyle: "long" });
  return html`<p class="printed">Printed ${day}. Check before use. ${location.href}</p>`;
}
