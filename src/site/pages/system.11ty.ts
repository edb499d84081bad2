/** One system: what changed on it, year by year, and its components. */
import { address } from "../../engine/graph/node.ts";
import type { System } from "../../engine/records/catalog.ts";
import { cautionBox, section } from "../includes/blocks.ts";
import { componentTree } from "../includes/component-tree.ts";
import { frame } from "../includes/frame.ts";
import { html } from "../includes/html.ts";
import { recordList, trapsFirst } from "../includes/links.ts";
import { openPage } from "../includes/page.ts";
import type { Site } from "../site.ts";

interface Data {
  readonly site: Site;
  readonly system: System;
}

export const data = {
  pagination: { data: "site.systems", size: 1, alias: "system" },
  permalink: ({ system }: Data) => `${address("system", system.id)}index.html`,
};

export function render({ site, system }: Data): string {
  const page = openPage(site, address("system", system.id));
  const records = site.knowledge.recordsBySystem.get(system.id) ?? [];
  const cautions = site.catalog.cautions.filter((caution) => caution.systems.includes(system.id));
  const byYear = site.beginnings.map((year) => ({
    year,
    own: records.filter((record) => site.recordsByYear.get(year)?.includes(record)),
  }));
  return frame(page, {
    title: system.name,
    description: `What changed on the ${system.name.toLowerCase()}, year by year.`,
    crumbs: [{ label: "Systems", address: "/systems/" }],
    feeds: [{ label: `Changes: ${system.name}`, address: `/feeds/system-${system.id}.xml` }],
    body: html`
<header class="title"><h1>${system.name}</h1></header>
${cautionBox(undefined, cautions)}
${byYear.map(({ year, own }) => section(`y${year}`, `Changes that begin with ${year}`, own.length > 0 && recordList(page, trapsFirst(own))))}
${section("components", "Components", componentTree(page, system))}
<p><a class="button" href="${page.href("/map/")}?focus=system:${system.id}">See it on the map</a> <a href="${page.href(`/feeds/system-${system.id}.xml`)}">Feed of this system</a></p>`,
  });
}
