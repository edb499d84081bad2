/** One page of each type, found in a built site, so that a check of these is a check of every template. */
import { type SitePage, sitePages } from "./site-pages.ts";

export interface PageType {
  readonly name: string;
  readonly address: string;
}

const ONE_OF_A_KIND: readonly [name: string, address: string][] = [
  ["home", "/"],
  ["ask", "/ask/"],
  ["index of records", "/records/"],
  ["index of parts", "/parts/"],
  ["index of components", "/components/"],
  ["index of systems", "/systems/"],
  ["index of lines", "/lines/"],
  ["index of years", "/years/"],
  ["index of bulletins", "/bulletins/"],
  ["this car", "/car/"],
  ["may it go on", "/fit/"],
  ["retrofit paths", "/retrofits/"],
  ["settings", "/settings/"],
  ["tell apart", "/apart/"],
  ["shop sums", "/sums/"],
  ["map", "/map/"],
  ["feeds", "/feeds/"],
  ["for machines", "/data/"],
  ["not found", "/404.html"],
];

/** Of the pages that an address fits and that say something, the one with most sections: it has the most to go wrong. */
const FULLEST: readonly [name: string, address: RegExp, says?: RegExp][] = [
  ["record", /^\/records\/[^/]+\/$/],
  ["cancelled record", /^\/records\/[^/]+\/$/, /class="box ended"/],
  ["part", /^\/parts\/[^/]+\/$/],
  ["kit", /^\/parts\/[^/]+\/$/, /<li>Contains /],
  ["component", /^\/components\/[^/]+\/$/],
  ["system", /^\/systems\/[^/]+\/$/],
  ["line", /^\/lines\/[^/]+\/$/],
  ["line and year", /^\/lines\/[^/]+\/[^/]+\/$/],
  ["year", /^\/years\/[^/]+\/$/],
  ["bulletin", /^\/bulletins\/[^/]+\/$/],
  ["moved", /./, /http-equiv="refresh"/],
  ["withdrawn", /./, /was withdrawn<\/h1>/],
];

export function pageTypes(folder: string): PageType[] {
  const pages = sitePages(folder);
  const fullest = FULLEST.map(([name, address, says]): PageType => {
    const fitting = pages.filter((page) => address.test(page.address) && (says?.test(page.html) ?? true));
    const [first] = fitting.sort((a, b) => sections(b) - sections(a) || b.html.length - a.html.length);
    if (!first) throw new Error(`The site has no page of the type '${name}'.`);
    return { name, address: first.address };
  });
  return [...ONE_OF_A_KIND.map(([name, address]) => ({ name, address })), ...fullest];
}

function sections({ html }: SitePage): number {
  return html.split("<section").length;
}
