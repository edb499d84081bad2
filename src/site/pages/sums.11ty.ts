/** Shop sums: each with its formula, drawing and worked example, and the sums that changes bring about. A script does them. */
import { sumDrawing } from "../../drawings/sum-drawing.ts";
import type { Reason } from "../../engine/answers/answer.ts";
import { answerSum } from "../../engine/answers/answer-sum.ts";
import type { JobShown, SumShown } from "../../engine/answers/shapes/sum.ts";
import { address } from "../../engine/graph/node.ts";
import { SUMS } from "../../engine/settings/sums/all.ts";
import type { Sum, SumInput } from "../../engine/settings/sums/sum.ts";
import { workOut } from "../../engine/settings/sums/work-out.ts";
import { UNITS } from "../../engine/settings/unit-table.ts";
import { frame } from "../includes/frame.ts";
import { type Html, html } from "../includes/html.ts";
import { recordLink } from "../includes/links.ts";
import { openPage, type Page } from "../includes/page.ts";
import { picture } from "../includes/picture.ts";
import { upperFirst } from "../includes/words.ts";
import type { Site } from "../site.ts";

export const data = { permalink: "/sums/index.html" };

export function render({ site }: { site: Site }): string {
  const page = openPage(site, "/sums/");
  const sums = Object.values(SUMS);
  return frame(page, {
    title: "Shop sums",
    description: "The sums done at the bench, each with its formula, a worked example and its source; units converted.",
    crumbs: [],
    scripts: ["sums"],
    styles: ["island", "fit", "drawing", "sums"],
    body: html`
<header class="title"><h1>Shop sums</h1>
<p class="lead">The small sums that model changes bring about, each with its formula and where that comes from. Give the figures in any fitting unit.</p></header>
<p id="sums-status" class="hidden" role="status"></p>
<noscript><p class="box">Working them out takes a script, which this browser does not run. Every formula stands below with a worked example, to be done by hand.</p></noscript>
<nav class="on-screen" aria-label="Sums"><ul class="jump"><li><a href="#convert">Units: convert</a></li>${sums.map(({ id, name }) => html`<li><a href="#${id}">${name}</a></li>`)}</ul></nav>
${convertSection()}
<div id="sums" class="island"></div>
${sums.map((sum) => sumSection(page, sum))}`,
  });
}

function convertSection(): Html {
  const dimensions = [...Map.groupBy(UNITS, (unit) => unit.dimension)];
  return html`<section class="sum" aria-labelledby="convert"><h2 id="convert">Units: convert</h2>
<p>When a figure is in one unit and the gauge in another. Factors are exact; what had to be rounded is said, and the limits of a window are rounded inward.</p>
<div id="do-convert" class="island"></div>
<details class="units"><summary>Units known here, with their factors</summary>${dimensions.map(
    ([dimension, units]) =>
      html`<h3>${upperFirst(dimension)}</h3><ul>${units.map((unit) => html`<li><b>${unit.id}</b> ${unit.name}: ${unit.factor} <small class="source">${unit.source}</small></li>`)}</ul>`,
  )}</details>
</section>`;
}

function sumSection(page: Page, sum: Sum): Html {
  const { sum: shown, jobs } = answerSum(page.site.knowledge, { sum: sum.id }, page.site.catalog.sums);
  const drawing = sumDrawing(sum.id);
  return html`<section class="sum" aria-labelledby="${sum.id}"><h2 id="${sum.id}">${sum.name}</h2>
<p>${sum.about}</p>
${drawing ? html`<div class="sum-drawing">${picture(drawing)}</div>` : ""}
<p class="formula">${sum.formula.split(/;\s+/).map((line, i) => html`${i > 0 ? html`<br>` : ""}<code>${line}</code>`)}</p>
${sum.caution ? html`<p class="box caution"><span aria-hidden="true">▲</span> ${sum.caution}</p>` : ""}
<div id="do-${sum.id}" class="island"></div>
${shown ? inputsList(sum, shown) : ""}
${exampleOf(sum)}
${sum.notes.length > 0 ? html`<h3>To note</h3><ul>${sum.notes.map((note) => html`<li>${note}</li>`)}</ul>` : ""}
<p class="source">Source: ${sum.source}</p>
${jobsList(page, sum, jobs)}
</section>`;
}

