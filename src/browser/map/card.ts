/** The card of the selected node: what it is, the way to its page, how far to light up, and its neighbours. */
import { element } from "./element.ts";
import { KINDS } from "./kinds.ts";
import type { MapGraph } from "./map-graph.ts";
import { neighbourGroups } from "./neighbour-groups.ts";
import { neighbourList } from "./neighbour-list.ts";
import { kindSign } from "./signs.ts";
import type { View } from "./view.ts";

export interface CardParts {
  readonly graph: MapGraph;
  readonly href: (address: string) => string;
  readonly onPick: (key: string | undefined) => void;
  readonly onChange: (change: Partial<View>) => void;
}

export function showCard(place: HTMLElement, view: View, { graph, href, onPick, onChange }: CardParts): void {
  const node = view.focus === undefined ? undefined : graph.nodes.get(view.focus);
  place.classList.toggle("map-card-empty", !node);
  if (!node) {
    place.replaceChildren(
      element("p", {}, "Choose a node on the map, in the table or by name, and what stands around it is shown here."),
    );
    return;
  }
  const systems = node.systems
    .map((id) => graph.document.names.systems[id] ?? id)
    .filter((name) => name !== node.label);
  const groups = neighbourGroups(graph, node.key);
  const step = (steps: 1 | 2, label: string): HTMLElement =>
    element(
      "label",
      { class: "map-box" },
      element("input", {
        type: "radio",
        name: "map-steps",
        value: steps,
        checked: view.steps === steps,
        onchange: () => onChange({ steps }),
      }),
      element("span", {}, label),
    );
  const only = element("input", {
    type: "checkbox",
    checked: view.only,
    onchange: () => onChange({ only: only.checked }),
  });
  place.replaceChildren(
    element(
      "div",
      { class: "map-card-head" },
      element("h2", { id: "map-card-title", tabindex: -1 }, kindSign(node.kind), element("span", {}, node.label)),
      element(
        "button",
        { type: "button", class: "map-close", "aria-label": "Close the card", onclick: () => onPick(undefined) },
        "×",
      ),
    ),
    element("p", { class: "map-about" }, [KINDS[node.kind].one, ...systems].join(" · ")),
    element("p", {}, element("a", { class: "map-open", href: href(node.address) }, "Open its page")),
    element(
      "fieldset",
      { class: "map-steps" },
      element("legend", {}, "Light up"),
      step(1, "its neighbours"),
      step(2, "two steps"),
      element("label", { class: "map-box" }, only, element("span", {}, "and leave out the rest")),
    ),
    ...(groups.length === 0 ? [element("p", {}, "No relation leads to or from it.")] : []),
    ...neighbourList(groups, { href, onPick, heading: "h3" }),
  );
}
