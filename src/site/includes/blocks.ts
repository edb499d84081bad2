/** Pieces that several pages share. */

import type { ScopeWords } from "../../engine/answers/answer.ts";
import type { MarksView } from "../../engine/answers/answer-record.ts";
import { type Html, html } from "./html.ts";
import { partLink } from "./links.ts";
import type { Page } from "./page.ts";

export function scopeLine(scope: ScopeWords | undefined, otherwise: string): Html {
  return scope ? html`<span class="scope">${scope.words}</span>` : html`<span class="scope">${otherwise}</span>`;
}

/** A section with a heading, or nothing when there is nothing to show. */
export function section(id: string, heading: string, body: Html | "" | false | undefined): Html | "" {
  return body ? html`<section aria-labelledby="${id}"><h2 id="${id}">${heading}</h2>${body}</section>` : "";
}

/** Marks of parts, a row a feature, easiest to see first. */
export function marksTables(page: Page, marks: readonly MarksView[]): Html | "" {
  if (marks.length === 0) return "";
  return html`${marks.map((group) => {
    const parts = [...new Set(group.features.flatMap((feature) => Object.keys(feature.values)))];
    return html`<section class="scroll" aria-label="Marks: ${group.component}" tabindex="0"><table class="marks">
<caption>${group.component}</caption>
<thead><tr><th scope="col">What to look at</th>${parts.map((number) => html`<th scope="col">${partLink(page, number)}</th>`)}</tr></thead>
<tbody>${group.features.map(
      (feature) =>
        html`<tr><th scope="row">${feature.name}<small>${feature.where}${feature.wearsOff ? "; it wears off, so a missing mark proves nothing" : ""}${feature.note ? `; ${feature.note}` : ""}</small></th>${parts.map(
          (number) => html`<td>${markValue(feature.values[number], feature.unit)}</td>`,
        )}</tr>`,
    )}</tbody></table></section>`;
  })}`;
}

function markValue(value: string | number | undefined, unit: string | undefined): Html {
  if (value === undefined) return html`<span class="none">not stated</span>`;
  return html`${value}${unit && typeof value === "number" ? ` ${unit}` : ""}`;
}

export function cautionBox(
  record: string | undefined,
  usual: readonly { title: string; text: string; source: string }[],
): Html | "" {
  if (record === undefined && usual.length === 0) return "";
  return html`<aside class="box caution" aria-labelledby="caution"><h2 id="caution"><span aria-hidden="true">▲</span> Caution</h2>
${record ? html`<p>${record}</p>` : ""}
${usual.map(({ title, text, source }) => html`<details><summary>${title}</summary><p>${text}</p><p class="source">Source: ${source}</p></details>`)}
</aside>`;
}

/** The link of a page as plain text, Markdown and HTML. Readable without a script; a script adds the copy buttons. */
export function copyLink(page: Page, label: string): Html {
  const url = new URL(page.address.slice(1), page.site.catalog.maker.site).href;
  const forms: [string, string][] = [
    ["Plain text", `${label} ${url}`],
    ["Markdown", `[${label.replaceAll(/[\\[\]]/g, "\\$&")}](${url})`],
    ["HTML", html`<a href="${url}">${label}</a>`.toString()],
  ];
  return html`<details class="copy"><summary>Link to this page</summary><dl>${forms.map(
    ([name, text]) => html`<div><dt>${name}</dt><dd><code data-copy>${text}</code></dd></div>`,
  )}</dl></details>`;
}
