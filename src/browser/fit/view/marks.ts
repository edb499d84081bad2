/** Marks side by side, easiest to see first. */
import { html, nothing, type TemplateResult } from "lit-html";
import type { MarksView } from "../../../engine/answers/answer-record.ts";
import type { AtHand } from "../../at-hand/page.ts";
import { partLink } from "./reason.ts";

export function marksView(hand: AtHand, marks: readonly MarksView[]): TemplateResult[] {
  return marks.map(({ component, features }) => {
    const parts = [...new Set(features.flatMap((feature) => Object.keys(feature.values)))];
    return html`<div class="scroll" role="group" aria-label="Marks: ${component}" tabindex="0"><table class="marks">
      <thead><tr><th scope="col">What to look at</th>${parts.map((part) => html`<th scope="col">${partLink(hand, part)}</th>`)}</tr></thead>
      <tbody>${features.map(
        (
          feature,
        ) => html`<tr><th scope="row">${feature.name}<small>${feature.where}${feature.wearsOff ? "; it wears off, so a missing mark proves nothing" : nothing}${feature.note ? `; ${feature.note}` : nothing}</small></th>
          ${parts.map((part) => html`<td>${value(feature.values[part], feature.unit)}</td>`)}</tr>`,
      )}</tbody></table></div>`;
  });
}

function value(mark: string | number | undefined, unit: string | undefined): TemplateResult | string {
  if (mark === undefined) return html`<span class="none">not stated</span>`;
  return unit !== undefined && typeof mark === "number" ? `${mark} ${unit}` : String(mark);
}
