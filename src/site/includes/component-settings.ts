/** The figures on record for a component, each with a way to ask which one holds on a car. */
import { componentOf, settingsOf } from "../../engine/answers/find-settings.ts";
import { sayScope, sayWindow } from "../../engine/answers/say.ts";
import { address } from "../../engine/graph/node.ts";
import { type Html, html } from "./html.ts";
import type { Page } from "./page.ts";

/** Nothing where no record gives one. */
export function componentSettings(page: Page, component: string): Html | false {
  const { catalog } = page.site;
  const own = settingsOf(catalog).filter((it) =>
    it.statements.some((one) => componentOf(catalog, one)?.id === component),
  );
  if (own.length === 0) return false;
  return html`<dl class="all-settings">${own.map(
    (matter) =>
      html`<dt><a href="${page.href("/settings/")}?setting=${encodeURIComponent(matter.name)}">${matter.name}</a></dt>${matter.statements.map(
        (it) =>
          html`<dd><b>${sayWindow(it.low, it.high)} ${it.unit}</b> ${sayScope(catalog, it.scope).words} <a class="cite" href="${page.href(`${address("record", it.record)}#setting-${it.index + 1}`)}">${it.record}</a></dd>`,
      )}`,
  )}</dl>
<p class="note">A figure belongs to the part it was issued for, and moves to a car with it.</p>`;
}
