/** The page of an id that was renamed or withdrawn: it says where it leads now, and browsers go there by themselves. */
import { address } from "../../engine/graph/node.ts";
import type { Move } from "../../engine/records/catalog.ts";
import { frame } from "../includes/frame.ts";
import { html } from "../includes/html.ts";
import { openPage } from "../includes/page.ts";
import type { Site } from "../site.ts";

interface Data {
  readonly site: Site;
  readonly move: Move;
}

export const data = {
  pagination: { data: "site.moved", size: 1, alias: "move" },
  permalink: ({ move }: Data) => `${address(move.kind, move.from)}index.html`,
};

export function render({ site, move }: Data): string {
  const page = openPage(site, address(move.kind, move.from));
  const end = site.whereItLeads(move);
  return frame(page, {
    title: move.from,
    description: `${move.from} is no longer used.`,
    crumbs: [],
    ...(end ? { movedTo: page.href(address(move.kind, end)) } : {}),
    body: html`
<header class="title"><h1><span class="id">${move.from}</span> ${end ? "has moved" : "was withdrawn"}</h1></header>
<p>${move.why}</p>
${end ? html`<p>It is now <a href="${page.href(address(move.kind, end))}">${end}</a>.</p>` : html`<p>Nothing follows it.</p>`}`,
  });
}
