/** Every setting on record for the car, by system, with a field that narrows the list. */
import { html, nothing, type TemplateResult } from "lit-html";
import { findSettings } from "../../../engine/answers/find-settings.ts";
import { QuestionError } from "../../../engine/answers/question-error.ts";
import type { SettingAnswer, SettingView } from "../../../engine/answers/shapes/setting.ts";
import type { AtHand } from "../../at-hand/page.ts";
import { figureView, settingHref } from "./figure.ts";

let wanted = "";

export function listView(hand: AtHand, answer: SettingAnswer): TemplateResult {
  const shown = narrowed(hand, answer.settings);
  const groups = bySystem(hand, shown);
  return html`
    <section aria-labelledby="in-force" class="answer">
      <h2 id="in-force" tabindex="-1">Settings of this car: ${shown.length < answer.settings.length ? `${shown.length} of ` : ""}${answer.settings.length}</h2>
      ${answer.settings.length === 0 ? html`<p class="none">No record gives a setting for this car.</p>` : narrowView(hand, shown.length === 0)}
      ${groups.map(
        ({ name, items }) =>
          html`<h3>${name}</h3><ul class="settings">${items.map((it) => html`<li>${itemView(hand, it)}</li>`)}</ul>`,
      )}
    </section>`;
}

function narrowView(hand: AtHand, noneLeft: boolean): TemplateResult {
  const type = (event: Event): void => {
    wanted = (event.target as HTMLInputElement).value;
    hand.draw();
  };
  return html`<p class="on-screen"><label for="narrow">Only those with these words</label>
    <span class="row"><input id="narrow" type="text" autocomplete="off" .value=${wanted} @input=${type}></span></p>
    ${noneLeft ? html`<p class="none">No setting of this car is called so.</p>` : nothing}`;
}

function itemView(hand: AtHand, it: SettingView): TemplateResult {
  const [only] = it.figures;
  return html`<h4><a href=${settingHref(hand, it.name)}>${it.name}</a></h4>
    ${
      it.verdict === "in force" && only
        ? html`<p class="figure">${figureView(hand, only)}</p>`
        : html`<p class="figure look"><b>${it.verdict === "contradiction" ? "The records contradict each other" : "Look first"}:</b> ${it.figures.map((one) => one.said).join(", or ")}${it.perhapsNone ? ", or not on record" : ""}. <a href=${settingHref(hand, it.name)}>What to look at</a></p>`
    }
    ${it.movedWith === undefined ? nothing : html`<p class="note">It came to the car with ${it.movedWith}.</p>`}`;
}

/** Those that the words mean, by their names or by what people call the things they are set on. */
function narrowed(hand: AtHand, settings: readonly SettingView[]): readonly SettingView[] {
  const catalog = hand.line?.knowledge.catalog;
  if (wanted.trim() === "" || !catalog) return settings;
  try {
    const meant = new Set(findSettings(catalog, wanted).map((it) => it.name));
    return settings.filter((it) => meant.has(it.name));
  } catch (problem) {
    if (!(problem instanceof QuestionError)) throw problem;
    return [];
  }
}

function bySystem(hand: AtHand, settings: readonly SettingView[]): { name: string; items: SettingView[] }[] {
  const catalog = hand.line?.knowledge.catalog;
  const systemOf = new Map(
    [...(catalog?.components.values() ?? [])].map((component) => [component.name, component.system]),
  );
  const groups = (catalog?.systems ?? []).map(({ id, name }) => ({
    name,
    items: settings.filter((it) => it.component !== undefined && systemOf.get(it.component) === id),
  }));
  const placed = new Set(groups.flatMap((group) => group.items));
  const rest = settings.filter((it) => !placed.has(it));
  return [...groups, { name: "Other", items: rest }].filter((group) => group.items.length > 0);
}
