import { address } from "../../engine/graph/node.ts";
import type { Component, System } from "../../engine/records/catalog.ts";
import { type Html, html } from "./html.ts";
import type { Page } from "./page.ts";
import { counted } from "./words.ts";

/** The components of a system as a list in a list, each with how often it changed. */
export function componentTree(page: Page, system: System): Html | "" {
  const under = (id: string | undefined): Html | "" => {
    const own = system.components.filter((component) => component.under === id);
    return own.length === 0
      ? ""
      : html`<ul>${own.map((component) => html`<li>${line(page, component)}${under(component.id)}</li>`)}</ul>`;
  };
  return under(undefined);
}

function line(page: Page, component: Component): Html {
  const changes = page.site.knowledge.recordsByComponent.get(component.id)?.length ?? 0;
  return html`<a href="${page.href(address("component", component.id))}">${component.name}</a>${changes > 0 ? html` <span class="count">${counted(changes, "record")}</span>` : ""}`;
}
