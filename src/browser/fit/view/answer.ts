/** An answer: the verdict, place by place with its argument, what to buy and do, how to tell the pieces apart. */
import { html, nothing, type TemplateResult } from "lit-html";
import type { Reason } from "../../../engine/answers/answer.ts";
import type { CurrentAnswer } from "../../../engine/answers/shapes/current.ts";
import type { MayFitAnswer } from "../../../engine/answers/shapes/may-fit.ts";
import { factsLine } from "../../at-hand/facts-line.ts";
import { lookBox } from "../../at-hand/look-box.ts";
import type { AtHand } from "../../at-hand/page.ts";
import { currentView } from "./current.ts";
import { marksView } from "./marks.ts";
import { orderView } from "./order.ts";
import { partLink, reasonView, recordLink } from "./reason.ts";

type AtPlace = MayFitAnswer["places"][number];
type FitView = AtPlace["fits"][number];
type WayView = FitView["ways"][number];

/** A shape before a colour. */
const SIGNS: Readonly<Record<MayFitAnswer["verdict"], string>> = {
  "as built": "=",
  yes: "✓",
  "yes, on conditions": "✓",
  "does not go on": "✕",
  "goes on but must not be used": "✕",
  "not on record": "–",
  "look first": "?",
  "by place": "?",
  "no such car": "–",
};

export interface Answered {
  readonly answer: MayFitAnswer;
  readonly current: CurrentAnswer;
}

export function answerView(hand: AtHand, { answer, current }: Answered): TemplateResult {
  const { part, verdict, places } = answer;
  return html`
    <section aria-labelledby="answer" class="answer">
      <h2 id="answer" tabindex="-1"><span class="id">${part.number}</span> ${part.name}</h2>
      <p class="big ${verdict.replaceAll(/\W+/g, "-")}"><span class="sign" aria-hidden="true">${SIGNS[verdict]}</span> ${answer.words}</p>
      ${verdict === "not on record" ? html`<p class="note">What no record states is not on record, and that is never a yes.</p>` : nothing}
      ${answer.misfits.map((it) => html`<div class="box trap"><p><b>${it.part} ${it.name} was reported on this car, where no record permits it.</b> Put that right first.</p>${reasons(hand, it.because)}</div>`)}
      ${orderView(hand, answer)}
      ${places.map((at) => placeView(hand, at, places.length > 1))}
      ${currentView(hand, current)}
      ${answer.marks.length > 0 ? html`<h3>How to tell them apart</h3>${marksView(hand, answer.marks)}` : nothing}
      ${answer.otherwise.length > 0 ? html`<h3>What happens otherwise</h3><ul>${answer.otherwise.map((it) => html`<li>${it.text} ${recordLink(hand, it.record)}</li>`)}</ul>` : nothing}
      ${answer.cautions.length > 0 ? html`<aside class="box caution" aria-labelledby="caution"><h3 id="caution"><span aria-hidden="true">▲</span> Caution</h3>${answer.cautions.map((it) => html`<details><summary>${it.title}</summary><p>${it.text}</p><p class="source">Source: ${it.source}</p></details>`)}</aside>` : nothing}
      ${factsLine(hand, answer)}
      <p class="links"><a href=${hand.href(`parts/${encodeURIComponent(part.number)}/`)}>The page of ${part.number}</a> · ${answer.because.length > 0 ? html`<a href=${hand.href(`map/${mapQuery(answer)}`)}>See the argument on the map</a> · ` : nothing}<a href=${hand.hrefWithCar("retrofits/")}>Retrofit paths for this car</a></p>
    </section>`;
}

/** The map with the argument lit up: the parts and records of the answer. */
function mapQuery({ part, places, because }: MayFitAnswer): string {
  const fits = places.flatMap((at) => at.fits);
  const named = fits.flatMap(({ belongs, ways: [best] }) => [
    ...(belongs === "nothing" || belongs === "not on record" ? [] : [belongs]),
    ...(best ? [...best.chain, ...best.companions.map((it) => it.part)] : []),
  ]);
  const parts = [part.number, ...named].map((it) => `part:${it}`);
  const records = because.map((it) => `record:${it.record}`);
  const keys = [...new Set([...parts, ...records])].map((it) => encodeURIComponent(it).replaceAll("%3A", ":"));
  return `?focus=${keys[0]}&proof=${keys.join(",")}`;
}

function placeView(hand: AtHand, at: AtPlace, several: boolean): TemplateResult {
  const [only, ...others] = at.fits;
  return html`
    <section class="at-place">
      ${at.place === undefined ? nothing : html`<h3>${at.place}${several ? html`: ${at.verdict}` : nothing}</h3>`}
      ${at.ask ? lookBox(hand, at.ask) : nothing}
      ${only && others.length === 0 ? fitView(hand, only) : html`<ul class="possible">${at.fits.map((fit) => html`<li><p><b>${possibleWords(fit)}</b></p>${fitView(hand, fit)}</li>`)}</ul>`}
    </section>`;
}

function possibleWords({ verdict, belongs }: FitView): string {
  return `${belongs === "nothing" ? "Where nothing is" : belongs === "not on record" ? "Where it is not on record what belongs there" : `Where ${belongs} belongs or is`}: ${verdict}`;
}

function fitView(hand: AtHand, fit: FitView): TemplateResult {
  const [best, ...others] = fit.ways;
  return html`
    <ol class="argument">${[...fit.because, ...(best?.steps ?? []), ...fit.refusals].map((it) => html`<li>${reasonView(hand, it)}</li>`)}</ol>
    ${best ? wayView(hand, best) : nothing}
    ${others.length > 0 ? html`<details><summary>${others.length === 1 ? "Another way" : `${others.length} other ways`}</summary>${others.map((way) => html`<ol class="argument">${way.steps.map((it) => html`<li>${reasonView(hand, it)}</li>`)}</ol>${wayView(hand, way)}`)}</details>` : nothing}`;
}

function wayView(hand: AtHand, way: WayView): TemplateResult {
  return html`
    ${way.companions.length > 0 ? html`<h4>What must go along</h4><ul>${way.companions.map((it) => html`<li>${companionView(hand, way, it)}</li>`)}</ul>` : nothing}
    ${way.do.length > 0 ? html`<h4>To do</h4>${list(way.do)}` : nothing}
    ${way.reset.length > 0 ? html`<h4>To set anew</h4>${list(way.reset)}` : nothing}`;
}

function list(texts: readonly string[]): TemplateResult {
  return html`<ul>${texts.map((text) => html`<li>${text}</li>`)}</ul>`;
}

function companionView(hand: AtHand, { steps }: WayView, it: WayView["companions"][number]): TemplateResult {
  // The statement that asks for it stands above already, if it is a step of the way.
  const isSaid = steps.some((step) => step.record === it.because.record && step.statement === it.because.statement);
  const contents = it.contents.map((one) => `${one.count} × ${[one.part, one.name].filter(Boolean).join(" ")}`);
  return html`${partLink(hand, it.part)} ${it.name}
    ${it.onTheCar ? html`<span class="tag">on the car already</span>` : nothing}
    ${contents.length > 0 ? html`<p class="note">A kit of: ${contents.join(", ")}.</p>` : nothing}
    ${isSaid ? nothing : html`<p class="note">${reasonView(hand, it.because)}</p>`}`;
}

function reasons(hand: AtHand, because: readonly Reason[]): TemplateResult {
  return html`<ul>${because.map((it) => html`<li>${reasonView(hand, it)}</li>`)}</ul>`;
}
