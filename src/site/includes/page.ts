/** What every page template gets: the site, the address of the page, and links that work in any folder. */
import type { Site } from "../site.ts";

export interface Page {
  readonly site: Site;
  /** Inside the site, beginning with '/'. */
  readonly address: string;
  /** A link from this page to an address of the site. Relative, so that the site may lie in any folder. */
  href(address: string): string;
}

export function openPage(site: Site, address: string): Page {
  const depth = address.split("/").length - 2;
  const root = depth === 0 ? "./" : "../".repeat(depth);
  return { site, address, href: (to) => root + to.slice(1) };
}

/** A page that may be shown at any address, as the 404 page is: its links start at the root of the published site. */
export function openPageAnywhere(site: Site, address: string): Page {
  const root = new URL(site.catalog.maker.site).pathname;
  return { site, address, href: (to) => root + to.slice(1) };
}
