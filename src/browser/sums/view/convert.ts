/** A quantity in another unit. What may be meant is asked, never guessed. */
import { html, nothing, type TemplateResult } from "lit-html";
import { live } from "lit-html/directives/live.js";
import { answerConvert } from "../../../engine/answers/answer-convert.ts";
import type { ConvertAnswer } from "../../../engine/answers/shapes/convert.ts";
import { findUnits } from "../../../engine/settings/find-unit.ts";

let value = "";
let to = "";
let answer: ConvertAnswer | undefined;

export function convertForm(draw: () => void, say: (words: string) => void): TemplateResult {
  const ask = (): void => {
    answer = answerConvert(undefined, { value, ...(to.trim() === "" ? {} : { to }) });
    draw();
    say(answer.words);
    document.querySelector("#do-convert .out")?.scrollIntoView({ block: "nearest" });
    document.querySelector<HTMLElement>("#do-convert [aria-invalid=true]")?.focus();
  };
  const typed = (event: Event): string => {
    answer = undefined;
    return (event.target as HTMLInputElement).value;
  };
  const isWrong = answer?.verdict === "refused";
  return html`
    <form class="sum-form" aria-labelledby="form-convert" @submit=${(event: SubmitEvent) => {
      event.preventDefault();
      ask();
    }}>
      <h3 id="form-convert">Convert</h3>
      <div class="fields">
        <div class="field"><label for="convert-value">Value with its unit, or a drill</label>
          <div class="row"><input id="convert-value" type="text" autocomplete="off" autocapitalize="off" spellcheck="false" .value=${live(value)}
            aria-invalid=${isWrong ? "true" : nothing} aria-describedby=${isWrong ? "convert-wrong" : "convert-note"} @input=${(
              event: Event,
            ) => {
              value = typed(event);
              draw();
            }}></div>
          ${isWrong ? html`<p class="wrong" id="convert-wrong">${answer?.words}</p>` : nothing}
          <p class="note" id="convert-note">As in 0.76 mm, 30 thou, 7/64 in, No. 42 drill, 35 ft-lb, 28..32 psi.</p></div>
        <div class="field"><label for="convert-to">To this unit</label>
          <div class="row"><input id="convert-to" type="text" autocomplete="off" autocapitalize="off" spellcheck="false" .value=${live(to)} aria-describedby="convert-to-note" @input=${(
            event: Event,
          ) => {
            to = typed(event);
            draw();
          }}></div>
          <p class="note" id="convert-to-note">If left empty, the unit that usually stands beside it.</p></div>
      </div>
      <p class="choices"><button type="submit">Convert</button></p>
    </form>
    ${answer?.verdict === "choose" ? chooseView(answer, ask) : nothing}
    ${answer?.verdict === "converted" ? convertedView(answer) : nothing}`;
}

function chooseView({ words, choices }: ConvertAnswer, ask: () => void): TemplateResult {
  return html`<div class="box look out"><p><b>${words}</b></p><p class="choices">${choices.map(
    (choice) =>
      html`<button type="button" class="choice" @click=${() => {
        // A unit alone was asked about as the one to convert to.
        if (findUnits(choice.typed).length > 0) to = choice.typed;
        else value = choice.typed;
        ask();
      }}>${choice.typed} <small>${choice.words}</small></button>`,
  )}</p></div>`;
}

function convertedView({ given, read, result, others, drills, factor, source }: ConvertAnswer): TemplateResult {
  const exactness = result?.exact ? "exactly" : result?.high === undefined ? "rounded" : "limits rounded inward";
  return html`
    <section class="box out worked" aria-labelledby="worked-convert">
      <h3 id="worked-convert">Result</h3>
      <dl class="results"><div><dt>${read?.shown ?? given}</dt><dd><b>${result?.shown}</b> <small class="note">${exactness}</small></dd></div></dl>
      ${others.length > 0 ? html`<p>Also: ${others.map((it, i) => html`${i > 0 ? "; " : nothing}${it.shown}${it.exact ? nothing : " (rounded)"}`)}.</p>` : nothing}
      ${drills ? drillsView(drills) : nothing}
      <p class="source">${factor}. Source: ${source}.</p>
    </section>`;
}

function drillsView({ exact, below, above }: NonNullable<ConvertAnswer["drills"]>): TemplateResult {
  const say = (drill: { name: string; shown: string }): string => `${drill.name} (${drill.shown})`;
  return html`<p>Drills: ${exact.length > 0 ? html`<b>${exact.map(say).join(", ")}</b>; ` : nothing}next smaller ${below ? say(below) : "none"}, next larger ${above ? say(above) : "none"}.</p>`;
}
