/** The lists of all that has a page: one template, one list a kind. */
import { address } from "../../engine/graph/node.ts";
import { section } from "../includes/blocks.ts";
import { componentTree } from "../includes/component-tree.ts";
import { frame } from "../includes/frame.ts";
import { type Html, html } from "../includes/html.ts";
import { namedPart, recordList } from "../includes/links.ts";
import { openPage, type Page } from "../includes/page.ts";
import { counted, upperFirst } from "../includes/words.ts";
import type { Site } from "../site.ts";

interface Index {
  readonly address: string;
  readonly title: string;
  readonly about: string;
  /** What stands there for a maker who has nothing of the kind. */
  readonly none: string;
}

const INDEXES: readonly Index[] = [
  {
    address: "/records/",
    title: "Records",
    about: "Every change record, by the model year it begins with.",
    none: "No record yet.",
  },
  {
    address: "/parts/",
    title: "Parts",
    about: "Every part number, by system and component.",
    none: "No part is on record.",
  },
  {
    address: "/components/",
    title: "Components",
    about: "Every component, by system.",
    none: "No component is on record.",
  },
  {
    address: "/systems/",
    title: "Systems",
    about: "The systems of the car and what changed on them.",
    none: "No system is on record.",
  },
  {
    address: "/lines/",
    title: "Lines",
    about: "The model lines and the years in which they were built.",
    none: "No line is on record.",
  },
  {
    address: "/years/",
    title: "Years",
    about: "The model years and what begins with them.",
    none: "No year is on record.",
  },
  { address: "/bulletins/", title: "Bulletins", about: "Documents that cite the records.", none: "No bulletin." },
];

export const data = {
  indexes: INDEXES,
  pagination: { data: "indexes", size: 1, alias: "index" },
  permalink: ({ index }: { index: Index }) => `${index.address}index.html`,
};

export function render({ site, index }: { site: Site; index: Index }): string {
  const page = openPage(site, index.address);
  return frame(page, {
    title: index.title,
    description: index.about,
    crumbs: [],
    body: html`<header class="title"><h1>${index.title}</h1><p>${index.about}</p></header>${countOf(site, index) === 0 ? html`<p class="none">${index.none}</p>` : list(page)}`,
  });
}

/** How many there are of the kind of a list. */
function countOf(site: Site, { address: of }: Index): number {
  const kind = of.slice(1, -1) as "records" | "parts" | "components" | "systems" | "lines" | "years" | "bulletins";
  return site[kind].length;
}

function list(page: Page): Html | string {
  const { site } = page;
  switch (page.address) {
    case "/records/":
      return html`${site.beginnings.map((year) => section(`y${year}`, String(year), recordList(page, site.recordsByYear.get(year) ?? [])))}`;
    case "/parts/":
      return html`${site.systems.map((system) => {
        const parts = system.components
          .flatMap((component) => site.knowledge.partsByComponent.get(component.id) ?? [])
          .sort();
        return parts.length > 0
          ? section(
              system.id,
              system.name,
              html`<ul class="columns">${parts.map((number) => html`<li>${namedPart(page, number)}</li>`)}</ul>`,
            )
          : "";
      })}`;
    case "/components/":
      return html`${site.systems.map((system) => section(system.id, system.name, componentTree(page, system)))}`;
    case "/systems/":
      return html`<ul class="cards">${site.systems.map(
        (system) =>
          html`<li><a href="${page.href(address("system", system.id))}">${system.name}</a> <span class="count">${counted(site.knowledge.recordsBySystem.get(system.id)?.length ?? 0, "record")}</span></li>`,
      )}</ul>`;
    case "/lines/":
      return html`<ul class="cards">${site.lines.map(
        (line) =>
          html`<li><a href="${page.href(address("line", line.id))}">${line.name}</a>${line.class ? html` <span class="count">${line.class}</span>` : ""}<p>${site.lineYears.filter((it) => it.line === line).map((it, i) => html`${i > 0 ? " · " : ""}<a href="${page.href(`/lines/${line.id}/${it.year}/`)}">${it.year}</a>`)}</p></li>`,
      )}</ul>`;
    case "/years/":
      return html`<ul class="cards">${site.years.map(
        (year) =>
          html`<li><a href="${page.href(address("year", String(year)))}">${year}</a> <span class="count">${begun(site.recordsByYear.get(year)?.length ?? 0)}</span></li>`,
      )}</ul>`;
    default:
      return html`<ul class="records">${site.bulletins.map(
        ({ id, facts }) =>
          html`<li><a href="${page.href(address("bulletin", id))}"><span class="id">${id}</span> ${upperFirst(facts.title)}</a><p class="who">${facts.issued}. ${facts.about}</p></li>`,
      )}</ul>`;
  }
}

function begun(count: number): string {
  if (count === 0) return "nothing begins";
  return `${counted(count, "change")} ${count === 1 ? "begins" : "begin"}`;
}
