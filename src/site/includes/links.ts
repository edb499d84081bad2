/** Links to what has a page, always with words that say what it is. */
import { address } from "../../engine/graph/node.ts";
import type { ChangeRecord } from "../../engine/records/catalog.ts";
import { isTrap } from "../../engine/records/is-trap.ts";
import { KIND_WORDS } from "../../engine/records/kinds.ts";
import { type Html, html } from "./html.ts";
import type { Page } from "./page.ts";

export function partLink(page: Page, number: string): Html {
  const name = page.site.catalog.parts.get(number)?.name;
  return html`<a class="part" href="${page.href(address("part", number))}"${name ? html` title="${name}"` : ""}>${number}</a>`;
}

export function partLinks(page: Page, numbers: readonly string[]): Html {
  return html`${numbers.map((number, i) => html`${i > 0 ? ", " : ""}${partLink(page, number)}`)}`;
}

/** A part with its name: "12-3456 water pump". */
export function namedPart(page: Page, number: string): Html {
  return html`${partLink(page, number)} ${page.site.catalog.parts.get(number)?.name ?? ""}`;
}

export function recordLink(page: Page, id: string): Html {
  const title = page.site.catalog.records.get(id)?.facts.title ?? "";
  return html`<a href="${page.href(address("record", id))}"><span class="id">${id}</span> ${title}</a>`;
}

/** Where a statement stands on its record's page: just the id, linked. */
export function statementLink(page: Page, record: string, anchor: string): Html {
  return html`<a class="id" href="${page.href(address("record", record))}#${anchor}">${record}</a>`;
}

/** A list of records as pages show it: id, title, whom it concerns, what kinds; traps marked by a word. */
export function recordList(
  page: Page,
  records: readonly ChangeRecord[],
  who: (record: ChangeRecord) => string = (record) => record.facts.starts,
): Html {
  if (records.length === 0) return html`<p class="none">No record.</p>`;
  return html`<ul class="records">${records.map(
    (record) => html`<li>
<a href="${page.href(address("record", record.id))}"><span class="id">${record.id}</span> ${record.facts.title}</a>
${isTrap(record) ? html`<span class="tag trap">Trap</span>` : ""}${cancelled(page, record)}
<p class="who">${who(record)}</p>
<p class="kinds">${record.facts.kinds.map((kind) => html`<span class="tag">${KIND_WORDS[kind].label}</span>`)}</p>
</li>`,
  )}</ul>`;
}

function cancelled(page: Page, record: ChangeRecord): Html | string {
  const by = page.site.cancelledBy.get(record.id);
  if (record.facts.withdrawn !== undefined) return html`<span class="tag ended">Withdrawn</span>`;
  return by ? html`<span class="tag ended">Cancelled${by.whole ? "" : " in part"}</span>` : "";
}

/** Traps first, then the newest. */
export function trapsFirst(records: readonly ChangeRecord[]): ChangeRecord[] {
  return [...records].sort(
    (a, b) =>
      Number(isTrap(b)) - Number(isTrap(a)) ||
      (a.facts.issued < b.facts.issued ? 1 : a.facts.issued > b.facts.issued ? -1 : 0) ||
      (a.id < b.id ? -1 : 1),
  );
}
