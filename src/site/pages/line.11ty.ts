/** One model line: its years, and for each the way to what changed. */
import { address } from "../../engine/graph/node.ts";
import type { Line } from "../../engine/records/catalog.ts";
import { section } from "../includes/blocks.ts";
import { bySystem } from "../includes/by-system.ts";
import { frame } from "../includes/frame.ts";
import { html } from "../includes/html.ts";
import { recordList } from "../includes/links.ts";
import { openPage } from "../includes/page.ts";
import { counted } from "../includes/words.ts";
import type { Site } from "../site.ts";

interface Data {
  readonly site: Site;
  readonly line: Line;
}

export const data = {
  pagination: { data: "site.lines", size: 1, alias: "line" },
  permalink: ({ line }: Data) => `${address("line", line.id)}index.html`,
};

export function render({ site, line }: Data): string {
  const page = openPage(site, address("line", line.id));
  const records = site.recordsByLine.get(line.id) ?? [];
  return frame(page, {
    title: line.name,
    description: `${line.name}: what changed, year by year and system by system.`,
    crumbs: [{ label: "Lines", address: "/lines/" }],
    feeds: [{ label: `Changes: ${line.name}`, address: `/feeds/line-${line.id}.xml` }],
    body: html`
<header class="title"><h1>${line.name}</h1>${line.class ? html`<p>${line.class}${line.about ? html`. ${line.about}` : ""}</p>` : ""}</header>
${section(
  "years",
  "New, year by year",
  html`<ul class="cards">${site.lineYears
    .filter((it) => it.line === line)
    .map(
      ({ year, fresh }) =>
        html`<li><a href="${page.href(`/lines/${line.id}/${year}/`)}">${year}</a> <span class="count">${fresh.length === 0 ? "nothing" : counted(fresh.length, "change")} new</span></li>`,
    )}</ul>`,
)}
${bySystem(site, records).map((group) => section(group.id, group.name, recordList(page, group.records)))}
<p><a href="${page.href(`/feeds/line-${line.id}.xml`)}">Feed of this line</a></p>`,
  });
}
