/** One part: where it was built in, its marks, what it may and may not stand in for in both directions, what replaced it. */
import { type PartView, viewPart } from "../../engine/answers/answer-part.ts";
import { answerPartFamily, type PartFamily } from "../../engine/answers/answer-part-family.ts";
import { NO_PART } from "../../engine/answers/family-lines.ts";
import { VERDICT_WORDS } from "../../engine/answers/say.ts";
import { address } from "../../engine/graph/node.ts";
import type { Part } from "../../engine/records/catalog.ts";
import { cautionBox, copyLink, scopeLine, section } from "../includes/blocks.ts";
import { componentSettings } from "../includes/component-settings.ts";
import { familyDrawing, noteOf } from "../includes/family-drawing.ts";
import { frame } from "../includes/frame.ts";
import { type Html, html } from "../includes/html.ts";
import { namedPart, partLink, recordList, statementLink, trapsFirst } from "../includes/links.ts";
import { marksTable } from "../includes/marks-table.ts";
import { openPage, type Page } from "../includes/page.ts";
import { printFoot } from "../includes/print-foot.ts";
import { counted } from "../includes/words.ts";
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
  const family = answerPartFamily(site.knowledge, source);
  const refused = part.standsInFor.filter((it) => it.verdict === "must-not-be-used" && isInForce(family, it));
  const shownAlike = new Set(family.lookAlikes.map((it) => it.number));
  const others = part.relatives.filter(({ id }) => !shownAlike.has(id));
  return frame(page, {
    title: part.number,
    description: `${part.number}, ${part.name}: where it was built in, what it may stand in for, how to tell it apart.`,
    crumbs: [
      { label: "Parts", address: "/parts/" },
      { label: part.system.name, address: address("system", part.system.id) },
      { label: part.component.name, address: address("component", part.component.id) },
    ],
    scripts: ["copy"],
    styles: ["drawing", "apart"],
    body: html`
<article>
<header class="title">
<h1><span class="id">${part.number}</span> ${part.name}</h1>
<p>${part.hand ? html`<span class="tag">${part.hand} hand, seen from the driver's seat facing forward</span> ` : ""}${ORIGIN[part.origin]}</p>
${part.castings.length > 0 ? html`<p>Cast into it, and not its part number: ${part.castings.join(", ")}.</p>` : ""}
</header>
${refused.length > 0 && html`<aside class="box trap" aria-labelledby="trap"><h2 id="trap"><span aria-hidden="true">✕</span> Goes on, but must not be used</h2><ul>${[...new Set(refused.map((it) => it.for))].map((number) => html`<li>${number === undefined ? "where the car has nothing" : html`where ${namedPart(page, number)} belongs`}</li>`)}</ul><p>Why, and on which cars: under <a href="#family">Family</a>.</p></aside>`}
${cautionBox(undefined, part.cautions)}
${section("built", "Built in", built(page, part))}
${section("marks", "How to tell it from its relatives", marks(page, source, part))}
${section("settings", "Settings of this component", componentSettings(page, part.component.id))}
${section("family", "Family", familyOf(page, part, family))}
${section("retrofits", "Retrofits it takes part in", retrofits(page, part, family))}
${section("with", "Kits, and what is ordered along", along(page, part, family))}
${section("relatives", "Other parts of the same component", others.length > 0 && html`<ul>${others.map(({ id }) => html`<li>${namedPart(page, id)}</li>`)}</ul>`)}
${section("records", "Records", recordList(page, records))}
${section("cited", "Cited by bulletins", part.citedBy.length > 0 && html`<ul>${part.citedBy.map((it) => html`<li><a href="${page.href(it.address)}">${it.title}</a></li>`)}</ul>`)}
<p><a class="button" href="${page.href("/fit/")}?part=${encodeURIComponent(part.number)}">May it go on your car?</a> <a class="button" href="${page.href("/map/")}?focus=part:${part.number}">See it on the map</a></p>
${copyLink(page, `${part.number} ${part.name}`)}
${printFoot(page, `Part ${part.number}. Check before use.`)}
</article>`,
  });
}

/** This part first, then those it may be taken for. */
function marks(page: Page, source: Part, { component, relatives }: PartView): Html | "" {
  const { parts } = page.site.catalog;
  const family = [source, ...relatives.flatMap(({ id }) => parts.get(id) ?? [])];
  const isCompared = family.filter((part) => Object.keys(part.marks).length > 0).length > 1;
  const table = marksTable(page, component.name, family);
  return (
    table &&
    html`${table}${isCompared && html`<p><a class="button" href="${page.href("/apart/")}?component=${encodeURIComponent(component.id)}#${component.id}">Tell it apart, mark by mark</a></p>`}`
  );
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

/** The drawing, and all of it in words. What the part itself may be fitted for is a retrofit, and is told in full there. */
function familyOf(page: Page, part: PartView, family: PartFamily): Html {
  const { leftOut } = family;
  const deliveries = [...part.supersedes, ...part.supersededBy];
  const refused = part.standsInFor.filter((it) => !isPermitted(it));
  const mayGo = [
    ...new Set(part.standsInFor.filter((it) => isPermitted(it) && isInForce(family, it)).map((it) => it.for)),
  ];
  const between = family.lines.filter((it) => it.tail !== part.number && it.head !== part.number);
  const statements = leftOut.ofIt + leftOut.ofOthers;
  const isSilent = deliveries.length + part.standsInFor.length + part.replacedBy.length === 0;
  return html`${familyDrawing(page, family)}
${isSilent && html`<p class="none">No record says what it may stand in for, what may stand in for it, or that one part is delivered instead of another.</p>`}
${leftOut.parts.length + statements > 0 && html`<p>Not in the drawing: ${[leftOut.parts.length > 0 ? counted(leftOut.parts.length, "part") : "", statements > 0 ? counted(statements, "statement") : ""].filter(Boolean).join(" and ")}. <a href="${page.href("/map/")}?focus=part:${part.number}&amp;steps=2">Follow them on the map</a>.</p>`}
${deliveries.length > 0 && html`<h3>Who orders one gets the other</h3><ul>${deliveries.map((it) => deliveryLine(page, it, family))}</ul><p class="note">A delivery rule. It does not promise that the part fits.</p>`}
${mayGo.length > 0 && html`<h3>Where it may be used</h3><p>${mayGo.map((number, i) => html`${i > 0 ? "; in" : "In"} ${number === undefined ? "an empty place" : html`place of ${namedPart(page, number)}`}`)}; but only as told under <a href="#retrofits">Retrofits it takes part in</a>.</p>`}
${refused.length > 0 && html`<h3>Where it may not be used</h3><ul class="standins">${refused.map((it) => standInLine(page, it, "for", family))}</ul>`}
${part.replacedBy.length > 0 && html`<h3>What may, and may not, be used in its place</h3><ul class="standins">${part.replacedBy.map((it) => standInLine(page, it, "part", family))}</ul>`}
${family.lookAlikes.length > 0 && html`<h3>What it may be taken for</h3><ul>${family.lookAlikes.map((it) => lookAlikeLine(page, it))}</ul>`}
${between.length > 0 && html`<h3>Between its relatives</h3><ul>${between.map((it) => betweenLine(page, it))}</ul>`}
${part.standsInFor.length + part.replacedBy.length > 0 && silence()}`;
}

function isPermitted(it: PartView["standsInFor"][number]): boolean {
  return it.verdict === "yes" || it.verdict === "on-conditions";
}

/** Not whether it holds for the car at hand, but for any at all. */
function isInForce({ notInForce }: PartFamily, it: { record: string; anchor: string }): boolean {
  return !notInForce.some((other) => other.record === it.record && other.anchor === it.anchor);
}

function ended(inForce: boolean): Html | "" {
  return inForce ? "" : html` <span class="tag ended">Holds for no car</span>`;
}

function deliveryLine(page: Page, it: PartView["supersedes"][number], family: PartFamily): Html {
  return html`<li>Who orders ${namedPart(page, it.old)} gets ${namedPart(page, it.new)}${it.with.length > 0 ? html`, together with ${namedParts(page, it.with)}` : ""}${it.scope ? html` <span class="scope">${it.scope.words}</span>` : ""} ${statementLink(page, it.record, it.anchor)}${ended(isInForce(family, it))}</li>`;
}

function lookAlikeLine(page: Page, it: PartFamily["lookAlikes"][number]): Html {
  const same = it.same.length > 0 ? html`: the same in ${it.same.join(", ")}` : "";
  const apart =
    it.apart.length > 0
      ? html`; <a href="#marks">told apart</a> by ${it.apart.join(", ")}`
      : `${it.same.length > 0 ? ";" : ":"} no mark on record tells them apart`;
  return html`<li>${namedPart(page, it.number)}${same}${apart}</li>`;
}

function betweenLine(page: Page, it: PartFamily["lines"][number]): Html {
  const note = noteOf(it);
  const head = it.head === NO_PART ? html`nothing is fitted` : html`${partLink(page, it.head)} belongs`;
  const said =
    it.kind === "delivered"
      ? html`${partLink(page, it.tail)} is delivered instead of ${partLink(page, it.head)}`
      : html`${partLink(page, it.tail)} where ${head}: <b class="verdict">${VERDICT_WORDS[it.kind]}</b>`;
  return html`<li>${said}${it.bothWays && ", and the other way round"}${note && `; ${note}`} ${[...new Map(it.by.map((one) => [one.record, one])).values()].map((one) => html` ${statementLink(page, one.record, one.anchor)}`)}</li>`;
}

function retrofits(page: Page, part: PartView, family: PartFamily): Html | false {
  const goesOn = part.standsInFor.filter(isPermitted);
  if (goesOn.length + family.goesAlong.length === 0) return false;
  return html`${goesOn.length > 0 && html`<h3>It goes on</h3><ul class="standins">${goesOn.map((it) => standInLine(page, it, "for", family))}</ul>`}
${
  family.goesAlong.length > 0 &&
  html`<h3>It goes along</h3><ul class="standins">${family.goesAlong.map(
    (
      it,
    ) => html`<li class="${it.verdict}"><p>Together with ${namedPart(page, it.part)}, ${it.for === undefined ? "where the car has nothing" : html`where ${namedPart(page, it.for)} belongs`}: <b class="verdict">${VERDICT_WORDS[it.verdict]}</b> ${statementLink(page, it.record, it.anchor)}${ended(it.inForce)}</p>
${it.scope ? html`<p>Only: ${scopeLine(it.scope, "")}</p>` : ""}
${it.with.length > 0 ? html`<p>And with: ${namedParts(page, it.with)}</p>` : ""}</li>`,
  )}</ul>`
}`;
}

function namedParts(page: Page, numbers: readonly string[]): Html {
  return html`${numbers.map((number, i) => html`${i > 0 ? ", " : ""}${namedPart(page, number)}`)}`;
}

function standInLine(page: Page, it: PartView["standsInFor"][number], other: "part" | "for", family: PartFamily): Html {
  const where =
    it.for === undefined
      ? html`where the car has nothing`
      : html`where ${other === "for" ? namedPart(page, it.for) : partLink(page, it.for)} belongs`;
  return html`<li class="${it.verdict}"><p>${other === "part" ? namedPart(page, it.part) : partLink(page, it.part)} ${where}: <b class="verdict">${VERDICT_WORDS[it.verdict]}</b> ${statementLink(page, it.record, it.anchor)}${ended(isInForce(family, it))}</p>
${it.scope ? html`<p>Only: ${scopeLine(it.scope, "")}</p>` : ""}
${it.with.length > 0 ? html`<p>Together with: ${namedParts(page, it.with)}</p>` : ""}
${it.do ? html`<p>To do: ${it.do}.</p>` : ""}
${it.why ? html`<p>Because: ${it.why}.</p>` : ""}</li>`;
}

function along(page: Page, part: PartView, { orderedAlong }: PartFamily): Html | false {
  const { contents, kits } = part;
  if (contents.length + kits.length + orderedAlong.length === 0) return false;
  return html`<ul>
${contents.map((it) => html`<li>Contains ${it.count} × ${it.part ? namedPart(page, it.part) : it.name}</li>`)}
${kits.map((it) => html`<li>Comes in kit ${namedPart(page, it.kit)} ${statementLink(page, it.record, it.anchor)}</li>`)}
${orderedAlong.map((it) => html`<li>Ordered along with ${namedPart(page, it.part)} ${statementLink(page, it.record, it.anchor)}${ended(it.inForce)}</li>`)}
</ul>`;
}
