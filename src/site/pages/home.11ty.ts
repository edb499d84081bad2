/** The way in: ask, pick a line and year, see what is new, go by system. */
import { address } from "../../engine/graph/node.ts";
import { section } from "../includes/blocks.ts";
import { frame } from "../includes/frame.ts";
import { html } from "../includes/html.ts";
import { lineYearGrid } from "../includes/line-year-grid.ts";
import { recordList } from "../includes/links.ts";
import { openPage } from "../includes/page.ts";
import { counted } from "../includes/words.ts";
import type { Site } from "../site.ts";

export const data = { permalink: "/index.html" };

const NEWEST = 8;

export function render({ site }: { site: Site }): string {
  const page = openPage(site, "/");
  const newest = [...site.records]
    .sort((a, b) => (a.facts.issued < b.facts.issued ? 1 : a.facts.issued > b.facts.issued ? -1 : a.id < b.id ? -1 : 1))
    .slice(0, NEWEST);
  return frame(page, {
    title: site.catalog.maker.title,
    description: site.catalog.maker.about,
    ownAsk: true,
    body: html`
<header class="title"><h1>${site.catalog.maker.title}</h1><p class="lead">${site.catalog.maker.about}</p></header>
<form class="ask" role="search" aria-label="Ask" action="${page.href("/ask/")}" method="get">
<label for="ask-home">Ask in your own words, by part number or by record</label>
<div class="row"><input id="ask-home" name="q" type="search" autocomplete="off" enterkeyhint="search"><button type="submit">Ask</button></div>
</form>
${section(
  "car",
  "Pick your car",
  html`<p class="buttons"><a class="button" href="${page.href("/car/")}">This car, step by step${site.catalog.plates.length > 0 ? " or from its plate" : ""}</a> <a class="button" href="${page.href("/fit/")}">May a part go on it?</a> <a class="button" href="${page.href("/retrofits/")}">What may it be improved with?</a> <a class="button" href="${page.href("/settings/")}">Which setting holds?</a> <a class="button" href="${page.href("/apart/")}">Which part is this?</a></p>${lineYearGrid(page)}`,
)}
${section(
  "systems",
  "By system",
  site.systems.length > 0 &&
    html`<ul class="cards">${site.systems.map(
      (system) =>
        html`<li><a href="${page.href(address("system", system.id))}">${system.name}</a> <span class="count">${counted(site.knowledge.recordsBySystem.get(system.id)?.length ?? 0, "record")}</span></li>`,
    )}</ul>`,
)}
${section("newest", "Newest records", newest.length > 0 && html`${recordList(page, newest)}<p><a href="${page.href("/records/")}">${newest.length < site.records.length ? `All ${counted(site.records.length, "record")}` : "All records"}</a> · <a href="${page.href("/feeds/")}">Feeds</a></p>`)}`,
  });
}
