/** What the piece is: by component, name or number, with what may be meant as it is typed; or from the list. */
import { html, nothing, type TemplateResult } from "lit-html";
import type { CarKnowledge } from "../../../engine/answers/car-knowledge.ts";
import { partCandidates } from "../../../engine/answers/part-candidates.ts";
import type { Catalog, Component } from "../../../engine/records/catalog.ts";
import type { AtHand } from "../../at-hand/page.ts";
import { capital } from "../../car/view/words.ts";
import { componentMeant } from "../ask.ts";

/** More than these nobody reads through; a longer text has fewer. */
const MOST = 12;

/** What is typed and not yet asked. */
let typed: string | undefined;

export function componentBox(hand: AtHand, bench: CarKnowledge | undefined): TemplateResult {
  const asked = hand.own.component ?? "";
  const text = typed ?? bench?.catalog.components.get(asked)?.name ?? asked;
  const choose = (component: string): void => {
    typed = undefined;
    hand.ask({ component });
    document.getElementById("apart-answer")?.focus();
  };
  return html`
    <section aria-labelledby="apart-what" class="on-screen">
      <h2 id="apart-what">What is it?</h2>
      <form @submit=${(event: SubmitEvent) => {
        event.preventDefault();
        const words = text.trim();
        if (words !== "") choose((bench && componentMeant(bench.catalog, words)) ?? words);
      }}>
        <label for="component">Component or part number</label>
        <div class="row">
          <input id="component" type="text" autocomplete="off" spellcheck="false" .value=${text}
            @input=${(event: Event) => {
              typed = (event.target as HTMLInputElement).value;
              hand.draw();
            }} />
          <button type="submit">Ask</button>
        </div>
      </form>
      ${bench && text.trim() !== "" && (typed !== undefined || !bench.catalog.components.has(asked)) ? meantView(bench.catalog, text, choose) : nothing}
      ${bench ? listView(hand, bench.catalog) : nothing}
    </section>`;
}

function listView(hand: AtHand, { systems, parts }: Catalog): TemplateResult | typeof nothing {
  const marked = [...parts.values()].filter((part) => Object.keys(part.marks).length > 0);
  const counts = Map.groupBy(marked, (part) => part.component);
  const groups = systems
    .map(({ name, components }) => ({ name, own: components.filter(({ id }) => (counts.get(id)?.length ?? 0) > 1) }))
    .filter(({ own }) => own.length > 0);
  if (groups.length === 0) return nothing;
  return html`<details class="all"><summary>Every component with marks to tell its parts apart</summary>${groups.map(
    ({ name, own }) =>
      html`<h3>${name}</h3><ul class="columns">${own.map((it) => html`<li><a href=${hand.hrefWithCar("apart/", { component: it.id })}>${capital(it.name)}</a></li>`)}</ul>`,
  )}</details>`;
}

function meantView(catalog: Catalog, text: string, choose: (component: string) => void): TemplateResult {
  const meant = meantBy(catalog, text);
  if (meant.length === 0) return html`<p class="none">No component or part on record is like “${text.trim()}”.</p>`;
  return html`<ul class="choices" aria-label="Components that may be meant">${meant.map(
    ({ id, name }) =>
      html`<li><button type="button" class="choice" @click=${() => choose(id)}>${capital(name)} <small>${partsSaid(catalog, id)}</small></button></li>`,
  )}</ul>`;
}

/** By the words of their own names first, then by those of their parts. */
function meantBy(catalog: Catalog, text: string): Component[] {
  const words = text.toLowerCase().split(/\s+/).filter(Boolean);
  const withParts = new Set([...catalog.parts.values()].map((part) => part.component));
  const named = [...catalog.components.values()].filter(({ id, name, aliases }) => {
    const names = [id, name, ...aliases].join(" ").toLowerCase();
    return withParts.has(id) && words.every((word) => names.includes(word));
  });
  const byPart = partCandidates(catalog, text, MOST).flatMap((part) => catalog.components.get(part.component) ?? []);
  return [...new Set([...named, ...byPart])].slice(0, MOST);
}

function partsSaid(catalog: Catalog, component: string): string {
  const count = [...catalog.parts.values()].filter((part) => part.component === component).length;
  return `${count} ${count === 1 ? "part" : "parts"} on record`;
}
