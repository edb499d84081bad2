/** The records found: those for such a car first, grouped by component where they are many; then those for other cars. */
import { html, nothing, type TemplateResult } from "lit-html";
import type { AskAnswer } from "../../../engine/answers/shapes/ask.ts";

export interface Shown {
  readonly answer: AskAnswer;
  /** The name of a system. */
  readonly systemName: (id: string) => string;
  /** By address, words of the page round those of the question. */
  readonly excerpts: ReadonlyMap<string, string>;
  readonly href: (address: string) => string;
  /** How many of each list are shown. */
  readonly most: number;
  readonly more: () => void;
}

type Entry = AskAnswer["records"][number];

/** From how many records on they are grouped. */
const MANY = 12;

export function recordsView(shown: Shown): TemplateResult {
  const { records, bulletins } = shown.answer;
  const fitting = records.filter(({ misses }) => misses.length === 0);
  const others = records.filter(({ misses }) => misses.length > 0);
  const systems = [...new Set(fitting.map(({ systems: [main = ""] }) => main))];
  const isGrouped = fitting.length > MANY && systems.length > 1;
  return html`
    ${isGrouped ? systems.map((id) => groupView(shown, id, fitting)) : listView(shown, fitting.slice(0, shown.most))}
    ${!isGrouped && fitting.length > shown.most ? html`<p><button type="button" @click=${shown.more} data-key="more">Show more</button></p>` : nothing}
    ${
      others.length > 0 && shown.answer.verdict !== "nothing on record"
        ? html`<details class="others"><summary>For other cars (${others.length})</summary>${listView(shown, others.slice(0, shown.most))}</details>`
        : nothing
    }
    ${
      others.length > 0 && shown.answer.verdict === "nothing on record"
        ? html`<h3>What comes nearest</h3><p class="note">These are about other cars.</p>${listView(shown, others.slice(0, 5))}`
        : nothing
    }
    ${
      bulletins.length > 0
        ? html`<h3>Bulletins</h3><ul class="records">${bulletins
            .slice(0, 5)
            .map(
              (it) =>
                html`<li><a href=${shown.href(it.address)}><span class="id">${it.id}</span> ${it.title}</a><p class="who">${it.about}</p></li>`,
            )}</ul>`
        : nothing
    }`;
}

function groupView(shown: Shown, system: string, fitting: readonly Entry[]): TemplateResult {
  const own = fitting.filter(({ systems }) => (systems[0] ?? "") === system);
  const first = own.slice(0, 3);
  const rest = own.slice(3);
  return html`
    <section class="group"><h3>${shown.systemName(system)} <span class="count">(${own.length})</span></h3>
      ${listView(shown, first)}
      ${rest.length > 0 ? html`<details><summary>${rest.length} more</summary>${listView(shown, rest)}</details>` : nothing}
    </section>`;
}

function listView(shown: Shown, entries: readonly Entry[]): TemplateResult {
  return html`<ol class="records">${entries.map((it) => entryView(shown, it))}</ol>`;
}

function entryView({ href, excerpts }: Shown, it: Entry): TemplateResult {
  const excerpt = excerpts.get(it.address);
  return html`
    <li>
      <a href=${href(it.address)}><span class="id">${it.id}</span> ${it.title}</a>
      ${it.trap ? html`<span class="tag trap">Trap</span>` : nothing}
      ${it.carries ? html`<span class="tag">The answer rests on it</span>` : nothing}
      <p class="who">${it.starts}${it.misses.length > 0 ? " (not for the car asked about)" : ""}</p>
      ${excerpt === undefined ? nothing : html`<p class="excerpt">${markedText(excerpt)}</p>`}
    </li>`;
}

/** The search marks hits with <mark>; everything else in an excerpt is text, whatever it looks like. */
function markedText(excerpt: string): unknown[] {
  const { body } = new DOMParser().parseFromString(excerpt, "text/html");
  return [...body.childNodes].map((node) =>
    node.nodeName === "MARK" ? html`<mark>${node.textContent}</mark>` : node.textContent,
  );
}
