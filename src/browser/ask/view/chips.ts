/** What was understood of the question, as chips that can be taken away, put back, or narrowed down where they may mean several things. */
import { html, nothing, type TemplateResult } from "lit-html";
import type { Picks } from "../../../engine/ask/keep-picked.ts";
import type { Reading } from "../../../engine/ask/read-question.ts";
import type { ChipKind } from "../../../engine/ask/vocabulary-shape.ts";
import { capital } from "../../car/view/words.ts";

const KIND: Readonly<Record<ChipKind, string>> = {
  record: "Record",
  part: "Part",
  bulletin: "Bulletin",
  system: "System",
  component: "Component",
  line: "Line",
  year: "Year",
  trait: "Car",
  kind: "Kind",
};

export function chipsView(
  whole: Reading,
  left: Reading,
  picks: Picks,
  pick: (picks: Picks) => void,
  write: (said: string, word: string) => void,
): TemplateResult {
  const take = (said: string) => pick({ ...picks, without: [...picks.without, said] });
  const back = (said: string) => pick({ ...picks, without: picks.without.filter((one) => one !== said) });
  const gone = [...whole.chips, ...whole.asked].filter(({ said }) => picks.without.includes(said));
  return html`
    <ul class="read" aria-label="How the question was read">
      ${left.asked.map(({ said, label }) => chip(`Asked: ${label}`, said, "Take away", take))}
      ${left.chips.map(({ kind, label, said, readAs }) => {
        const slip = readAs === undefined ? "" : `, read from “${said}”`;
        return chip(`${KIND[kind]}: ${capital(label)}${slip}`, said, "Take away", take);
      })}
      ${gone.map(({ said, label }) => chip(`not used: ${label}`, said, "Put back", back))}
      ${left.rest === "" ? nothing : html`<li class="words">searched as text: ${left.rest}</li>`}
    </ul>
    ${whole.corrected.filter(({ readAs }) => readAs.length > 1).map((one) => slipView(one, write))}
    ${whole.chips
      .filter(({ options, said }) => options !== undefined && !picks.without.includes(said))
      .map(({ said, options = [] }) => choiceView(said, options, picks, pick))}`;
}

function chip(
  label: string,
  said: string,
  verb: "Take away" | "Put back",
  act: (said: string) => void,
): TemplateResult {
  return html`<li><button type="button" class="chip" aria-label="${verb}: ${label}" data-key="chip ${said}" @click=${() => act(said)}>
    ${label}<span aria-hidden="true"> ${verb === "Put back" ? "+" : "×"}</span></button></li>`;
}

/** The same words name several things: all are searched until one is chosen. */
function choiceView(
  said: string,
  options: readonly { readonly id: string; readonly label: string }[],
  picks: Picks,
  pick: (picks: Picks) => void,
): TemplateResult {
  const chosen = picks.meant[said];
  const choose = (id: string | undefined) => {
    const { [said]: _, ...others } = picks.meant;
    pick({ ...picks, meant: id === undefined ? others : { ...others, [said]: id } });
  };
  return html`
    <fieldset class="choice-of"><legend>“${said}” may mean</legend>
      ${[...options, { id: undefined, label: options.length === 2 ? "either" : "any of them" }].map(
        ({ id, label }) =>
          html`<label><input type="radio" name="as ${said}" .checked=${chosen === id} @change=${() => choose(id)}> ${label}</label>`,
      )}
    </fieldset>`;
}

/** A word that nobody knows lies as near to several: the first is searched, and the others are one press away. */
function slipView(
  { said, readAs: [first, ...others] }: Reading["corrected"][number],
  write: (said: string, word: string) => void,
): TemplateResult {
  return html`
    <p class="slip">“${said}” was read as ${first}. Or is it
      ${others.map((word) => html`<button type="button" class="plain" data-key="slip ${said} ${word}" @click=${() => write(said, word)}>${word}</button> `)}?</p>`;
}
