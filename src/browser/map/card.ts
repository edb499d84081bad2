/** The card of the selected node: what it is, the way to its page, how far to light up, and its neighbours. */
import { argument } from "./argument.ts";
import { element } from "./element.ts";
import { KINDS } from "./kinds.ts";
import type { MapEdge, MapGraph } from "./map-graph.ts";
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

export function showCard(place: HTMLElement, view: View, parts: CardParts): void {
  const { graph, href, onPick, onChange } = parts;
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
  const argued = view.proof.length > 0;
  const choice = (label: string, checked: boolean, change: Partial<View>): HTMLElement =>
    element(
      "label",
      { class: "map-box" },
      element("input", { type: "radio", name: "map-steps", checked, onchange: () => onChange(change) }),
      element("span", {}, label),
    );
  const step = (steps: 1 | 2, label: string): HTMLElement =>
    choice(label, !argued && view.steps === steps, { steps, proof: [] });
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
      ...(argued ? [choice("the argument of the answer", true, {})] : []),
      step(1, "its neighbours"),
      step(2, "two steps"),
      element("label", { class: "map-box" }, only, element("span", {}, "and leave out the rest")),
    ),
    ...(argued
      ? inTwoParts(node.key, view, parts)
      : neighbours(node.key, parts, { heading: "h3", none: "No relation leads to or from it." })),
  );
}

/** What the answer rests on comes first, under words of its own. */
function inTwoParts(key: string, view: View, parts: CardParts): HTMLElement[] {
  const { edges } = argument(parts.graph, view.proof);
  const other = neighbours(key, parts, { heading: "h4", allowed: (edge) => !edges.has(edge), none: "Nothing else." });
  return [
    element("h3", {}, "In the argument"),
    ...neighbours(key, parts, {
      heading: "h4",
      allowed: (edge) => edges.has(edge),
      none: "No statement of the argument leads to or from it.",
    }),
    element("h3", {}, "Not in the argument"),
    ...other,
  ];
}

function neighbours(
  key: string,
  { graph, href, onPick }: CardParts,
  { heading, none, allowed }: { heading: "h3" | "h4"; none: string; allowed?: (edge: MapEdge) => boolean },
): HTMLElement[] {
  const groups = neighbourGroups(graph, key, allowed);
  if (groups.length === 0) return [element("p", {}, none)];
  return neighbourList(groups, { href, onPick, heading });
}
