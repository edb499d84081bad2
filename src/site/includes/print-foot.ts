/** What a printed page needs to be trusted later: which revision it is, and a code that leads back to the page. */
import { codeImage } from "./code-image.ts";
import { type Html, html } from "./html.ts";
import type { Page } from "./page.ts";

export function printFoot(page: Page, words: string): Html {
  const url = new URL(page.address.slice(1), page.site.catalog.maker.site).href;
  return html`<div class="printfoot"><div class="code">${codeImage(url, "Code with the address of this page")}</div><p>${words}<br>${url}</p></div>`;
}
