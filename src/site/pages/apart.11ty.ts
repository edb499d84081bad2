/** Tell apart: which of several parts a piece is, by its marks. Without a script, a table for each component, to hold the piece against. */
import { address } from "../../engine/graph/node.ts";
import { comparedComponents } from "../includes/bench.ts";
import { frame } from "../includes/frame.ts";
import { type Html, html } from "../includes/html.ts";
import { marksTable } from "../includes/marks-table.ts";
import { openPage, type Page } from "../includes/page.ts";
import { upperFirst } from "../includes/words.ts";
import type { Site } from "../site.ts";

export const data = { permalink: "/apart/index.html" };

export function render({ site }: { site: Site }): string {
  const page = openPage(site, "/apart/");
  return frame(page, {
    title: "Tell apart",
    description: "Which of several parts a piece is, by the marks that can be seen, counted or measured on it.",
    crumbs: [],
    scripts: ["apart"],
    styles: ["island", "fit", "drawing", "apart"],
    body: html`
<header class="title"><h1>Tell apart</h1>
<p class="lead">Which part is this? By the marks that can be seen, counted or measured, on the car or on the bench.</p></header>
<p id="apart-status" class="hidden" role="status"></p>
<noscript><p class="box">Going through the marks one by one takes a script, which this browser does not run.${comparedComponents(site.catalog).length > 0 ? " The tables below say the same: hold the piece against them." : ""}</p></noscript>
<div id="apart" class="island"></div>
<div id="apart-tables">${tables(page)}</div>`,
  });
}

function tables(page: Page): Html {
  const { catalog } = page.site;
  const compared = comparedComponents(catalog);
  const groups = catalog.systems.flatMap(({ id, name }) => {
    const own = compared.filter(({ component }) => component.system === id);
    return own.length > 0 ? { name, own } : [];
  });
  if (groups.length === 0) return html`<p class="none">No marks are on record by which to tell parts apart.</p>`;
  return html`
<h2 id="apart-all">All marks on record</h2>
<p class="note">Every component of which two parts or more have marks on record. What is not stated rules nothing out.</p>
<nav aria-labelledby="apart-all" class="on-screen">${groups.map(
    ({ name, own }) =>
      html`<h3>${name}</h3><ul class="columns">${own.map(({ component }) => html`<li><a href="#${component.id}">${upperFirst(component.name)}</a></li>`)}</ul>`,
  )}</nav>
${groups.flatMap(({ own }) =>
  own.map(
    ({ component, parts }) =>
      html`<section aria-labelledby="${component.id}" class="told"><h2 id="${component.id}">${upperFirst(component.name)}</h2>
${marksTable(page, component.name, parts)}
<p class="on-screen"><a href="${page.href(address("component", component.id))}">All that changed on it</a></p></section>`,
  ),
)}`;
}
