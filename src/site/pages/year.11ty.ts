/** One model year: what begins with it, by system, and the same by line. */
import { address } from "../../engine/graph/node.ts";
import { section } from "../includes/blocks.ts";
import { bySystem } from "../includes/by-system.ts";
import { frame } from "../includes/frame.ts";
import { html } from "../includes/html.ts";
import { recordList } from "../includes/links.ts";
import { openPage } from "../includes/page.ts";
import type { Site } from "../site.ts";

interface Data {
  readonly site: Site;
  readonly year: number;
}

export const data = {
  pagination: { data: "site.years", size: 1, alias: "year" },
  permalink: ({ year }: Data) => `${address("year", String(year))}index.html`,
};

export function render({ site, year }: Data): string {
  const page = openPage(site, address("year", String(year)));
  const records = site.recordsByYear.get(year) ?? [];
  return frame(page, {
    title: String(year),
    description: `What begins with model year ${year}.`,
    crumbs: [{ label: "Years", address: "/years/" }],
    body: html`
<header class="title"><h1>Model year ${year}</h1>
<p>By line: ${site.lineYears.filter((it) => it.year === year).map((it, i) => html`${i > 0 ? ", " : ""}<a href="${page.href(`/lines/${it.line.id}/${year}/`)}">${it.line.name}</a>`)}</p></header>
${bySystem(site, records).map((group) => section(group.id, group.name, recordList(page, group.records)))}
${records.length === 0 ? html`<p class="none">No record begins with this year.</p>` : ""}`,
  });
}
