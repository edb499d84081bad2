/** The ask page. The reading of a question and the search run in the browser; without a script the page leads to the lists. */
import { address } from "../../engine/graph/node.ts";
import { frame } from "../includes/frame.ts";
import { html } from "../includes/html.ts";
import { openPage } from "../includes/page.ts";
import type { Site } from "../site.ts";

export const data = { permalink: "/ask/index.html" };

export function render({ site }: { site: Site }): string {
  const page = openPage(site, "/ask/");
  return frame(page, {
    title: "Ask",
    description: "Search the change records in your own words.",
    crumbs: [],
    scripts: ["ask"],
    styles: ["island", "ask"],
    wasm: true,
    ownAsk: true,
    body: html`
<header class="title"><h1>Ask</h1></header>
<form class="ask" id="ask-form" role="search" aria-label="Ask" action="${page.href("/ask/")}" method="get">
<label for="ask">Ask in your own words, by part number or by record</label>
<div class="row"><input id="ask" name="q" type="search" autocomplete="off" enterkeyhint="search"><button type="submit">Ask</button></div>
</form>
<p id="status" role="status"></p>
<div id="asked" class="island"></div>
<noscript><p class="box">Searching needs JavaScript. Everything can be read without it:</p></noscript>
<section id="lists" aria-labelledby="by-list"><h2 id="by-list">Without a question</h2>
${site.systems.length > 0 && html`<ul class="cards">${site.systems.map((system) => html`<li><a href="${page.href(address("system", system.id))}">${system.name}</a></li>`)}</ul>`}
<p>Go by <a href="${page.href("/lines/")}">line</a>, <a href="${page.href("/years/")}">year</a>, <a href="${page.href("/components/")}">component</a>, <a href="${page.href("/parts/")}">part number</a> or <a href="${page.href("/bulletins/")}">bulletin</a>.</p></section>`,
  });
}
