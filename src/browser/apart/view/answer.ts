/** An answer: the verdict, what was seen, the next mark to look at, the parts that are left, and the records. */
import { html, nothing, type TemplateResult } from "lit-html";
import type { TellApartAnswer } from "../../../engine/answers/shapes/tell-apart.ts";
import type { Catalog, Feature } from "../../../engine/records/catalog.ts";
import { factSaid } from "../../at-hand/fact-said.ts";
import type { AtHand } from "../../at-hand/page.ts";
import { capital } from "../../car/view/words.ts";
import { partLink, reasonView } from "../../fit/view/reason.ts";
import type { Asked } from "../ask.ts";
import { type Look, lookView } from "./look.ts";
import { possibleView, ruledOutView } from "./possible.ts";
import { seenChips } from "./seen-chips.ts";

/** A shape before a colour. */
const SIGNS: Readonly<Record<TellApartAnswer["verdict"], string>> = {
  "one part": "=",
  "still open": "?",
  "cannot be told apart": "≈",
  contradiction: "✕",
  "nothing on record": "–",
  "no such car": "–",
};
/** The looks of the page "may it go on?". */
const LOOKS: Readonly<Record<TellApartAnswer["verdict"], string>> = {
  "one part": "yes",
  "still open": "look-first",
  "cannot be told apart": "does-not-go-on",
  contradiction: "does-not-go-on",
  "nothing on record": "look-first",
  "no such car": "does-not-go-on",
};

export interface Doing {
  /** What was typed of a mark and could not be read. */
  readonly refused: { readonly mark: string; readonly text: string; readonly why: string } | undefined;
  see(mark: string, value: string): void;
  takeBack(mark: string): void;
}

export function answerView(hand: AtHand, { answer, catalog, ofCar }: Asked, doing: Doing): TemplateResult {
  const { verdict, component, next, further, secondTest } = answer;
  const features = [...catalog.parts.values()].find((part) => part.component === component.id)?.features ?? [];
  const look = (it: Look, confirms?: string): TemplateResult =>
    lookView(it, {
      feature: features.find(({ id }) => id === it.feature) as Feature,
      among: answer.parts.length,
      confirms,
      refused: doing.refused?.mark === it.feature ? doing.refused : undefined,
      see: (value) => doing.see(it.feature, value),
    });
  return html`
    <section aria-labelledby="apart-answer" class="answer">
      <h2 id="apart-answer" tabindex="-1">${capital(component.name)}</h2>
      <p class="big ${LOOKS[verdict]}"><span class="sign" aria-hidden="true">${SIGNS[verdict]}</span> ${briefly(answer)}</p>
      ${!ofCar && hand.line ? html`<p class="note">Records of the line of this car name none of these parts. They are compared without the car.</p>` : nothing}
      ${seenChips(answer.observed, doing.takeBack)}
      ${verdict === "contradiction" ? conflictView(answer, doing) : nothing}
      ${verdict === "no such car" ? html`<p class="wrong">${answer.carConflict?.map((fact) => factSaid(hand.lines.space, fact)).join("; ")}</p>` : nothing}
      ${next ? html`<section class="box look next" aria-labelledby="apart-next"><h3 id="apart-next">Look next at: ${next.name}</h3>${look(next)}</section>` : nothing}
      ${secondTest ? html`<section class="box look next" aria-labelledby="apart-second"><h3 id="apart-second">To make sure: ${secondTest.name}</h3>${look(secondTest, answer.parts[0]?.number)}</section>` : nothing}
      ${further.length > 0 ? html`<div class="on-screen further"><h3>Or look at something else</h3>${further.map((it) => html`<details ?open=${doing.refused?.mark === it.feature}><summary>${capital(it.name)}</summary>${look(it)}</details>`)}</div>` : nothing}
      ${verdict === "cannot be told apart" ? alikeView(hand, catalog, answer) : nothing}
      ${possibleView(hand, catalog, answer)}
      ${verdict === "cannot be told apart" ? nothing : alikeView(hand, catalog, answer)}
      ${answer.provesNothing.length > 0 ? html`<h3>What proves nothing</h3><ul>${answer.provesNothing.map((it) => html`<li>${it.name}: ${it.seen}. ${it.why}</li>`)}</ul>` : nothing}
      ${ruledOutView(hand, answer)}
      ${answer.because.length > 0 ? html`<h3>Records</h3><ul>${answer.because.map((it) => html`<li>${reasonView(hand, it)}</li>`)}</ul>` : nothing}
      <p class="links"><a href=${hand.href(`components/${encodeURIComponent(component.id)}/`)}>All that changed on it</a> · <a href=${hand.hrefWithCar("apart/")}>Something else</a></p>
    </section>`;
}

/** Which of those that are left cannot be told apart stands further below. */
function briefly({ verdict, words, alike }: TellApartAnswer): string {
  if (verdict !== "still open") return words;
  return alike.reduce((text, it) => text.replace(` ${it.words}`, ""), words);
}

function alikeView(hand: AtHand, catalog: Catalog, { alike }: TellApartAnswer): TemplateResult | typeof nothing {
  if (alike.length === 0) return nothing;
  return html`<div class="box trap alike"><h3><span aria-hidden="true">≈</span> The records cannot tell these apart</h3>
    ${alike.map((it) => html`<p>${it.words}</p><ul>${it.parts.map((number) => html`<li>${partLink(hand, number)} ${catalog.parts.get(number)?.name ?? ""}</li>`)}</ul>`)}</div>`;
}

/** What cannot all be so: each may be looked at again. */
function conflictView({ conflict }: TellApartAnswer, { takeBack }: Doing): TemplateResult | typeof nothing {
  if (!conflict) return nothing;
  const leftWithout = new Map(conflict.without.map((it) => [it.feature, it.leaves]));
  return html`<div class="box trap conflict"><h3><span aria-hidden="true">✕</span> These do not go together</h3>
    <p>Look at them again, and take back the one that was misread.</p>
    <ul class="choices">${conflict.smallest.map((it) => {
      const leaves = leftWithout.get(it.feature) ?? [];
      return html`<li><button type="button" class="choice" @click=${() => takeBack(it.feature)}><b>Take back ${it.name}: ${it.seen}</b> <small>${leaves.length > 0 ? `without it: ${leaves.join(", ")}` : "without it: still none"}</small></button></li>`;
    })}</ul></div>`;
}