function inputsList(sum: Sum, shown: SumShown): Html {
  return html`<details class="inputs"><summary>What goes in, with its limits</summary>
<ul>${sum.inputs.map((input) => html`<li><b>${input.letter}</b> ${plain(input.label)}${input.unit === "" ? "" : `, in ${input.unit}`}. ${inputWords(input, shown)}</li>`)}</ul>
${(sum.ways ?? []).map(
  ({ what, ways, several }) =>
    html`<p>${upperFirst(what)}, in ${several ? "at least one" : "just one"} of these ways: ${ways.map((way) => way.map((id) => labelOf(sum, id)).join(" with ")).join("; ")}.</p>`,
)}</details>`;
}

function inputWords(input: SumInput, shown: SumShown): string {
  const { above, atLeast, atMost, whole, window, choices } = input;
  const limits = [
    ...(above === undefined ? [] : [`above ${above}`]),
    ...(atLeast === undefined ? [] : [`at least ${atLeast}`]),
    ...(atMost === undefined ? [] : [`at most ${atMost}`]),
  ].join(", ");
  const needed = shown.inputs.find((it) => it.id === input.id)?.needed;
  return [
    ...(choices ? [`One of: ${choices.join(", ")}.`] : []),
    ...(limits === "" ? [] : [`${upperFirst(whole ? `a whole number, ${limits}` : limits)}.`]),
    ...(window ? ["A value or a window."] : []),
    ...(input.default === undefined ? [] : [`${upperFirst(input.default)} if nothing is given.`]),
    ...(needed === "no" && input.default === undefined ? ["May be left out."] : []),
    ...(input.help === undefined ? [] : [input.help]),
  ].join(" ");
}

function exampleOf(sum: Sum): Html {
  const { inputs, results, source } = sum.example;
  const out = workOut(sum, inputs);
  return html`<div class="example"><h3>Worked example</h3>
<p>${Object.entries(inputs).map(([id, typed], i) => html`${i > 0 ? "; " : ""}${labelOf(sum, id)} <b>${typed}</b>`)}</p>
${out.as === "worked out" ? html`<ol class="steps">${out.steps.map((step) => html`<li>${step}</li>`)}</ol>` : ""}
<p>${Object.entries(results).map(([id, text], i) => {
    const result = out.as === "worked out" ? out.results.find((it) => it.id === id) : undefined;
    return html`${i > 0 ? "; " : ""}${result?.label ?? id} <b>${`${text} ${result?.unit ?? ""}`.trim()}</b>`;
  })}</p>
<p class="source">${upperFirst(source)}</p></div>`;
}

/** A job carries its figures as data too, so that the script can fill them in before any record is loaded. */
function jobsList(page: Page, sum: Sum, jobs: readonly JobShown[]): Html | "" {
  if (jobs.length === 0) return "";
  return html`<h3>On record for this sum</h3><ul class="jobs">${jobs.map(
    (job) => html`<li data-job="${JSON.stringify(inShort(job))}"><b>${job.title}</b>: ${job.inputs.map(
      ({ input, typed, why }, i) =>
        html`${i > 0 ? "; " : ""}${labelOf(sum, input)} ${typed === undefined ? html`<i>${dependsWords(why)}</i>` : html`<b>${typed}</b>`}`,
    )}.
<p class="note">${recordLink(page, job.record)} · <a href="${page.href(address("component", job.component))}">${upperFirst(page.site.catalog.components.get(job.component)?.name ?? job.component)}</a></p></li>`,
  )}</ul>`;
}

function dependsWords(why: string): string {
  return /\bdepends on\b|some of the cars/.test(why) ? "by car" : "not on record";
}

/** One statement a record is enough to lead there. */
function inShort(job: JobShown): JobShown {
  return { ...job, inputs: job.inputs.map((it) => ({ ...it, because: oneEach(it.because) })) };
}

function oneEach(because: readonly Reason[]): Reason[] {
  return because.filter((it, i) => because.findIndex((other) => other.record === it.record) === i);
}

function labelOf(sum: Sum, id: string): string {
  return plain(sum.inputs.find((it) => it.id === id)?.label ?? id);
}

/** "Or" and "and" before a label belong to the order of the fields. */
function plain(label: string): string {
  return label.replace(/^(or|and) /, "");
}
