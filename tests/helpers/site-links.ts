/** The links of a built site to itself, and which of them lead nowhere. */
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type Element, readMarkup } from "./read-markup.ts";
import { type SitePage, sitePages } from "./site-pages.ts";

export interface Link {
  readonly from: string;
  /** The address inside the site; of one that leads out of the site's folder the whole of it. */
  readonly to: string;
  readonly anchor: string | undefined;
  readonly query: URLSearchParams;
}

export interface SiteLinks {
  readonly pages: readonly (SitePage & { readonly elements: readonly Element[]; readonly ids: ReadonlySet<string> })[];
  readonly links: readonly Link[];
  /** The addresses in the sitemap. */
  readonly listed: readonly string[];
  /** Links to a file that is not there, as 'from → to'. */
  readonly dead: readonly string[];
  /** Links to a page without the place they name. */
  readonly lost: readonly string[];
}

export function siteLinks(folder: string): SiteLinks {
  const pages = sitePages(folder).map((page) => {
    const elements = readMarkup(page.html);
    return { ...page, elements, ids: new Set(elements.flatMap(({ attributes }) => attributes.id ?? [])) };
  });
  const sitemap = readMarkup(readFileSync(join(folder, "sitemap.xml"), "utf8"), { xml: true })
    .filter(({ name }) => name === "loc")
    .map(({ text }) => text);
  // The address at which the site is published is the shortest in its own list.
  const published = sitemap.toSorted((a, b) => a.length - b.length)[0] ?? "";
  const inSite = (url: URL): string =>
    url.href.startsWith(published) ? decodeURI(`/${url.href.slice(published.length).replace(/[?#].*/, "")}`) : url.href;

  const links = pages.flatMap(({ address, elements }) =>
    elements
      .flatMap(targets)
      .map((target) => new URL(target, new URL(address.slice(1), published)))
      .filter((url) => url.origin === new URL(published).origin)
      .map((url) => ({
        from: address,
        to: inSite(url),
        anchor: url.hash === "" ? undefined : decodeURIComponent(url.hash.slice(1)),
        query: url.searchParams,
      })),
  );
  const isThere = (address: string): boolean =>
    address.startsWith("/") && existsSync(join(folder, address.endsWith("/") ? `${address}index.html` : address));
  const ids = new Map(pages.map((page) => [page.address, page.ids]));
  return {
    pages,
    links,
    listed: sitemap.map((address) => inSite(new URL(address))),
    dead: links.filter(({ to }) => !isThere(to)).map(({ from, to }) => `${from} → ${to}`),
    lost: links
      .filter(({ to, anchor }) => anchor !== undefined && !ids.get(to)?.has(anchor))
      .map(({ from, to, anchor }) => `${from} → ${to}#${anchor}`),
  };
}

function targets({ name, attributes }: Element): string[] {
  const leadsOn =
    name === "meta" && attributes["http-equiv"] === "refresh" ? attributes.content?.split("url=")[1] : undefined;
  const { href, src, action, "data-graph": graph, "data-root": root } = attributes;
  return [href, src, action, graph, root, leadsOn].filter((target) => target !== undefined);
}
