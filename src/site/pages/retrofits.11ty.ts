/** What the car at hand may be improved with. Without a script it leads to the records that tell of retrofits. */
import { section } from "../includes/blocks.ts";
import { frame } from "../includes/frame.ts";
import { html } from "../includes/html.ts";
import { recordList } from "../includes/links.ts";
import { openPage } from "../includes/page.ts";
import type { Site } from "../site.ts";

export const data = { permalink: "/retrofits/index.html" };

export function render({ site }: { site: Site }): string {
  const page = openPage(site, "/retrofits/");
  const records = site.records.filter((record) => record.facts.kinds.includes("retrofit"));
  return frame(page, {
    title: "Retrofit paths",
    description:
      "What an older car may be improved with: every permitted way with all that goes along, and the closed ways.",
    crumbs: [],
    scripts: ["retrofits"],
    styles: ["island", "fit"],
    body: html`
<header class="title"><h1>Retrofit paths</h1>
<p class="lead">What the car at hand may be improved with, all that goes along, and which ways are closed.</p></header>
<p id="retrofits-status" class="hidden" role="status"></p>
<noscript><p class="box">Asking about a car takes a script, which this browser does not run.${records.length > 0 ? " The records below say in words what may be fitted to which cars." : " No record tells of a retrofit."}</p></noscript>
<div id="retrofits" class="island"></div>
${section("by-record", "Records that tell of retrofits", records.length > 0 && recordList(page, records))}`,
  });
}
