/** One component: its places, its parts and how they are told apart, and every change to it. */
import { viewComponent } from "../../engine/answers/answer-component.ts";
import { address } from "../../engine/graph/node.ts";
import type { Component } from "../../engine/records/catalog.ts";
import { comparedComponents } from "../includes/bench.ts";
import { cautionBox, copyLink, marksTables, section } from "../includes/blocks.ts";
import { componentSettings } from "../includes/component-settings.ts";
import { frame } from "../includes/frame.ts";
import { html } from "../includes/html.ts";
import { namedPart, recordList, trapsFirst } from "../includes/links.ts";
import { openPage } from "../includes/page.ts";
import { upperFirst } from "../includes/words.ts";
import type { Site } from "../site.ts";

interface Data {
  readonly site: Site;
  readonly component: Component;
}

/** Further words that people ask by, symptoms among them, only help the ask box. */
const SHOWN = 8;

export const data = {
  pagination: { data: "site.components", size: 1, alias: "component" },
  permalink: ({ component }: Data) => `${address("component", component.id)}index.html`,
};

export function render({ site, component: source }: Data): string {
  const page = openPage(site, address("component", source.id));
  const component = viewComponent(site.knowledge, source);
  const isCompared = comparedComponents(site.catalog).some((it) => it.component.id === component.id);
  const sums = site.catalog.sums.filter((job) => job.component === component.id);
  const records = trapsFirst(site.knowledge.recordsByComponent.get(component.id) ?? []);
  const title = upperFirst(component.name);
  return frame(page, {
    title,
    description: `${title}: what changed, which parts there are, how to tell them apart.`,
    crumbs: [
      { label: "Systems", address: "/systems/" },
      { label: component.system.name, address: address("system", component.system.id) },
      ...(component.under ? [{ label: upperFirst(component.under.title), address: component.under.address }] : []),
    ],
    scripts: ["copy"],
    body: html`
<article>
<header class="title"><h1>${title}</h1>
${component.aliases.length > 0 ? html`<p class="aliases">People ask for it as ${component.aliases.slice(0, SHOWN).join(", ")}${component.aliases.length > SHOWN ? " …" : "."}</p>` : ""}
</header>
${section("changes", "What changed", recordList(page, records))}
${cautionBox(undefined, component.cautions)}
${section("includes", "Includes", component.includes.length > 0 && html`<ul>${component.includes.map((it) => html`<li><a href="${page.href(it.address)}">${it.title}</a></li>`)}</ul>`)}
${section("places", "Places on the car", component.places.length > 0 && html`<ul>${component.places.map((place) => html`<li>${place}</li>`)}</ul>`)}
${section("parts", "Parts", component.parts.length > 0 && html`<ul>${component.parts.map(({ id }) => html`<li>${namedPart(page, id)}</li>`)}</ul>`)}
${section("marks", "How to tell them apart", component.marks.length > 0 && html`${marksTables(page, component.marks)}${isCompared && html`<p><a class="button" href="${page.href("/apart/")}?component=${component.id}#${component.id}">Tell them apart, mark by mark</a></p>`}`)}
${section("settings", "Settings", componentSettings(page, component.id))}
${section("sums", "Shop sums", sums.length > 0 && html`<ul>${sums.map(({ sum, title: job }) => html`<li><a href="${page.href("/sums/")}?sum=${sum}&job=${encodeURIComponent(job)}#${sum}">${job}</a></li>`)}</ul>`)}
${section("cited", "Cited by bulletins", component.citedBy.length > 0 && html`<ul>${component.citedBy.map((it) => html`<li><a href="${page.href(it.address)}">${it.title}</a></li>`)}</ul>`)}
<p><a class="button" href="${page.href("/map/")}?focus=component:${component.id}">See it on the map</a></p>
${copyLink(page, title)}
</article>`,
  });
}
