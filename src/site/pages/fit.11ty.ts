/** May it go on: one part on the car at hand. Without a script it leads to the pages of the parts, which say the same without a car. */
import { section } from "../includes/blocks.ts";
import { frame } from "../includes/frame.ts";
import { html } from "../includes/html.ts";
import { openPage } from "../includes/page.ts";
import type { Site } from "../site.ts";

export const data = { permalink: "/fit/index.html" };

export function render({ site }: { site: Site }): string {
  const page = openPage(site, "/fit/");
  const hasParts = site.parts.length > 0;
  return frame(page, {
    title: "May it go on?",
    description: "A part and a car: whether the part may be fitted, what must go along, and the records that say so.",
    crumbs: [],
    scripts: ["fit"],
    styles: ["island", "fit"],
    body: html`
<header class="title"><h1>May it go on?</h1>
<p class="lead">A part on the car at hand: whether it may be fitted, what must go along, and which records say so.</p></header>
<p id="fit-status" class="hidden" role="status"></p>
<noscript><p class="box">Asking about a car takes a script, which this browser does not run.${hasParts ? " The page of each part says in words where it may and may not be used." : ""}</p></noscript>
<div id="fit" class="island"></div>
<div class="on-screen">${section("by-part", "By part", hasParts && html`<p class="note">The same records without a car in hand: <a href="${page.href("/parts/")}">every part, with what it may stand in for and what may stand in for it</a>.</p>`)}</div>`,
  });
}
