import { frame } from "../includes/frame.ts";
import { html } from "../includes/html.ts";
import { openPage } from "../includes/page.ts";
import type { Site } from "../site.ts";

export const data = { permalink: "/feeds/index.html" };

export function render({ site }: { site: Site }): string {
  const page = openPage(site, "/feeds/");
  return frame(page, {
    title: "Feeds",
    description: "Atom feeds of the changes.",
    crumbs: [],
    body: html`<header class="title"><h1>Feeds</h1><p>Put one of these addresses into a feed reader and it tells you of new and revised records.</p></header>
<ul>${site.feeds.map((feed) => html`<li><a href="${page.href(feed.address)}">${feed.title}</a></li>`)}</ul>`,
  });
}
