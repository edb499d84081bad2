/** One input of a sum: its letter and unit beside the label, and below it what is wrong with it or where its figure comes from. */
import { html, nothing, type TemplateResult } from "lit-html";
import { live } from "lit-html/directives/live.js";
import type { SumInput } from "../../../engine/settings/sums/sum.ts";
import { originOf, type as typeInto, work } from "../desk.ts";
import type { AtDesk } from "./form.ts";
import { whyView } from "./why.ts";

export function fieldView(at: AtDesk, input: SumInput): TemplateResult {
  const { desk } = at;
  const id = `${desk.sum.id}-${input.id}`;
  const wrong = desk.out?.as === "refused" ? desk.out.wrong.filter((it) => it.input === input.id) : [];
  const choices = wrong.flatMap((it) => it.choices ?? []);
  const notes = notesOf(input);
  const origin = originView(at, input.id);
  const described = [
    ...(wrong.length > 0 ? [`${id}-wrong`] : []),
    ...(notes.length > 0 ? [`${id}-note`] : []),
    ...(origin ? [`${id}-from`] : []),
  ].join(" ");
  return html`
    <div class="field">
      <label for=${id}>${input.label.replace(/^./, (it) => it.toUpperCase())} <span class="unit">${[input.letter, input.unit].filter(Boolean).join(", ")}</span></label>
      ${control(at, input, id, wrong.length > 0, described)}
      ${
        wrong.length > 0
          ? html`<p class="wrong" id="${id}-wrong">${wrong.map((it) => besideLabel(it)).join(" ")}</p>
        ${choices.length > 0 ? choicesView(at, input, choices) : nothing}`
          : nothing
      }
      ${notes.length > 0 ? html`<p class="note" id="${id}-note">${notes.join(" ")}</p>` : nothing}
      ${origin ? html`<p class="note from" id="${id}-from">${origin}</p>` : nothing}
    </div>`;
}

function control(at: AtDesk, input: SumInput, id: string, isWrong: boolean, described: string): TemplateResult {
  const { desk, drawn } = at;
  const typed = desk.typed[input.id] ?? "";
  const onTyped = (event: Event): void => {
    typeInto(desk, input.id, (event.target as HTMLInputElement | HTMLSelectElement).value);
    drawn();
  };
  if (input.choices)
    return html`<div class="row"><select id=${id} aria-describedby=${described || nothing} @change=${onTyped}>${input.choices.map(
      (choice) => html`<option ?selected=${choice === (typed || input.default)}>${choice}</option>`,
    )}</select></div>`;
  return html`<div class="row"><input id=${id} type="text" autocomplete="off" autocapitalize="off" spellcheck="false" .value=${live(typed)}
    aria-invalid=${isWrong ? "true" : nothing} aria-describedby=${described || nothing} @input=${onTyped}></div>`;
}

function notesOf({ help, default: usual, optional, choices }: SumInput): string[] {
  return [
    ...(help === undefined ? [] : [help]),
    ...(usual === undefined || choices ? [] : [`${usual} if left empty.`]),
    ...(optional ? ["May be left empty."] : []),
  ];
}

function originView({ desk, hand }: AtDesk, input: string): TemplateResult | undefined {
  const origin = originOf(desk, input);
  if (!origin) return undefined;
  if (origin.typed !== undefined) return html`${whyView(origin, hand)}`;
  return html`Not filled in: ${whyView(origin, hand)}. <a href="#which">Say more about the car</a>`;
}

/** The label stands above it already. */
function besideLabel({ label, why }: { label: string; why: string }): string {
  const rest = why.startsWith(`${label}: `) ? why.slice(label.length + 2) : why;
  return rest.replace(/^./, (it) => it.toUpperCase());
}

/** What may be meant by a word of several meanings. */
function choicesView(
  { desk, worked }: AtDesk,
  input: SumInput,
  choices: readonly { words: string; typed: string }[],
): TemplateResult {
  return html`<p class="choices">${choices.map(
    ({ words, typed }) =>
      html`<button type="button" class="choice" @click=${() => {
        typeInto(desk, input.id, typed);
        work(desk);
        worked();
      }}>${typed} <small>${words}</small></button>`,
  )}</p>`;
}
