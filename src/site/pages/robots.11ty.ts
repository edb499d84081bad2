import type { Site } from "../site.ts";

export const data = { permalink: "/robots.txt" };

export function render({ site }: { site: Site }): string {
  return `User-agent: *\nAllow: /\nSitemap: ${new URL("sitemap.xml", site.catalog.maker.site).href}\n`;
}
