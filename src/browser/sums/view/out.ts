/** What came of a sum: results with the figures they rest on, so that the paper shows both; or what stands in the way. */
import { html, nothing, type TemplateResult } from "lit-html";
import type { SumInput } from "../../../engine/settings/sums/sum.ts";
import type { ShownResult, WorkedOut } from "../../../engine/settings/sums/work-out.ts";
import { originOf } from "../desk.ts";
import type { AtDesk } from "./form.ts";
import { whyView } from "./why.ts";

export function outView(at: AtDesk, out: WorkedOut): TemplateResult {
  switch (out.as) {
    case "worked out":
      return workedView(at, out.results, out.steps);
    case "missing":
      return html`<div class="box look out"><p><b>Still needed:</b></p><ul>${out.missing.map(({ what }) => html`<li>${what}</li>`)}</ul></div>`;
    case "refused": {
      const ids = at.desk.sum.inputs.map((it) => it.id);
      // What belongs to no field is said here; the rest stands beside its field.
      const others = out.wrong.filter((it) => !ids.includes(it.input));
      return html`<div class="box out"><p class="wrong">Not worked out: ${fieldsWrong(out.wrong)}.</p>${others.map((it) => html`<p>${it.why}</p>`)}</div>`;
    }
    case "impossible":
      return html`<div class="box out"><p class="wrong">Impossible: ${out.why}</p></div>`;
  }
}

function fieldsWrong(wrong: readonly { readonly label: string }[]): string {
  return `look at ${[...new Set(wrong.map((it) => `“${it.label.replace(/^(or|and) /, "")}”`))].join(" and ")}`;
}

function workedView(at: AtDesk, results: readonly ShownResult[], steps: readonly string[]): TemplateResult {
  const { desk } = at;
  const id = `worked-${desk.sum.id}`;
  return html`
    <section class="box out worked" aria-labelledby=${id}>
      <h3 id=${id}>Result${desk.job ? html`: ${desk.job.title}` : nothing}</h3>
      <dl class="results">${results.map(
        ({ label, shown, unit, rounded }) =>
          html`<div><dt>${label}</dt><dd><b>${shown}${unit === "" ? nothing : ` ${unit}`}</b>${rounded === "" ? nothing : html` <small class="note">${rounded}</small>`}</dd></div>`,
      )}</dl>
      <h4>With</h4>
      <ul class="with">${desk.sum.inputs.map((input) => withView(at, input))}</ul>
      <h4>Step by step</h4>
      <ol class="steps">${steps.map((step) => html`<li>${step}</li>`)}</ol>
    </section>`;
}

function withView({ desk, hand }: AtDesk, input: SumInput): TemplateResult | typeof nothing {
  const typed = desk.typed[input.id]?.trim() || input.default;
  if (typed === undefined) return nothing;
  const origin = originOf(desk, input.id);
  const from = origin?.typed === undefined ? nothing : html`; <small class="note">${whyView(origin, hand)}</small>`;
  return html`<li>${input.label.replace(/^(or|and) /, "")}: ${saidWithUnit(input, typed)}${from}</li>`;
}

/** A bare number counts in the unit of the sum; a bare drill is a number drill. */
function saidWithUnit({ unit, drill }: SumInput, typed: string): string {
  if (!/^[-+\d.,/\s]+$/.test(typed)) return typed;
  return drill && /^\d{1,2}$/.test(typed) ? `No. ${typed} drill` : `${typed} ${unit}`.trim();
}
