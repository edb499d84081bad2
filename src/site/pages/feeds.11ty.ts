/** Atom feeds of the changes: all of them, and one for each line and system. */

import { dateToRfc3339 } from "@11ty/eleventy-plugin-rss";
import { VERDICT_WORDS } from "../../engine/answers/say.ts";
import { address } from "../../engine/graph/node.ts";
import type { ChangeRecord } from "../../engine/records/catalog.ts";
import { describe } from "../../engine/scope/describe.ts";
import { type Html, html, raw } from "../includes/html.ts";
import { renderMarkdown } from "../includes/markdown.ts";
import { sentence } from "../includes/words.ts";
import type { Feed, Site } from "../site.ts";

interface Data {
  readonly site: Site;
  readonly feed: Feed;
}
export const data = {
  pagination: { data: "site.feeds", size: 1, alias: "feed" },
  permalink: ({ feed }: Data) => feed.address,
};

const MOST = 100;

export function render({ site, feed }: Data): string {
  const { maker } = site.catalog;
  const absolute = (to: string): string => new URL(to.slice(1), maker.site).href;
  const day = (text: string): string => dateToRfc3339(new Date(`${text}T00:00:00Z`));
  const updated = (record: ChangeRecord): string => record.facts.revised ?? record.facts.issued;
  const entries = [...feed.records]
    .sort((a, b) => (updated(a) < updated(b) ? 1 : updated(a) > updated(b) ? -1 : a.id < b.id ? -1 : 1))
    .slice(0, MOST);
  const newest = entries[0] ? updated(entries[0]) : "1970-01-01";
  return html`${raw('<?xml version="1.0" encoding="utf-8"?>')}
<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="${maker.language}">
<title>${feed.title}</title>
<link href="${absolute(feed.address)}" rel="self"/>
<link href="${absolute(feed.page)}"/>
<updated>${day(newest)}</updated>
<id>${absolute(feed.address)}</id>
<author><name>${maker.name}</name></author>
${entries.map((record) => {
  const url = absolute(address("record", record.id));
  return html`<entry>
<title>${record.id} ${record.facts.title}</title>
<link href="${url}"/>
<updated>${day(updated(record))}</updated>
<published>${day(record.facts.issued)}</published>
<id>${url}</id>
<content type="html">${content(site, record).toString()}</content>
</entry>
`;
})}</feed>
`.toString();
}

/** An entry says what the record's page says first, and nothing in it is loaded from elsewhere. */
function content(site: Site, record: ChangeRecord): Html {
  const traps = record.statements
    .filter((it) => it.type === "stands-in")
    .filter((it) => it.verdict === "must-not-be-used");
  const { withdrawn } = record.facts;
  const ended =
    withdrawn === undefined
      ? ""
      : html`<p><b>Withdrawn.</b> ${sentence(withdrawn)} What it said, none of which counts any more:</p>`;
  return html`${ended}<p><b>Cars:</b> ${describe(site.catalog.space, record.scope)}</p>${renderMarkdown(record.facts.story)}${traps.length > 0 ? html`<p><b>Do not mix up:</b></p><ul>${traps.map((it) => html`<li>${it.part} ${VERDICT_WORDS[it.verdict]} ${it.for === undefined ? "" : `where ${it.for} belongs`}: ${it.why}</li>`)}</ul>` : ""}${record.facts.caution ? html`<p><b>Caution:</b> ${record.facts.caution}</p>` : ""}`;
}
