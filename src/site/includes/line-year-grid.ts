/** A table of model lines and years, each cell with the page of that line and year. */
import { address } from "../../engine/graph/node.ts";
import { type Html, html } from "./html.ts";
import type { Page } from "./page.ts";

export function lineYearGrid(page: Page): Html {
  const { site } = page;
  return html`<section class="scroll" aria-label="Lines and years" tabindex="0"><table class="grid"><thead><tr><th scope="col">Line</th>${site.years.map((year) => html`<th scope="col"><a href="${page.href(address("year", String(year)))}">${year}</a></th>`)}</tr></thead>
<tbody>${site.lines.map(
    (line) =>
      html`<tr><th scope="row"><a href="${page.href(address("line", line.id))}">${line.name}</a></th>${site.years.map(
        (year) => {
          const built = site.lineYears.find((it) => it.line === line && it.year === year);
          if (!built) return html`<td><span class="none">not built</span></td>`;
          return html`<td><a href="${page.href(`/lines/${line.id}/${year}/`)}"><span class="hidden">${line.name} ${year}: </span>${built.fresh.length === 0 ? "nothing" : built.fresh.length} new</a></td>`;
        },
      )}</tr>`,
  )}</tbody></table></section>`;
}
