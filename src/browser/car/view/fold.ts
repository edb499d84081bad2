/** Records under the headings of their systems; of a long list all but the first heading is folded. */
import { html, type TemplateResult } from "lit-html";
import { repeat } from "lit-html/directives/repeat.js";
import type { Group } from "../order.ts";

/** So many are no effort to scroll past. */
const SHORT = 12;

/** The id of a heading, for links to it. */
export function headingId(list: string, heading: string): string {
  return `${list}-${heading.toLowerCase().replaceAll(/[^a-z0-9]+/g, "-")}`;
}

export function foldedGroups<T>(
  list: string,
  groups: readonly Group<T>[],
  items: (group: Group<T>) => TemplateResult,
  whole: boolean,
): TemplateResult {
  const count = groups.reduce((sum, group) => sum + group.items.length, 0);
  return html`${repeat(
    groups,
    (group) => group.heading,
    (group) => html`
      <details class="fold" ?open=${whole || count <= SHORT || group === groups[0]}>
        <summary><h3 id=${headingId(list, group.heading)}>${group.heading}</h3> <span class="count">${group.items.length}</span></summary>
        ${items(group)}
      </details>`,
  )}`;
}

/** Whether some of a list is folded at first. */
export function isFolded(count: number, groups: number): boolean {
  return count > SHORT && groups > 1;
}
