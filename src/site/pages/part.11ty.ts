/** One part: where it was built in, its marks, what it may and may not stand in for in both directions, what replaced it. */
import { type PartView, viewPart } from "../../engine/answers/answer-part.ts";
import { VERDICT_WORDS } from "../../engine/answers/say.ts";
import { address } from "../../engine/graph/node.ts";
import type { Part } from "../../engine/records/catalog.ts";
import { cautionBox, copyLink, marksTables, scopeLine, section } from "../includes/blocks.ts";
import { frame } from "../includes/frame.ts";
import { type Html, html } from "../includes/html.ts";
import { namedPart, partLink, recordList, statementLink, trapsFirst } from "../includes/links.ts";
import { openPage, type Page } from "../includes/page.ts";
import { printFoot } from "../includes/print-foot.ts";
import { searchTags } from "../includes/search-tags.ts";
import type { Site } from "../site.ts";

interface Data {
  readonly site: Site;
  readonly part: Part;
}

export const data = {
  pagination: { data: "site.parts", size: 1, alias: "part" },
  permalink: ({ part }: Data) => `${address("part", part.number)}index.html`,
};

const ORIGIN: Readonly<Record<PartView["origin"], string>> = {
  "built in": "Cars left the plant with it.",
  "repair only": "For repair only: no car left a plant with it, so it says nothing about a car's age.",
  "not built in on record": "No record says that a car left the plant with it.",
};

export function render({ site, part: source }: Data): string {
  const page = openPage(site, address("part", source.number));
  const part = viewPart(site.knowledge, source);
  const records = trapsFirst(part.records.flatMap(({ id }) => site.catalog.records.get(id) ?? []));
  const refused = part.standsInFor.filter((it) => it.verdict === "must-not-be-used");
  return frame(page, {
    title: part.number,
    description: `${part.number}, ${part.name}: where it was built in, what it may stand in for, how to tell it apart.`,
    crumbs: [
      { label: "Parts", address: "/parts/" },
      { label: part.system.name, address: address("system", part.system.id) },
      { label: part.component.name, address: address("component", part.component.id) },
    ],
    index: true,
    scripts: ["copy"],
    body: html`
<article>
<header class="title">
<h1 data-pagefind-meta="title"><span class="id">${part.number}</span> ${part.name}</h1>
<p>${part.hand ? html`<span class="tag">${part.hand} hand, seen from the driver's seat facing forward</span> ` : ""}${ORIGIN[part.origin]}</p>
${part.castings.length > 0 ? html`<p>Cast into it, and not its part number: ${part.castings.join(", ")}.</p>` : ""}
${searchTags({
  type: "part",
  system: [part.system.name],
  component: [part.component.id],
  rank: "300000000",
  about: `${part.component.name}. ${ORIGIN[part.origin]}`,
})}
</header>
${refused.length > 0 && html`<aside class="box trap" aria-labelledby="trap"><h2 id="trap"><span aria-hidden="true">✕</span> Goes on, but must not be used</h2><ul>${refused.map((it) => standInLine(page, it, "for"))}</ul></aside>`}
${cautionBox(undefined, part.cautions)}
${section("built", "Built in", built(page, part))}
${section("marks", "How to tell it from its relatives", marksTables(page, part.marks))}
${section("family", "What replaced what", family(page, part))}
${section("stands-in", "Where it may, and may not, be used", part.standsInFor.length > 0 && html`<ul class="standins">${part.standsInFor.map((it) => standInLine(page, it, "for"))}</ul>${silence()}`)}
${section("replaced-by", "What may, and may not, be used in its place", part.replacedBy.length > 0 && html`<ul class="standins">${part.replacedBy.map((it) => standInLine(page, it, "part"))}</ul>${silence()}`)}
${section("with", "Goes along", along(page, part))}
${section("relatives", "Other parts of the same component", part.relatives.length > 0 && html`<ul data-pagefind-ignore="all">${part.relatives.map(({ id }) => html`<li>${namedPart(page, id)}</li>`)}</ul>`)}
${section("records", "Records", recordList(page, records))}
${section("cited", "Cited by bulletins", part.citedBy.length > 0 && html`<ul>${part.citedBy.map((it) => html`<li><a href="${page.href(it.address)}">${it.title}</a></li>`)}</ul>`)}
<p data-pagefind-ignore="all"><a class="button" href="${page.href("/map/")}?focus=part:${part.number}">See it on the map</a></p>
${copyLink(page, `${part.number} ${part.name}`)}
${printFoot(page, `Part ${part.number}. Check before use.`)}
</article>`,
  });
}

function silence(): Html {
  return html`<p class="note">Each line holds in its own direction only. What no line states is not on record, and that is never a yes.</p>`;
}

function built(page: Page, part: PartView): Html {
  if (part.built.length === 0) return html`<p class="none">${ORIGIN[part.origin]}</p>`;
  return html`<ul>${part.built.map(
    (it) =>
      html`<li><b>${it.place}</b>${it.mixed ? html` <span class="tag">mixed stretch: look at the car</span>` : ""}: <span class="scope">${it.scope.words}</span> ${statementLink(page, it.record, it.anchor)}</li>`,
  )}</ul>`;
}

function family(page: Page, part: PartView): Html | false {
  if (part.supersededBy.length === 0 && part.supersedes.length === 0) return false;
  const line = (it: PartView["supersedes"][number]): Html =>
    html`<li>Who orders ${namedPart(page, it.old)} gets ${namedPart(page, it.new)}${it.with.length > 0 ? html`, together with ${it.with.map((number, i) => html`${i > 0 ? ", " : ""}${namedPart(page, number)}`)}` : ""}${it.scope ? html` <span class="scope">${it.scope.words}</span>` : ""} ${statementLink(page, it.record, it.anchor)}</li>`;
  return html`<ul>${part.supersedes.map(line)}${part.supersededBy.map(line)}</ul><p class="note">A delivery rule. It does not promise that the part fits.</p>`;
}

function standInLine(page: Page, it: PartView["standsInFor"][number], other: "part" | "for"): Html {
  const where =
    it.for === undefined
      ? html`where the car has nothing`
      : html`where ${other === "for" ? namedPart(page, it.for) : partLink(page, it.for)} belongs`;
  return html`<li class="${it.verdict}"><p>${other === "part" ? namedPart(page, it.part) : partLink(page, it.part)} ${where}: <b class="verdict">${VERDICT_WORDS[it.verdict]}</b> ${statementLink(page, it.record, it.anchor)}</p>
${it.scope ? html`<p>Only: ${scopeLine(it.scope, "")}</p>` : ""}
${it.with.length > 0 ? html`<p>Together with: ${it.with.map((number, i) => html`${i > 0 ? ", " : ""}${namedPart(page, number)}`)}</p>` : ""}
${it.do ? html`<p>To do: ${it.do}.</p>` : ""}
${it.why ? html`<p>Because: ${it.why}.</p>` : ""}</li>`;
}

function along(page: Page, part: PartView): Html | false {
  const { contents, kits, neededWith } = part;
  if (contents.length + kits.length + neededWith.length === 0) return false;
  return html`<ul>
${contents.map((it) => html`<li>Contains ${it.count} × ${it.part ? namedPart(page, it.part) : it.name}</li>`)}
${kits.map((it) => html`<li>Comes in kit ${namedPart(page, it.kit)} ${statementLink(page, it.record, it.anchor)}</li>`)}
${neededWith.map((it) => html`<li>Needed with ${namedPart(page, it.part)} ${statementLink(page, it.record, it.anchor)}</li>`)}
</ul>`;
}
