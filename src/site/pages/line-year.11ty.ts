/** One model line in one model year: what is new against the year before, and what else is on record for it. */

import { address } from "../../engine/graph/node.ts";
import type { ChangeRecord } from "../../engine/records/catalog.ts";
import { describe } from "../../engine/scope/describe.ts";
import { section } from "../includes/blocks.ts";
import { bySystem } from "../includes/by-system.ts";
import { frame } from "../includes/frame.ts";
import { type Html, html } from "../includes/html.ts";
import { recordList } from "../includes/links.ts";
import { openPage, type Page } from "../includes/page.ts";
import type { LineYear, Site } from "../site.ts";

interface Data {
  readonly site: Site;
  readonly lineYear: LineYear;
}

export const data = {
  pagination: { data: "site.lineYears", size: 1, alias: "lineYear" },
  permalink: ({ lineYear }: Data) => `/lines/${lineYear.line.id}/${lineYear.year}/index.html`,
};

export function render({ site, lineYear: { line, year, fresh, older } }: Data): string {
  const page = openPage(site, `/lines/${line.id}/${year}/`);
  return frame(page, {
    title: `${line.name} ${year}`,
    description: `${line.name} ${year}: what is new against the year before.`,
    crumbs: [
      { label: "Lines", address: "/lines/" },
      { label: line.name, address: address("line", line.id) },
    ],
    body: html`
<header class="title"><h1>${line.name} ${year}</h1>
<p>A record that is not listed says nothing about these cars. That is not the same as “no change”.</p>
<p><a class="button" href="${page.href(carAddress(site, line.id, year))}">A car of this line and year</a></p></header>
${section("new", "New against the year before", grouped(page, fresh))}
${section("older", "Also on record for this year", grouped(page, older))}`,
  });
}

/** The page "this car", with line and year already said. */
function carAddress({ catalog: { space } }: Site, line: string, year: number): string {
  const id = (role: "line" | "year"): string => space.trait(space.role(role) as number).id;
  return `/car/?fact=${id("line")}:${encodeURIComponent(line)}&fact=${id("year")}:${year}`;
}

function grouped(page: Page, records: readonly ChangeRecord[]): Html {
  if (records.length === 0) return html`<p class="none">No record.</p>`;
  return html`${bySystem(page.site, records).map(
    (group) => html`<h3>${group.name}</h3>${recordList(page, group.records, scopeWords(page))}`,
  )}`;
}

/** On the page of a line and year the exact scope counts more than when the change began. */
function scopeWords(page: Page): (record: ChangeRecord) => string {
  return (record) => describe(page.site.catalog.space, record.scope);
}
