/** One change record, as a technician wants it on a phone: the trap and the caution first, then before and after, then the rest. */

import { type RecordView, viewRecord } from "../../engine/answers/answer-record.ts";
import { VERDICT_WORDS } from "../../engine/answers/say.ts";
import { address } from "../../engine/graph/node.ts";
import type { ChangeRecord } from "../../engine/records/catalog.ts";
import { KIND_WORDS } from "../../engine/records/kinds.ts";
import { cautionBox, copyLink, marksTables, scopeLine, section } from "../includes/blocks.ts";
import { frame } from "../includes/frame.ts";
import { type Html, html } from "../includes/html.ts";
import { namedPart, partLink, partLinks, recordLink } from "../includes/links.ts";
import { renderMarkdown } from "../includes/markdown.ts";
import { openPage, type Page } from "../includes/page.ts";
import { printFoot } from "../includes/print-foot.ts";
import { settingsTable } from "../includes/settings-table.ts";
import { sentence } from "../includes/words.ts";
import type { Site } from "../site.ts";

interface Data {
  readonly site: Site;
  readonly record: ChangeRecord;
}

export const data = {
  pagination: { data: "site.records", size: 1, alias: "record" },
  permalink: ({ record }: Data) => `${address("record", record.id)}index.html`,
};

export function render({ site, record: source }: Data): string {
  const page = openPage(site, address("record", source.id));
  const record = viewRecord(site.knowledge, source);
  const sums = site.catalog.sums.filter((it) => it.record === record.id);
  const system = record.systems[0];
  return frame(page, {
    title: record.withdrawn === undefined ? record.id : `${record.id}, withdrawn`,
    description: `${record.title}. ${record.starts}.`,
    crumbs: [
      { label: "Records", address: "/records/" },
      ...(system ? [{ label: system.name, address: address("system", system.id) }] : []),
    ],
    body: html`
<article${record.withdrawn === undefined ? "" : html` class="withdrawn"`}>
${heading(record)}
${ended(page, record)}
${record.withdrawn === undefined ? warnings(page, record) : whatItSaid(record)}
${section("before-after", "Before and after", places(page, record))}
${section("who", "Which cars", who(page, record))}
${section("story", "What changed and why", renderMarkdown(record.story))}
${section("tell-apart", "How to tell them apart", tellApart(page, record))}
${section("settings", "Settings", record.settings.length > 0 && settingsTable(page, record.settings))}
${section("sums", "Shop sums", sums.length > 0 && html`<ul>${sums.map((it) => html`<li><a href="${page.href("/sums/")}?sum=${it.sum}&job=${encodeURIComponent(it.title)}#${it.sum}">${it.title}</a></li>`)}</ul>`)}
${section("procedures", "How it is done", procedures(record))}
${section("intervals", "Intervals", intervals(record))}
${section("tools", "Tools", record.tools.length > 0 && html`<ul>${record.tools.map((tool) => html`<li id="${tool.anchor}"><b>${tool.tool}</b> ${tool.use} ${tool.scope ? scopeLine(tool.scope, "") : ""}</li>`)}</ul>`)}
${section("fits", "What may stand in for what", standIns(page, record))}
${section("delivery", "What the warehouse sends", delivery(page, record))}
${section("kits", "Kits and repair parts", kits(page, record))}
${section("left-alone", "Left alone on purpose", record.leftAlone.length > 0 && html`<ul>${record.leftAlone.map((it) => html`<li id="${it.anchor}">${it.what}</li>`)}</ul>`)}
${section("otherwise", "What happens otherwise", record.otherwise !== undefined && html`<p>${record.otherwise}</p>`)}
${section("customer", "For the customer", record.customer !== undefined && html`<blockquote><p>${record.customer}</p></blockquote>`)}
${section("around", "What stands around it", around(page, record))}
<p><a class="button" href="${page.href("/map/")}?focus=record:${record.id}">See it on the map</a></p>
${copyLink(page, `${record.id} ${record.title}`)}
${printFoot(page, `${record.id}, revision ${record.revision} of ${record.revised ?? record.issued}. ${record.withdrawn === undefined ? "Check before use" : "Withdrawn: not to be used"}.`)}
</article>`,
    scripts: ["copy"],
  });
}

function heading(record: RecordView): Html {
  return html`<header class="title">
<p class="kinds">${record.kinds.map((kind) => html`<span class="tag">${KIND_WORDS[kind].label}</span>`)}</p>
<h1><span class="id">${record.id}</span> ${record.title}</h1>
<p class="dates">Issued <time datetime="${record.issued}">${record.issued}</time>${record.revised ? html`, revised <time datetime="${record.revised}">${record.revised}</time>` : ""}, revision ${record.revision}</p>
</header>`;
}

