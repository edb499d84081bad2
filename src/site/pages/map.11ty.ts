/** The map of the graph. Without a script the page is a plain list of everything on it. */
import type { NodeFacts, NodeKind } from "../../engine/graph/node.ts";
import { frame } from "../includes/frame.ts";
import { type Html, html } from "../includes/html.ts";
import { openPage, type Page } from "../includes/page.ts";
import type { Site } from "../site.ts";

export const data = { permalink: "/map/index.html", eleventyExcludeFromCollections: true };

export function render({ site }: { site: Site; page: { url: string } }): string {
  const page = openPage(site, "/map/");
  return frame(page, {
    title: "Map",
    crumbs: [],
    description: "Change records, parts, components, systems, model lines and years, and how they are related.",
    scripts: ["map"],
    styles: ["map"],
    body: html`<h1>Map</h1>
<p class="map-lead">How records, parts and components hang together.</p>
${island(page)}
${plainLists(page)}`,
  });
}

/** What the script fills. Its ids are those that src/browser/map/page-parts.ts looks for. */
function island(page: Page): Html {
  return html`<div id="map" class="map" data-graph="${page.href("/data/graph.json")}" data-root="${page.href("/")}" hidden>
<div class="map-bar">
<div class="map-search">
<label for="map-find">Find a node</label>
<input id="map-find" type="text" role="combobox" aria-autocomplete="list" aria-expanded="false" aria-controls="map-found" autocomplete="off" spellcheck="false" placeholder="Number or words" enterkeyhint="go">
<ul id="map-found" role="listbox" aria-label="Nodes found" hidden></ul>
</div>
<div class="map-tabs" role="tablist" aria-label="How to show it">
<button id="map-tab-map" type="button" role="tab" aria-selected="true" aria-controls="map-panel-map">Map</button>
<button id="map-tab-table" type="button" role="tab" aria-selected="false" aria-controls="map-panel-table">Table</button>
</div>
<button id="map-copy" type="button">Copy link to this view</button>
</div>
<p id="map-status" class="map-status" role="status"></p>
<div class="map-body">
<details id="map-filters" class="map-filters">
<summary>Filters and legend <span id="map-filter-count"></span></summary>
<div id="map-filter-groups"></div>
</details>
<div class="map-main">
<div id="map-argument" class="map-notice map-argument" hidden>
<p id="map-argument-words"></p>
<button id="map-argument-leave" type="button">Show everything around it</button>
</div>
<div id="map-panel-map" role="tabpanel" aria-labelledby="map-tab-map">
<p id="map-notice" class="map-notice" hidden></p>
<div id="map-frame" class="map-frame">
<div id="map-stage" class="map-stage" tabindex="0" role="application" aria-label="Drawn map" aria-describedby="map-keys"><div id="map-canvas" class="map-canvas"></div><span class="map-cross" aria-hidden="true"></span></div>
<div class="map-zoom">
<button id="map-nearer" type="button" aria-label="Nearer">+</button>
<button id="map-farther" type="button" aria-label="Farther">−</button>
<button id="map-whole" type="button" aria-label="All: show the whole map">All</button>
</div>
</div>
<p id="map-keys" class="map-about">Drag to move; wheel, two fingers or the buttons to zoom. With the keyboard: arrows move, + and − zoom, 0 shows all, Enter selects the node nearest to the cross, Escape lets it go. The table has the same content in words.</p>
</div>
<div id="map-panel-table" role="tabpanel" aria-labelledby="map-tab-table" hidden><h2 class="map-unseen">Nodes and their relations</h2><div id="map-table"></div></div>
</div>
<section id="map-card" class="map-card" aria-label="Selected node"></section>
</div>
</div>`;
}

/** Above this number of nodes the page would be too heavy: only what leads on is listed. */
const MOST_NODES = 1500;

interface PlainList {
  readonly kind: NodeKind;
  readonly title: string;
  /** The page that lists them all. */
  readonly index?: string;
  /** Listed however many there are. */
  readonly always: boolean;
}

const PLAIN_LISTS: readonly PlainList[] = [
  { kind: "system", title: "Systems", index: "/systems/", always: true },
  { kind: "line", title: "Model lines", index: "/lines/", always: true },
  { kind: "year", title: "Model years", index: "/years/", always: true },
  { kind: "component", title: "Components", always: true },
  { kind: "record", title: "Change records", index: "/records/", always: false },
  { kind: "part", title: "Parts", index: "/parts/", always: false },
  { kind: "bulletin", title: "Bulletins", index: "/bulletins/", always: false },
];

function plainLists(page: Page): Html {
  const { graph } = page.site.knowledge;
  const all = graph.order <= MOST_NODES;
  return html`<section id="map-plain" class="map-plain" aria-label="Everything on the map, as lists">
<noscript><p>The drawn map needs a script. Here is everything on it; each page says what is related to it.</p></noscript>
${PLAIN_LISTS.map((list) => {
  const nodes = graph.filterNodes((_, facts) => facts.kind === list.kind).map((key) => graph.getNodeAttributes(key));
  if (nodes.length === 0) return "";
  return html`<section><h2>${list.title} (${nodes.length})</h2>
${all || list.always ? linkList(page, nodes) : ""}
${list.index && html`<p><a href="${page.href(list.index)}">All ${list.title.toLowerCase()} with more about each</a></p>`}</section>`;
})}
</section>`;
}

function linkList(page: Page, nodes: readonly NodeFacts[]): Html {
  return html`<ul>${nodes.map(({ label, address }) => html`<li><a href="${page.href(address)}">${label}</a></li>`)}</ul>`;
}
