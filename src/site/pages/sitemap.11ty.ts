/** sitemap.xml: every page that a search engine may list. */
import { html, raw } from "../includes/html.ts";
import type { Site } from "../site.ts";

export const data = { permalink: "/sitemap.xml" };

export function render({ site }: { site: Site }): string {
  return html`${raw('<?xml version="1.0" encoding="utf-8"?>')}
<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">
${site.addresses.map(
  ({
    address,
    changed,
  }) => html`<url><loc>${new URL(address.slice(1), site.catalog.maker.site).href}</loc>${changed ? html`<lastmod>${changed}</lastmod>` : ""}</url>
`,
)}</urlset>
`.toString();
}
