/** The parts that it can still be, each with what the records show of it; and those that are ruled out, with why. */
import { html, nothing, type TemplateResult } from "lit-html";
import { markDrawing } from "../../../drawings/mark-drawing.ts";
import { notBuilt } from "../../../engine/answers/say-tell-apart.ts";
import type { TellApartAnswer } from "../../../engine/answers/shapes/tell-apart.ts";
import type { Catalog } from "../../../engine/records/catalog.ts";
import type { AtHand } from "../../at-hand/page.ts";
import { picture } from "../../at-hand/picture.ts";
import { capital } from "../../car/view/words.ts";
import { partLink, recordLink } from "../../fit/view/reason.ts";

type Possible = TellApartAnswer["parts"][number];

export function possibleView(
  hand: AtHand,
  catalog: Catalog,
  { parts, verdict }: TellApartAnswer,
): TemplateResult | typeof nothing {
  if (parts.length === 0) return nothing;
  return html`
    <h3>${verdict === "one part" ? "It can only be" : `Still possible: ${parts.length}`}</h3>
    <ul class="possible">${parts.map(
      (part) => html`<li>
      <p><b>${partLink(hand, part.number)}</b> ${part.name}${part.builtHere ? html` <span class="tag">${builtSaid(part, part.builtHere)}</span>` : nothing}</p>
      ${part.refused.map((no) => html`<p class="box trap"><b>${part.number} ${no.says} in place of ${no.for} on this car.</b> ${no.why ?? ""} ${recordLink(hand, no.record)}</p>`)}
      ${marksShown(catalog, part.number)}</li>`,
    )}</ul>`;
}

function builtSaid(part: Possible, builtHere: NonNullable<Possible["builtHere"]>): string {
  switch (builtHere) {
    case "yes":
      return "Built into this car";
    case "perhaps":
      return "Perhaps built into this car: more has to be known of it";
    case "no":
      return capital(notBuilt(part));
    case "unknown":
      // The records at hand are those of one line: what others were built with they do not say.
      return "No record says that the plant built it into such a car";
  }
}

function marksShown(catalog: Catalog, number: string): TemplateResult {
  const part = catalog.parts.get(number);
  const shown = (part?.features ?? []).flatMap((feature) => {
    const value = part?.marks[feature.id];
    if (value === undefined) return [];
    const unit = feature.unit !== undefined && typeof value === "number" ? ` ${feature.unit}` : "";
    return [{ name: feature.name, said: `${value}${unit}`, drawing: markDrawing(feature, value) }];
  });
  if (shown.length === 0) return html`<p class="none">No mark on record.</p>`;
  return html`<ul class="shown">${shown.map(
    ({ name, said, drawing }) =>
      html`<li>${drawing ? picture(drawing) : nothing}<span>${name}: <b>${said}</b></span></li>`,
  )}</ul>`;
}

export function ruledOutView(hand: AtHand, { ruledOut, leftOut }: TellApartAnswer): TemplateResult {
  return html`
    ${
      ruledOut.length > 0
        ? html`<h3>Ruled out: ${ruledOut.length}</h3>
      <ul class="ruled-out">${ruledOut.map((it) => html`<li>${partLink(hand, it.number)} ${it.name}. <span class="why">${capital(it.why)}</span></li>`)}</ul>`
        : nothing
    }
    ${leftOut.length > 0 ? html`<p class="note">Not compared: ${leftOut.map((it, i) => html`${i > 0 ? "; " : ""}${partLink(hand, it.number)} ${it.name} (${it.why})`)}.</p>` : nothing}`;
}
