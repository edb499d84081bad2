/** The neighbours of a node as lists, one to a relation: in the card, and in the rows of the table. */
import { element } from "./element.ts";
import { KINDS } from "./kinds.ts";
import type { MapNode } from "./map-graph.ts";
import type { NeighbourGroup, Statement } from "./neighbour-groups.ts";
import { kindSign } from "./signs.ts";

/** So many neighbours of one relation are shown before a button brings the rest. */
const FIRST = 10;

export interface ListParts {
  readonly href: (address: string) => string;
  readonly onPick: (key: string) => void;
  readonly heading: "h3" | "h4";
}

export function neighbourList(groups: readonly NeighbourGroup[], parts: ListParts): HTMLElement[] {
  return groups.flatMap(({ words, neighbours }) => {
    const list = element("ul", { class: "map-neighbours" });
    const rows = neighbours.map(({ node, statements }) => row(node, statements, parts));
    list.append(...rows.slice(0, FIRST));
    const rest = rows.slice(FIRST);
    const more = element(
      "button",
      {
        type: "button",
        class: "map-more",
        onclick: () => {
          list.append(...rest);
          rest[0]?.querySelector("button")?.focus();
          more.remove();
        },
      },
      `${rest.length} more`,
    );
    const heading = element(parts.heading, {}, words, " ", element("small", {}, String(neighbours.length)));
    return rest.length > 0 ? [heading, list, more] : [heading, list];
  });
}

function row(node: MapNode, statements: readonly Statement[], { href, onPick }: ListParts): HTMLElement {
  return element(
    "li",
    {},
    element(
      "button",
      { type: "button", class: "map-pick", onclick: () => onPick(node.key) },
      kindSign(node.kind),
      element("span", {}, node.label),
      element("span", { class: "map-unseen" }, `, ${KINDS[node.kind].one}, select`),
    ),
    element(
      "a",
      { class: "map-to-page", href: href(node.address) },
      "page",
      element("span", { class: "map-unseen" }, ` of ${node.label}`),
    ),
    ...statements.map((statement) => said(statement, href)),
  );
}

function said({ by, limits }: Statement, href: (address: string) => string): HTMLElement {
  return element(
    "small",
    { class: "map-said" },
    limits.join(", "),
    ...(by
      ? [
          limits.length > 0 ? ", says " : "says ",
          element("a", { href: href(by.address) }, by.kind === "record" ? by.id : by.label),
        ]
      : []),
  );
}
