/** For machines: what can be fetched, in which shape. */

import { RELATIONS } from "../../engine/graph/relation.ts";
import { frame } from "../includes/frame.ts";
import { html } from "../includes/html.ts";
import { openPage } from "../includes/page.ts";
import type { Site } from "../site.ts";

export const data = { permalink: "/data/index.html" };

export function render({ site }: { site: Site }): string {
  const page = openPage(site, "/data/");
  return frame(page, {
    title: "For machines",
    description: "The records as data: JSON documents, the graph in open formats, feeds, schemas.",
    crumbs: [],
    body: html`
<header class="title"><h1>For machines</h1><p>Everything on this site can be fetched as data. The same input gives the same bytes.</p></header>
<h2>Documents</h2>
<dl class="facts">
<div><dt>A record</dt><dd><code>records/ID.json</code>, the answer to “what does this record say?”. Shape: <a href="${page.href("/data/schemas/answer-record.json")}">answer-record.json</a></dd></div>
<div><dt>A part</dt><dd><code>parts/NUMBER.json</code>. Shape: <a href="${page.href("/data/schemas/answer-part.json")}">answer-part.json</a></dd></div>
<div><dt>The graph</dt><dd><a href="${page.href("/data/graph.json")}">graph.json</a>, shape: <a href="${page.href("/data/schemas/graph.json")}">graph schema</a>; the same in the open format GEXF 1.2: <a href="${page.href("/data/graph.gexf")}">graph.gexf</a></dd></div>
<div><dt>Words of questions</dt><dd><a href="${page.href("/data/vocabulary.json")}">vocabulary.json</a>, shape: <a href="${page.href("/data/schemas/vocabulary.json")}">vocabulary schema</a></dd></div>
<div><dt>Cars</dt><dd><a href="${page.href("/data/lines.json")}">lines.json</a> (traits, plates, what was built) and <code>lines/LINE.json</code> (the records of a model line), as the page “This car” loads them; their shape may change with it</dd></div>
<div><dt>Questions about a car</dt><dd>asked on the command line; shapes: <a href="${page.href("/data/schemas/car.json")}">car.json</a>, <a href="${page.href("/data/schemas/answer-applies.json")}">answer-applies.json</a>, <a href="${page.href("/data/schemas/answer-car.json")}">answer-car.json</a>, <a href="${page.href("/data/schemas/answer-net-change.json")}">answer-net-change.json</a></dd></div>
<div><dt>Feeds</dt><dd><a href="${page.href("/feeds/")}">Atom feeds</a>: all changes, by line, by system</dd></div>
<div><dt>Pages</dt><dd><a href="${page.href("/sitemap.xml")}">sitemap.xml</a></dd></div>
<div><dt>Published addresses</dt><dd><a href="${page.href("/data/manifest.json")}">manifest.json</a>: every address with what it is, every file with its SHA-256, shape: <a href="${page.href("/data/schemas/manifest.json")}">manifest schema</a>; what the check of the records prints: <a href="${page.href("/data/schemas/findings.json")}">findings schema</a></dd></div>
</dl>
<h2>Relations of the graph</h2>
<section class="scroll" aria-label="Relations" tabindex="0"><table><thead><tr><th scope="col">Relation</th><th scope="col">Read forward</th><th scope="col">Read backward</th><th scope="col">Between</th></tr></thead>
<tbody>${Object.entries(RELATIONS).map(([name, it]) => html`<tr><th scope="row"><code>${name}</code></th><td>${it.forward}</td><td>${it.backward}</td><td>${it.about}</td></tr>`)}</tbody></table></section>`,
  });
}
