/** How many of the records found are of each system, line, year and kind, to narrow the list down by. */
import { html, nothing, type TemplateResult } from "lit-html";
import { type Chosen, type Count, FACETS, type Facet } from "../../../engine/ask/find-records.ts";

const TITLES: Readonly<Record<Facet, string>> = {
  system: "System",
  line: "Model line",
  year: "Model year",
  kind: "Kind of change",
};

/** Groups that somebody opened stay open while the list is drawn anew. */
const opened = new Set<Facet>();

export function facetsView(
  counts: Readonly<Record<Facet, readonly Count[]>>,
  chosen: Chosen,
  choose: (chosen: Chosen) => void,
): TemplateResult {
  return html`${FACETS.map((facet) => {
    const taken = chosen[facet] ?? [];
    // A choice of one is none.
    if (counts[facet].length < 2 && taken.length === 0) return nothing;
    const toggle = (id: string) =>
      choose({ ...chosen, [facet]: taken.includes(id) ? taken.filter((one) => one !== id) : [...taken, id] });
    const open = opened.has(facet) || taken.length > 0;
    return html`<details ?open=${open} data-name=${facet} @toggle=${(event: Event) => remember(facet, event)}>
      <summary>${TITLES[facet]}</summary>
      ${counts[facet].map(
        ({ id, label, count }) =>
          html`<label><input type="checkbox" data-key="facet ${facet} ${id}" .checked=${taken.includes(id)} @change=${() => toggle(id)}> ${label} (${count})</label>`,
      )}
    </details>`;
  })}`;
}

function remember(facet: Facet, { target }: Event): void {
  if ((target as HTMLDetailsElement).open) opened.add(facet);
  else opened.delete(facet);
}
