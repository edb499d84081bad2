/** What is on the car today and not as the plant built it: another engine, a part fitted since. */
import { html, nothing, type TemplateResult } from "lit-html";
import { valueWords } from "../../../engine/answers/look.ts";
import type { Space } from "../../../engine/scope/space.ts";
import { type Trait, writtenValue } from "../../../engine/scope/trait.ts";
import type { Actions } from "./actions.ts";
import { capital } from "./words.ts";

export interface ChangedCarParts {
  readonly space: Space;
  /** The trait that is being told of. */
  readonly chosen: string | undefined;
  /** What was wrong with the last part number typed. */
  readonly wrong: string | undefined;
}

export function changedCarView({ space, chosen, wrong }: ChangedCarParts, act: Actions): TemplateResult {
  // Line, year, plant and running numbers are what the car is, not what is on it.
  const traits = space.declared.filter((trait) => trait.role === undefined);
  const trait = traits.find((one) => one.id === chosen) ?? traits[0];
  return html`
    <details class="changed-car" ?open=${wrong !== undefined}>
      <summary>Is something no longer as built?</summary>
      <p class="note">What is on the car today comes before how it left the plant.</p>
      ${trait ? traitForm(traits, trait, act) : nothing}
      <form @submit=${(event: SubmitEvent) => {
        event.preventDefault();
        const value = String(new FormData(event.target as HTMLFormElement).get("part") ?? "").trim();
        if (value !== "") act.say({ kind: "fitted", value });
      }}>
        <label for="fitted">A part that was fitted since, by its number</label>
        <div class="row">
          <input id="fitted" name="part" type="text" autocomplete="off" aria-invalid=${wrong === undefined ? "false" : "true"} />
          <button type="submit">Say</button>
        </div>
        ${wrong === undefined ? nothing : html`<p class="wrong" role="alert">${wrong}</p>`}
      </form>
    </details>`;
}

function traitForm(traits: readonly Trait[], trait: Trait, act: Actions): TemplateResult {
  return html`
    <form @submit=${(event: SubmitEvent) => {
      event.preventDefault();
      const value = String(new FormData(event.target as HTMLFormElement).get("value") ?? "").trim();
      if (value !== "") act.say({ kind: "found", trait: trait.id, value });
    }}>
      <label for="found-trait">What is different</label>
      <div class="row"><select id="found-trait" @change=${(event: Event) => act.tellOf((event.target as HTMLSelectElement).value)}>
        ${traits.map((one) => html`<option value=${one.id} ?selected=${one === trait}>${capital(one.label)}</option>`)}
      </select></div>
      <label for="found-value">What was found</label>
      <div class="row">${valueInput(trait)}<button type="submit">Say</button></div>
    </form>`;
}

function valueInput(trait: Trait): TemplateResult {
  const count = trait.kind === "list" ? trait.values.length : trait.kind === "flag" ? 2 : 0;
  if (count === 0)
    return html`<input id="found-value" name="value" type=${trait.kind === "date" ? "date" : "text"} autocomplete="off" />`;
  return html`<select id="found-value" name="value">${Array.from(
    { length: count },
    (_, value) =>
      html`<option value=${writtenValue(trait, value)}>${capital(valueWords(trait, [[value, value]]))}</option>`,
  )}</select>`;
}
