/** A reading typed in, and what the records make of it. */
import { html, nothing, type TemplateResult } from "lit-html";
import type { ReadingAnswer, SettingAnswer } from "../../../engine/answers/shapes/setting.ts";
import type { Own } from "../../at-hand/own.ts";
import type { AtHand } from "../../at-hand/page.ts";
import { partLink, reasonView } from "../../fit/view/reason.ts";
import { figureView } from "./figure.ts";

const SIGNS: Readonly<Record<string, string>> = { within: "✓", "too low": "▼", "too high": "▲" };

export function readingBox(hand: AtHand, answer: SettingAnswer): TemplateResult {
  const { own } = hand;
  const [view] = answer.settings;
  const unit = view?.figures[0]?.unit ?? "";
  const conditions = [...new Set(view?.figures.flatMap((it) => it.conditions))];
  return html`
    <form class="on-screen reading" @submit=${(event: SubmitEvent) => {
      event.preventDefault();
      const typed = new FormData(event.currentTarget as HTMLFormElement);
      const value = String(typed.get("value") ?? "").trim();
      if (value !== "") hand.ask({ ...asked(own), value, ...given(typed, "error"), ...given(typed, "conditions") });
    }}>
      <h3>Does my reading pass?</h3>
      <p><label for="value">Reading (${unit}, or any unit that fits)</label>
        <span class="row"><input id="value" name="value" type="text" autocomplete="off" spellcheck="false" .value=${own.value ?? ""}></span></p>
      <p><label for="error">Error of the instrument, if known (“0.001 in”, “4 %”)</label>
        <span class="row"><input id="error" name="error" type="text" autocomplete="off" .value=${own.error ?? ""}></span></p>
      ${
        conditions.length > 0
          ? html`<p><label for="conditions">Measured so: ${conditions.join("; ")}?</label>
        <span class="row"><select id="conditions" name="conditions" .value=${own.conditions ?? ""}><option value="">Not said</option><option value="met">Yes</option><option value="unknown">No, or not sure</option></select></span></p>`
          : nothing
      }
      <p><button type="submit">Judge it</button></p>
    </form>`;
}

function asked({ setting }: Own): Own {
  return setting === undefined ? {} : { setting };
}

function given(typed: FormData, name: "error" | "conditions"): Own {
  const text = String(typed.get(name) ?? "").trim();
  return text === "" ? {} : { [name]: text };
}

export function readingView(hand: AtHand, answer: ReadingAnswer): TemplateResult {
  const { verdict } = answer;
  return html`
    <section aria-labelledby="judged" class="judged">
      <h3 id="judged">Your reading</h3>
      <p class="big ${verdict === "within" ? "yes" : verdict.startsWith("too ") && !verdict.startsWith("too near") ? "does-not-go-on" : "look-first"}"><span class="sign" aria-hidden="true">${SIGNS[verdict] ?? "?"}</span> ${answer.words}</p>
      ${answer.warnings.length > 0 ? html`<div class="box trap">${answer.warnings.map((text) => html`<p><b>${text}</b></p>`)}</div>` : nothing}
      ${answer.choices.length > 0 ? html`<p class="choices">${answer.choices.map((it) => html`<button type="button" class="choice" @click=${() => hand.ask({ ...hand.own, value: it.typed })}>${it.typed} <small>${it.words}</small></button>`)}</p>` : nothing}
      ${answer.provided.length > 0 ? html`<p class="look">This holds if it was measured so: ${answer.provided.join("; ")}.</p>` : nothing}
      ${answer.verdict === "look first" ? html`<ul>${answer.each.map((it) => html`<li>${it.verdict}: ${figureView(hand, it.figure)}</li>`)}</ul>` : nothing}
      ${answer.explainedBy.map((it) => html`<p>${partLink(hand, it.part)} in place of ${partLink(hand, it.inPlaceOf)} would explain it. ${it.why} <a class="on-screen" href=${hand.hrefWithCar("apart/", { parts: `${it.part},${it.inPlaceOf}` })}>Tell ${it.part} and ${it.inPlaceOf} apart</a></p><ul>${it.tell.map((text) => html`<li>${text}</li>`)}${it.because.map((one) => html`<li>${reasonView(hand, one)}</li>`)}</ul>`)}
      ${answer.failsUnder.length > 0 ? html`<details><summary>Other figures under which it would not pass: ${answer.failsUnder.length}</summary><ul>${answer.failsUnder.map((it) => html`<li>${it.verdict}: ${figureView(hand, it.figure)}</li>`)}</ul></details>` : nothing}
    </section>`;
}
