/** What to look at next, with every answer that is still possible, and always "I don't know". */
import { html, nothing, type TemplateResult } from "lit-html";
import { sayValues, valueWords } from "../../../engine/answers/look.ts";
import type { CarSet } from "../../../engine/scope/diagram.ts";
import type { Space } from "../../../engine/scope/space.ts";
import { type Trait, writtenValue } from "../../../engine/scope/trait.ts";
import type { Actions } from "./actions.ts";
import { capital, domainWords, labelOf } from "./words.ts";

export interface Asked {
  /** Id of the trait. */
  readonly trait: string;
  /** How many open records name it. */
  readonly count: number;
}

export interface QuestionParts {
  readonly space: Space;
  readonly cars: CarSet;
  readonly asked: Asked | undefined;
  /** Everything else that can be asked, as far as it is known yet. */
  readonly others: readonly Asked[];
  /** Traits that the reader does not know though records depend on them. */
  readonly skipped: readonly string[];
  readonly open: number;
  readonly searching: boolean;
  /** What was wrong with the last number typed. */
  readonly wrong: string | undefined;
}

export function questionView(parts: QuestionParts, act: Actions): TemplateResult {
  const { space, asked, others, skipped, open, searching } = parts;
  // One heading for all states: the keyboard rests on it while the question under it changes.
  return html`
    <section aria-labelledby="question">
      <h2 id="question" tabindex="-1">${heading(parts)}</h2>
      ${asked ? one(parts, asked, act) : html`<p>${searching ? "Looking for what still matters …" : closing(space, open, skipped)}</p>`}
      ${
        others.length > 0
          ? html`<details class="others"><summary>Something else is easier to see?</summary><p class="choices">${others.map(
              (other) =>
                html`<button type="button" class="choice" @click=${() => act.askFor(other.trait)}>${capital(labelOf(space, other.trait))} <small>${counted(other.count)}</small></button>`,
            )}</p></details>`
          : nothing
      }
    </section>`;
}

function heading({ space, asked, searching }: QuestionParts): string {
  if (asked) return `${capital(labelOf(space, asked.trait))}?`;
  return searching ? "Next question" : "Nothing more to look at";
}

function closing(space: Space, open: number, skipped: readonly string[]): string {
  if (open === 0) return "Every record is decided for this car.";
  const names = skipped.map((id) => labelOf(space, id)).join(", ");
  return `${counted(open)} ${open === 1 ? "stays" : "stay"} open, because it is not known: ${names}.`;
}

function counted(count: number): string {
  return count === 1 ? "1 record" : `${count} records`;
}

function one({ space, cars, wrong }: QuestionParts, asked: Asked, act: Actions): TemplateResult {
  const index = space.find(asked.trait) as number;
  const trait = space.trait(index);
  return html`
    <p>${trait.find}</p>
    ${trait.kind === "list" || trait.kind === "flag" || isShort(space, cars, index, trait) ? choices(space, cars, index, trait, act) : numberForm(space, cars, index, trait, wrong, act)}
    <p class="choices"><button type="button" class="choice unsure" @click=${() => act.say({ kind: "skip", trait: trait.id })}>I don’t know</button></p>
    <p class="note">${counted(asked.count)} ${asked.count === 1 ? "asks" : "ask"} for it.</p>`;
}

/** A few numbers, such as the model years, are pressed rather than typed. */
const FEW = 12;
function isShort(space: Space, cars: CarSet, index: number, trait: Trait): boolean {
  if (trait.kind !== "whole") return false;
  return space.sets.valuesOf(cars, index).reduce((sum, [from, to]) => sum + to - from + 1, 0) <= FEW;
}

function choices(space: Space, cars: CarSet, index: number, trait: Trait, act: Actions): TemplateResult {
  const values = space.sets
    .valuesOf(cars, index)
    .flatMap(([from, to]) => Array.from({ length: to - from + 1 }, (_, i) => from + i));
  // "Yes" comes before "no", as people expect.
  const ordered = trait.kind === "flag" ? values.reverse() : values;
  return html`<p class="choices">${ordered.map((value) => {
    return html`<button type="button" class="choice" @click=${() => act.say({ kind: "fact", trait: trait.id, value: writtenValue(trait, value) })}>
      ${capital(valueWords(trait, [[value, value]]))}</button>`;
  })}</p>`;
}

function numberForm(
  space: Space,
  cars: CarSet,
  index: number,
  trait: Trait,
  wrong: string | undefined,
  act: Actions,
): TemplateResult {
  const possible = space.sets.valuesOf(cars, index);
  const [first = "", last = ""] = [possible[0]?.[0], possible.at(-1)?.[1]].map((value) =>
    value === undefined ? "" : (sayValues(trait, [[value, value]])[0] ?? ""),
  );
  return html`
    <form @submit=${(event: SubmitEvent) => {
      event.preventDefault();
      const typed = String(new FormData(event.target as HTMLFormElement).get("value") ?? "").trim();
      // People write a running number with the letter before it, or with spaces in it.
      const value =
        trait.kind === "whole" ? typed.replace(/^[a-z]\s*(?=\d)/i, "").replaceAll(/(?<=\d)[\s.,]+(?=\d)/g, "") : typed;
      if (value !== "") act.say({ kind: "fact", trait: trait.id, value });
    }}>
      <label for="value" class="hidden">${capital(trait.label)}</label>
      ${wrong ? html`<p class="wrong" role="alert">${wrong}</p>` : nothing}
      <div class="row">
        <input id="value" name="value" type=${trait.kind === "date" ? "date" : "text"} inputmode=${trait.kind === "whole" ? "numeric" : nothing}
          autocomplete="off" aria-describedby="value-hint" aria-invalid=${wrong ? "true" : "false"} />
        <button type="submit">Say</button>
      </div>
      <p id="value-hint" class="note">${domainWords(trait, first, last)}</p>
    </form>`;
}