function ended(page: Page, record: RecordView): Html | "" {
  if (record.withdrawn !== undefined)
    return html`<div class="box ended"><p><b>Withdrawn.</b> ${sentence(record.withdrawn)}</p>
${record.instead?.length ? html`<p>What holds instead:</p><ul>${record.instead.map(({ id }) => html`<li>${recordLink(page, id)}</li>`)}</ul>` : html`<p>Nothing follows it.</p>`}</div>`;
  if (record.cancelledBy.length === 0) return "";
  return html`<div class="box ended">${record.cancelledBy.map(
    (by) =>
      html`<p><b>Cancelled ${by.scope ? html`for ${by.scope.words}` : ""}</b> by ${recordLink(page, by.id)}. Read there what to do about cars already treated.</p>`,
  )}</div>`;
}

function warnings(page: Page, record: RecordView): Html {
  return html`${trapBox(page, record)}
${cautionBox(record.caution, record.cautions)}`;
}

/** What guards any work on such components goes on to hold: it stands apart from what the record said, its own caution included. */
function whatItSaid(record: RecordView): Html {
  return html`${cautionBox(undefined, record.cautions)}
<p class="said">What it said, none of which counts any more:</p>
${section("own-caution", "Its own caution", record.caution !== undefined && html`<p>${record.caution}</p>`)}`;
}

function trapBox(page: Page, record: RecordView): Html | "" {
  const traps = record.standsIn.filter((it) => it.verdict === "must-not-be-used");
  if (traps.length === 0) return "";
  return html`<aside class="box trap" aria-labelledby="trap"><h2 id="trap"><span aria-hidden="true">✕</span> Goes on, but must not be used</h2>
<ul>${traps.map(
    (it) =>
      html`<li>${partLink(page, it.part)} ${it.for === undefined ? "where nothing belongs" : html`where ${partLink(page, it.for)} belongs`}${it.scope ? html` <span class="scope">(${it.scope.words})</span>` : ""}: ${it.why}.</li>`,
  )}</ul></aside>`;
}

function places(page: Page, record: RecordView): Html | false {
  if (record.places.length === 0) return false;
  const cell = (fitted: RecordView["places"][number]["before"], empty: string): Html =>
    fitted.length === 0
      ? html`<p class="none">${empty}</p>`
      : html`<ul>${fitted.map(
          (it) =>
            html`<li id="${it.anchor}">${it.parts.length === 0 ? html`<b>nothing</b>` : partLinks(page, it.parts)}${it.mixed ? html` <span class="tag">mixed stretch: look at the car</span>` : ""} <span class="scope">${it.scope.words}</span></li>`,
        )}</ul>`;
  return html`<div class="places">${record.places.map(
    ({ place, before, after }) => html`<div class="place"><h3>${place}</h3>
<div class="before"><h4>Before, or other cars</h4>${cell(before, "This record does not say.")}</div>
<div class="after"><h4>After</h4>${cell(after, "This record does not say.")}</div></div>`,
  )}</div>`;
}

function who(page: Page, record: RecordView): Html {
  const lines = page.site.catalog.lines;
  return html`<dl class="facts">
<div><dt>From when</dt><dd>${record.starts}</dd></div>
<div><dt>Cars</dt><dd>${record.scope.words}</dd></div>
<div><dt>Lines</dt><dd>${lines.filter((line) => record.lines.includes(line.id)).map((line, i) => html`${i > 0 ? ", " : ""}<a href="${page.href(address("line", line.id))}">${line.name}</a>`)}${
    lines.some((line) => !record.lines.includes(line.id)) && record.lines.length > 0
      ? html`; not ${lines
          .filter((line) => !record.lines.includes(line.id))
          .map((line) => line.name)
          .join(", ")}`
      : ""
  }</dd></div>
<div><dt>Model years</dt><dd>${record.years.map((year, i) => html`${i > 0 ? ", " : ""}<a href="${page.href(address("year", String(year)))}">${year}</a>`)}</dd></div>
${record.components.length > 0 && html`<div><dt>Components</dt><dd>${record.components.map((component, i) => html`${i > 0 ? ", " : ""}<a href="${page.href(address("component", component.id))}">${component.name}</a>`)}</dd></div>`}
</dl>`;
}

function tellApart(page: Page, record: RecordView): Html | false {
  const tables = marksTables(page, record.marks);
  if (record.tellApart === undefined && tables === "") return false;
  return html`${record.tellApart !== undefined ? html`<p>${record.tellApart}</p>` : ""}${tables}`;
}

