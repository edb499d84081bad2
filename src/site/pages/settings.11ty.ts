/** Settings: what is in force on the car at hand. Without a script, every figure on record with its cars. */
import { componentOf, settingsOf } from "../../engine/answers/find-settings.ts";
import { sayInterval, sayScope, sayWindow } from "../../engine/answers/say.ts";
import { address } from "../../engine/graph/node.ts";
import { statementsOf } from "../../engine/records/statement.ts";
import { section } from "../includes/blocks.ts";
import { frame } from "../includes/frame.ts";
import { type Html, html } from "../includes/html.ts";
import { openPage, type Page } from "../includes/page.ts";
import type { Site } from "../site.ts";

export const data = { permalink: "/settings/index.html" };

export function render({ site }: { site: Site }): string {
  const page = openPage(site, "/settings/");
  const figures = settingsOf(site.catalog).length > 0 ? bySystem(page) : undefined;
  const due = intervals(page);
  return frame(page, {
    title: "Settings",
    description: "Which figure is in force on a car, whether a reading passes, and what is due when.",
    crumbs: [],
    scripts: ["settings"],
    styles: ["island", "fit", "settings"],
    body: html`
<header class="title"><h1>Settings</h1>
<p class="lead">Which figure is in force on the car at hand, whether a reading passes, and what is due when. <a href="${page.href("/sums/")}">Shop sums and units</a> stand on a page of their own.</p></header>
<p id="settings-status" class="hidden" role="status"></p>
<noscript><p class="box">Asking about a car takes a script, which this browser does not run.${figures || due ? " Below stands every figure on record, with the cars that it is for." : ""}</p></noscript>
<div id="settings" class="island"></div>
${section("by-setting", "Every setting on record", html`${figures ?? html`<p class="none">No record gives a setting.</p>`}${due}`)}`,
  });
}

function bySystem(page: Page): Html {
  const { catalog } = page.site;
  const settings = settingsOf(catalog);
  const groups: { id?: string; name: string }[] = [...catalog.systems, { name: "Other" }];
  return html`${groups.map(({ id, name }) => {
    const own = settings.filter((it) => it.statements.some((one) => componentOf(catalog, one)?.system === id));
    if (own.length === 0) return "";
    return html`<h3>${name}</h3><dl class="all-settings">${own.map(
      (matter) =>
        html`<dt>${matter.name}</dt>${matter.statements.map(
          (it) =>
            html`<dd><b>${sayWindow(it.low, it.high)} ${it.unit}</b> ${sayScope(catalog, it.scope).words} <a class="cite" href="${page.href(`${address("record", it.record)}#setting-${it.index + 1}`)}">${it.record}</a></dd>`,
        )}`,
    )}</dl>`;
  })}`;
}

function intervals(page: Page): Html | "" {
  const { catalog } = page.site;
  const all = [...catalog.records.values()].flatMap((record) => statementsOf(record.statements, "interval"));
  const names = [...new Set(all.map((it) => it.name))];
  if (names.length === 0) return "";
  return html`<h3>Service intervals</h3><dl class="all-settings">${names.map(
    (name) =>
      html`<dt>${name}</dt>${all
        .filter((it) => it.name === name)
        .map(
          (it) =>
            html`<dd><b>${sayInterval(it)}</b> ${sayScope(catalog, it.scope).words} <a class="cite" href="${page.href(`${address("record", it.record)}#interval-${it.index + 1}`)}">${it.record}</a></dd>`,
        )}`,
  )}</dl>`;
}
