/** What is shown for an address that leads nowhere. It may stand at any depth, so its links start at the root of the site. */
import { frame } from "../includes/frame.ts";
import { html } from "../includes/html.ts";
import { openPageAnywhere } from "../includes/page.ts";
import type { Site } from "../site.ts";

export const data = { permalink: "/404.html" };

export function render({ site }: { site: Site }): string {
  const page = openPageAnywhere(site, "/404.html");
  return frame(page, {
    title: "Not here",
    description: "There is no page at this address.",
    scripts: ["not-found"],
    body: html`
<header class="title"><h1>There is no page at this address</h1></header>
<p>Addresses of records, parts and bulletins never change, so most likely the address was mistyped.</p>
<p id="guess" hidden>Did you mean <a href="${page.href("/")}"></a>?</p>
<ul>
<li><a href="${page.href("/ask/")}">Ask in your own words</a></li>
<li><a href="${page.href("/records/")}">All records</a></li>
<li><a href="${page.href("/parts/")}">All parts</a></li>
<li><a href="${page.href("/")}">The home page</a></li>
</ul>`,
  });
}
