/** A figure: the record's own unit first, the other system beside it, its conditions and its records. */
import { html, nothing, type TemplateResult } from "lit-html";
import { sayWindow } from "../../../engine/answers/say.ts";
import type { FigureView } from "../../../engine/answers/shapes/setting.ts";
import type { AtHand } from "../../at-hand/page.ts";
import { recordLink } from "../../fit/view/reason.ts";

export function figureView(hand: AtHand, figure: FigureView): TemplateResult {
  const { said, aimFor, converted, conditions, cars, records } = figure;
  return html`<b>${said}</b>${aimFor === undefined ? nothing : html`, aim for ${aimFor}`}
    ${converted ? html`<span class="other">(${sayWindow(converted.low, converted.high)} ${converted.unit})</span>` : nothing}
    ${records.map((id) => recordLink(hand, id))}
    ${cars === undefined ? nothing : html`<br><span class="note">On: ${cars}</span>`}
    ${conditions.length > 0 ? html`<br><span class="note">Measured so: ${conditions.join("; ")}</span>` : nothing}`;
}

/** The address of a setting on this page, with the car. */
export function settingHref(hand: AtHand, name: string): string {
  return hand.hrefWithCar("settings/", { setting: name });
}
