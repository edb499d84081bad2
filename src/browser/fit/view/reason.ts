/** A statement with the record that says so, and the ways to the pages of parts and records. */
import { html, type TemplateResult } from "lit-html";
import type { Reason } from "../../../engine/answers/answer.ts";
import type { AtHand } from "../../at-hand/page.ts";

export function reasonView(hand: AtHand, { text, record, address }: Reason): TemplateResult {
  return html`${text}. <a class="cite" href=${hand.href(address.slice(1))}>${record}</a>`;
}

export function partLink(hand: AtHand, number: string): TemplateResult {
  return html`<a class="id" href=${hand.href(`parts/${encodeURIComponent(number)}/`)}>${number}</a>`;
}

export function recordLink(hand: AtHand, id: string): TemplateResult {
  return html`<a class="cite" href=${hand.href(`records/${encodeURIComponent(id)}/`)}>${id}</a>`;
}
