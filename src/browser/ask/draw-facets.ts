/** What the results can be narrowed by, each with how many there are. */
import { FACETS, type Facets } from "./address.ts";
import type { Counts } from "./open-search.ts";

const TITLES: Readonly<Record<(typeof FACETS)[number], string>> = {
  type: "What it is",
  system: "System",
  line: "Line",
  year: "Model year",
  kind: "Kind of change",
};

export function drawFacets(place: HTMLElement, counts: Counts, chosen: Facets, choose: (facets: Facets) => void): void {
  // What somebody unfolded stays so.
  const open = [...place.querySelectorAll<HTMLElement>("details[open]")].map((details) => details.dataset.name);
  const groups = FACETS.flatMap((name) => {
    const taken = chosen[name] ?? [];
    const values = Object.entries(counts[name] ?? {}).filter(([value, count]) => count > 0 || taken.includes(value));
    return values.length > 1 || taken.length > 0 ? [group(name, values, chosen, choose, open.includes(name))] : [];
  });
  place.replaceChildren(...groups);
}

function group(
  name: (typeof FACETS)[number],
  values: readonly [string, number][],
  chosen: Facets,
  choose: (facets: Facets) => void,
  open: boolean,
): HTMLElement {
  const details = document.createElement("details");
  const taken = chosen[name] ?? [];
  details.dataset.name = name;
  details.open = open || taken.length > 0;
  const summary = document.createElement("summary");
  summary.textContent = TITLES[name];
  details.append(summary);
  for (const [value, count] of values) {
    const label = document.createElement("label");
    const box = document.createElement("input");
    box.type = "checkbox";
    box.dataset.key = `facet ${name} ${value}`;
    box.checked = taken.includes(value);
    box.addEventListener("change", () => {
      const next = box.checked ? [...taken, value] : taken.filter((one) => one !== value);
      choose({ ...chosen, [name]: next });
    });
    label.append(box, ` ${value} (${count})`);
    details.append(label);
  }
  return details;
}
