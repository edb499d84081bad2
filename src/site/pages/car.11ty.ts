/** This car: what applies to it, what changed on it, what to look at next. Without a script it leads to the pages of each line and year. */
import { section } from "../includes/blocks.ts";
import { frame } from "../includes/frame.ts";
import { html } from "../includes/html.ts";
import { lineYearGrid } from "../includes/line-year-grid.ts";
import { openPage } from "../includes/page.ts";
import type { Site } from "../site.ts";

export const data = { permalink: "/car/index.html" };

export function render({ site }: { site: Site }): string {
  const page = openPage(site, "/car/");
  return frame(page, {
    title: "This car",
    description:
      "Say what is known of a car: which changes apply to it, which do not, and what to look at where it depends.",
    crumbs: [],
    scripts: ["car"],
    styles: ["island", "car"],
    body: html`
<header class="title"><h1>This car</h1>
<p class="lead">What applies to the car at hand, what does not, and what to look at where it depends.</p></header>
<p id="car-status" class="island-status" role="status"></p>
<noscript><p class="box">${site.catalog.plates.length > 0 ? "Reading a plate and asking what still matters take" : "Asking what still matters takes"} a script, which this browser does not run. The pages below say what holds for each line and year.</p></noscript>
<div id="car" class="island"></div>
${section("by-line", "By line and year", html`<p class="note">The same records without a car in hand.</p>${lineYearGrid(page)}`)}`,
  });
}
