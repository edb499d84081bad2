/** What a printed page needs to be trusted later: which revision it is, and a code that leads back to the page. */
import { renderSVG } from "uqr";
import { type Html, html, raw } from "./html.ts";
import type { Page } from "./page.ts";

export function printFoot(page: Page, words: string): Html {
  const url = new URL(page.address.slice(1), page.site.catalog.maker.site).href;
  const code = renderSVG(url, { border: 2 }).replace(
    "<svg ",
    `<svg role="img" aria-label="Code with the address of this page" `,
  );
  return html`<div class="printfoot"><div class="code">${raw(code)}</div><p>${words}<br>${url}</p></div>`;
}