function procedures(record: RecordView): Html | false {
  if (record.procedures.length === 0) return false;
  return html`<dl class="steps">${record.procedures.map((it) => html`<div id="${it.anchor}"><dt>${it.when ?? "On the cars of this record"}</dt><dd>${it.steps}</dd></div>`)}</dl>`;
}

function intervals(record: RecordView): Html | false {
  if (record.intervals.length === 0) return false;
  return html`<ul>${record.intervals.map((it) => html`<li id="${it.anchor}"><b>${it.name}</b>: ${it.every} <span class="scope">${it.scope.words}</span></li>`)}</ul>`;
}

/** Permissions first, then refusals; those that go on are also in the box at the top. */
function standIns(page: Page, record: RecordView): Html | false {
  if (record.standsIn.length === 0) return false;
  const order = ["yes", "on-conditions", "does-not-go-on", "must-not-be-used"];
  const sorted = [...record.standsIn].sort((a, b) => order.indexOf(a.verdict) - order.indexOf(b.verdict));
  return html`<ul class="standins">${sorted.map(
    (it) => html`<li id="${it.anchor}" class="${it.verdict}">
<p>${namedPart(page, it.part)} ${it.for === undefined ? "where the car has nothing" : html`where ${partLink(page, it.for)} belongs`}: <b class="verdict">${VERDICT_WORDS[it.verdict]}</b></p>
${it.scope ? html`<p>Only: ${scopeLine(it.scope, "")}</p>` : ""}
${it.with.length > 0 ? html`<p>Together with: ${it.with.map((number, i) => html`${i > 0 ? ", " : ""}${namedPart(page, number)}`)}</p>` : ""}
${it.do ? html`<p>To do: ${it.do}.</p>` : ""}
${it.why ? html`<p>Because: ${it.why}.</p>` : ""}
</li>`,
  )}</ul>
<p class="note">Each line holds in its own direction only. What no line states is not on record, and that is never a yes.</p>`;
}

function delivery(page: Page, record: RecordView): Html | false {
  if (record.supersedes.length === 0) return false;
  return html`<ul>${record.supersedes.map(
    (it) =>
      html`<li id="${it.anchor}">Who orders ${namedPart(page, it.old)} gets ${namedPart(page, it.new)}${it.with.length > 0 ? html`, together with ${it.with.map((number, i) => html`${i > 0 ? ", " : ""}${namedPart(page, number)}`)}` : ""}${it.scope ? html` <span class="scope">${it.scope.words}</span>` : ""}</li>`,
  )}</ul><p class="note">A delivery rule. It does not promise that the part fits.</p>`;
}

function kits(page: Page, record: RecordView): Html | false {
  if (record.kits.length === 0 && record.serviceOnly.length === 0) return false;
  return html`<ul>${record.kits.map(
    (it) =>
      html`<li id="${it.anchor}">${namedPart(page, it.kit)} contains ${it.contents.map((content, i) => html`${i > 0 ? ", " : ""}${content.count} × ${content.part ? namedPart(page, content.part) : content.name}`)}</li>`,
  )}${record.serviceOnly.map((number, i) => html`<li id="service-only-${i + 1}">${namedPart(page, number)} exists for repair only; no car left a plant with it, so it says nothing about a car's age.</li>`)}</ul>`;
}

function around(page: Page, record: RecordView): Html | false {
  const link = (it: { id: string; title: string; address: string }): Html =>
    html`<a href="${page.href(it.address)}"><span class="id">${it.id}</span> ${it.title}</a>`;
  const group = (label: string, items: readonly Html[]): Html | "" =>
    items.length > 0 ? html`<div><dt>${label}</dt><dd><ul>${items}</ul></dd></div>` : "";
  const links = [...record.links, ...record.linkedFrom].filter(
    (it, i, all) => all.findIndex((other) => other.id === it.id) === i,
  );
  const cancels = record.cancels.map(
    (it, i) => html`<li id="cancels-${i + 1}">${link(it)}${it.scope ? html` ${scopeLine(it.scope, "")}` : ""}</li>`,
  );
  const facts = [
    group("Cancels", cancels),
    group(
      "Read along",
      links.map((it) => html`<li>${link(it)}</li>`),
    ),
    group(
      "Cited by bulletins",
      record.citedBy.map((it) => html`<li>${link(it)}</li>`),
    ),
    record.parts.length > 0 ? html`<div><dt>Parts</dt><dd>${partLinks(page, record.parts)}</dd></div>` : "",
  ].filter((it) => it !== "");
  return facts.length > 0 && html`<dl class="facts">${facts}</dl>`;
}
