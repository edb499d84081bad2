/** One bulletin, its citations made links. */
import { address } from "../../engine/graph/node.ts";
import type { Bulletin } from "../../engine/records/catalog.ts";
import { copyLink, section } from "../includes/blocks.ts";
import { frame } from "../includes/frame.ts";
import { html } from "../includes/html.ts";
import { recordList } from "../includes/links.ts";
import { renderCited } from "../includes/markdown.ts";
import { openPage } from "../includes/page.ts";
import { printFoot } from "../includes/print-foot.ts";
import type { Site } from "../site.ts";

interface Data {
  readonly site: Site;
  readonly bulletin: Bulletin;
}

export const data = {
  pagination: { data: "site.bulletins", size: 1, alias: "bulletin" },
  permalink: ({ bulletin }: Data) => `${address("bulletin", bulletin.id)}index.html`,
};

export function render({ site, bulletin }: Data): string {
  const page = openPage(site, address("bulletin", bulletin.id));
  const cited = [...new Set(bulletin.citations.map((citation) => citation.id))].flatMap(
    (id) => site.catalog.records.get(id) ?? [],
  );
  const { facts } = bulletin;
  return frame(page, {
    title: bulletin.id,
    description: facts.about,
    crumbs: [{ label: "Bulletins", address: "/bulletins/" }],
    scripts: ["copy"],
    body: html`
<article>
<header class="title"><h1><span class="id">${bulletin.id}</span> ${facts.title}</h1>
<p class="dates">Issued <time datetime="${facts.issued}">${facts.issued}</time></p>
</header>
<div class="text">${renderCited(page, facts.text)}</div>
${section("cited", "Records it cites", cited.length > 0 && recordList(page, cited))}
${copyLink(page, `${bulletin.id} ${facts.title}`)}
${printFoot(page, `Bulletin ${bulletin.id} of ${facts.issued}. Check before use.`)}
</article>`,
  });
}
