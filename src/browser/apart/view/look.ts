/** One mark to look at: how, where, and what each answer would leave. An answer pressed is what was seen. */
import { html, nothing, type TemplateResult } from "lit-html";
import { markDrawing } from "../../../drawings/mark-drawing.ts";
import { EFFORT_WORDS } from "../../../engine/answers/effort-words.ts";
import type { TellApartAnswer } from "../../../engine/answers/shapes/tell-apart.ts";
import type { Feature } from "../../../engine/records/catalog.ts";
import { picture } from "../../at-hand/picture.ts";
import { capital } from "../../car/view/words.ts";

export type Look = TellApartAnswer["further"][number];
type Option = Look["options"][number];

export interface Looking {
  readonly feature: Feature;
  /** How many parts are still possible. */
  readonly among: number;
  /** The part that the look is to confirm, if it is there for that. */
  readonly confirms?: string | undefined;
  /** What was typed of this mark and could not be read, and why. */
  readonly refused: { readonly text: string; readonly why: string } | undefined;
  see(value: string): void;
}

const NOT_SEEN = "not seen";
const ELSE = "something else";

export function lookView(look: Look, looking: Looking): TemplateResult {
  const { feature, see } = looking;
  const isMeasured = feature.made === "measured";
  const options = look.options.filter((it) => it.value !== NOT_SEEN);
  const isElseMissing = !isMeasured && !look.wearsOff && options.every((it) => it.value !== ELSE);
  return html`
    <p class="how">${[look.how === undefined ? undefined : capital(look.how), capital(look.where), EFFORT_WORDS[look.effort]].filter(Boolean).join(" · ")}</p>
    ${look.wearsOff ? html`<p class="note">It wears off: that it is missing proves nothing.</p>` : nothing}
    ${isMeasured ? measureForm(look, looking) : nothing}
    <ul class="choices options">
      ${options.map(
        (option) =>
          html`<li><button type="button" class="choice" @click=${() => see(option.value)}>${optionDrawing(feature, option)}<b>${capital(option.words)}</b> <small>${leavesSaid(option, looking)}</small></button></li>`,
      )}
      ${isElseMissing ? html`<li><button type="button" class="choice unsure" @click=${() => see(ELSE)}><b>None of these</b> <small>then it is none of the parts on record</small></button></li>` : nothing}
      <li><button type="button" class="choice unsure cannot" @click=${() => see(NOT_SEEN)}><b>Can’t see it</b> <small>rules nothing out</small></button></li>
    </ul>`;
}

/** The words beside it say the same, so it is not read out. */
function optionDrawing(feature: Feature, { value }: Option): TemplateResult | typeof nothing {
  const shown = feature.made === "measured" ? Number.parseFloat(value) : value;
  const drawing = value === ELSE ? undefined : markDrawing(feature, shown);
  return drawing ? html`<span aria-hidden="true">${picture(drawing)}</span>` : nothing;
}

function leavesSaid({ leaves, provesNothing }: Option, { among, confirms }: Looking): TemplateResult | string {
  if (provesNothing) return "proves nothing";
  if (confirms !== undefined)
    return html`${leaves.includes(confirms) ? "fits" : "does not fit"} <span class="part">${confirms}</span>`;
  if (leaves.length === 0) return "then it is none of the parts on record";
  const numbers = leaves.map((number, i) => html`${i > 0 ? ", " : ""}<span class="part">${number}</span>`);
  return leaves.length === 1 ? html`leaves only ${numbers}` : html`leaves ${leaves.length} of ${among}: ${numbers}`;
}

function measureForm({ feature: id, name, unit = "" }: Look, { refused, see }: Looking): TemplateResult {
  const field = `measure-${id}`;
  return html`
    <form @submit=${(event: SubmitEvent) => {
      event.preventDefault();
      const typed = String(new FormData(event.currentTarget as HTMLFormElement).get("measure") ?? "").trim();
      if (typed !== "") see(typed);
    }}>
      <label for=${field}>${capital(name)}, as you measure it (${unit}, or any unit that fits; “± 0.01” if the tool’s error is known)</label>
      <div class="row">
        <input id=${field} name="measure" type="text" autocomplete="off" spellcheck="false" .value=${refused?.text ?? ""}
          aria-invalid=${refused ? "true" : "false"} aria-describedby=${refused ? `${field}-why` : nothing} />
        <button type="submit">Compare</button>
      </div>
      ${refused ? html`<p class="wrong" id="${field}-why">${refused.why}</p>` : nothing}
    </form>`;
}
