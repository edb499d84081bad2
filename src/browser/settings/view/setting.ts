/** One setting: the figure in force, what to look at, its history, and what the records say beside it. */
import { html, nothing, type TemplateResult } from "lit-html";
import type { SettingAnswer } from "../../../engine/answers/shapes/setting.ts";
import { factsLine } from "../../at-hand/facts-line.ts";
import { lookBox } from "../../at-hand/look-box.ts";
import type { AtHand } from "../../at-hand/page.ts";
import { reasonView, recordLink } from "../../fit/view/reason.ts";
import { figureView, settingHref } from "./figure.ts";

/** A shape before a colour. */
const SIGNS: Readonly<Record<string, string>> = {
  "in force": "=",
  "look first": "?",
  "no such setting": "–",
  contradiction: "✕",
};

export function settingView(hand: AtHand, answer: SettingAnswer, reading: TemplateResult): TemplateResult {
  const [view] = answer.settings;
  if (!view) return html`<p class="wrong">${answer.words}</p>`;
  return html`
    <section aria-labelledby="setting" class="answer">
      <h2 id="setting" tabindex="-1">${view.name}</h2>
      <p class="big ${answer.verdict.replaceAll(/\W+/g, "-")}"><span class="sign" aria-hidden="true">${SIGNS[answer.verdict] ?? "?"}</span> ${answer.words}</p>
      ${view.refused.map((text) => html`<p class="box trap"><b>${text}</b></p>`)}
      ${view.component === undefined ? nothing : html`<p class="note">Set on: ${view.component}</p>`}
      ${answer.ask ? lookBox(hand, answer.ask) : nothing}
      ${view.figures.length > 0 ? html`<ul class="settings">${view.figures.map((figure) => html`<li><p class="figure">${figureView(hand, figure)}</p></li>`)}</ul>` : nothing}
      ${answer.verdict === "no such setting" ? html`<h3>What the records give to other cars</h3><ul>${answer.because.map((it) => html`<li>${reasonView(hand, it)}</li>`)}</ul>` : nothing}
      ${reading}
      ${historyView(hand, answer)}
      ${answer.withIt.map((it) => besideView(hand, it))}
      ${answer.cautions.length > 0 ? html`<aside class="box caution" aria-labelledby="caution"><h3 id="caution"><span aria-hidden="true">▲</span> Caution</h3>${answer.cautions.map((it) => html`<details><summary>${it.title}</summary><p>${it.text}</p><p class="source">Source: ${it.source}</p></details>`)}</aside>` : nothing}
      ${factsLine(hand, answer)}
      <p class="on-screen"><a href=${hand.hrefWithCar("settings/")}>All settings of this car</a></p>
    </section>`;
}

export function chooseView(hand: AtHand, answer: SettingAnswer): TemplateResult {
  return html`
    <section aria-labelledby="setting" class="answer">
      <h2 id="setting" tabindex="-1">Which setting?</h2>
      <p>${answer.words}</p>
      <ul class="choices plain-list">${answer.settings.map((it) => html`<li><a class="choice button" href=${settingHref(hand, it.name)}>${it.name} <small>${it.figures.map((one) => one.said).join(", or ")}</small></a></li>`)}</ul>
      <p class="on-screen"><a href=${hand.hrefWithCar("settings/")}>All settings of this car</a></p>
    </section>`;
}

/** Year by year, so that a figure somebody remembers is seen beside the one that holds. */
function historyView(hand: AtHand, { history }: SettingAnswer): TemplateResult | typeof nothing {
  if (history.length === 0) return nothing;
  return html`<h3>By model year, as built</h3>
    <div class="wide" tabindex="0" role="region" aria-label="The figure by model year"><table><thead><tr><th scope="col">Model year</th><th scope="col">Figure</th></tr></thead>
    <tbody>${history.map(
      ({ from, to, figures, notOnRecord }) => html`<tr><th scope="row">${from === to ? from : `${from} to ${to}`}</th>
        <td>${figures.map((figure) => html`<p>${figureView(hand, figure)}</p>`)}${notOnRecord ? html`<p class="note">${figures.length > 0 ? "Of others not on record" : "Not on record"}</p>` : nothing}</td></tr>`,
    )}</tbody></table></div>`;
}

function besideView(hand: AtHand, it: SettingAnswer["withIt"][number]): TemplateResult {
  return html`<h3>${it.title} ${recordLink(hand, it.record)}</h3>
    ${it.procedure === "changed" ? html`<p><b>The way of doing it changed too.</b></p>` : nothing}
    ${it.steps.map((text) => html`<p>${text}</p>`)}
    ${it.tools.length > 0 ? html`<p>Tools: ${it.tools.join("; ")}.</p>` : nothing}
    ${it.leftAlone.map((text) => html`<p class="note">Left alone on purpose: ${text}</p>`)}
    ${it.otherwise === undefined ? nothing : html`<p>Otherwise: ${it.otherwise}</p>`}
    ${it.caution === undefined ? nothing : html`<p class="box caution"><span aria-hidden="true">▲</span> ${it.caution}</p>`}`;
}
