/** The table: the same nodes and relations as the map, for those who cannot see or point, and for machines that cannot draw. */
import { element } from "./element.ts";
import { KINDS } from "./kinds.ts";
import type { MapEdge, MapGraph } from "./map-graph.ts";
import { neighbourGroups } from "./neighbour-groups.ts";
import { neighbourList } from "./neighbour-list.ts";
import { kindSign } from "./signs.ts";
import { ROWS_OF_A_PAGE, type TableOrder, type TableRow, tableRows } from "./table-rows.ts";

export interface TableParts {
  readonly graph: MapGraph;
  readonly href: (address: string) => string;
  readonly onPick: (key: string) => void;
  readonly onPage: (page: number) => void;
}

export interface TableContent {
  readonly nodes: ReadonlySet<string>;
  readonly edges: ReadonlySet<MapEdge>;
  readonly focus: string | undefined;
  readonly page: number;
}

export interface Table {
  show(content: TableContent): void;
}

export function table(place: HTMLElement, parts: TableParts): Table {
  let order: TableOrder = "kind";
  let content: TableContent = { nodes: new Set(), edges: new Set(), focus: undefined, page: 1 };

  function draw(): void {
    const rows = tableRows(parts.graph, { ...content, order });
    const pages = Math.max(1, Math.ceil(rows.length / ROWS_OF_A_PAGE));
    const page = Math.min(content.page, pages);
    const first = (page - 1) * ROWS_OF_A_PAGE;
    const shown = rows.slice(first, first + ROWS_OF_A_PAGE);
    place.replaceChildren(
      element(
        "table",
        { class: "map-table" },
        element(
          "caption",
          {},
          rows.length === 0
            ? "No node passes the filters"
            : `${rows.length === 1 ? "1 node" : `${rows.length} nodes`}${pages > 1 ? `, ${first + 1} to ${first + shown.length}` : ""}`,
        ),
        element(
          "thead",
          {},
          element(
            "tr",
            {},
            head("Node", "name"),
            head("Kind", "kind", "map-wide"),
            element("th", { scope: "col", class: "map-wide" }, "Systems"),
            head("Relations", "relations"),
          ),
        ),
        element("tbody", {}, ...shown.flatMap(row)),
      ),
      ...(pages > 1 ? [turner(page, pages)] : []),
    );
  }

  function head(label: string, by: TableOrder, width?: string): HTMLElement {
    const sorted = by === "relations" ? "descending" : "ascending";
    return element(
      "th",
      { scope: "col", class: width, "aria-sort": order === by ? sorted : undefined },
      element(
        "button",
        {
          type: "button",
          class: "map-sort",
          onclick: () => {
            // A second press returns to the first order.
            order = order === by ? "kind" : by;
            draw();
            place.querySelector<HTMLElement>("th[aria-sort] button")?.focus();
          },
        },
        label,
      ),
    );
  }

  /** A node, and behind it an empty row that its relations unfold into. */
  function row({ node, systems, relations }: TableRow, i: number): HTMLElement[] {
    const { graph, href, onPick } = parts;
    const chosen = node.key === content.focus;
    const place = element("td", { colspan: 4 });
    const unfolded = element("tr", { id: `map-row-${i}`, class: "map-unfolded", hidden: true }, place);
    const unfold = element(
      "button",
      {
        type: "button",
        class: "map-unfold",
        "aria-expanded": "false",
        "aria-controls": unfolded.id,
        onclick: () => {
          unfolded.hidden = !unfolded.hidden;
          unfold.setAttribute("aria-expanded", String(!unfolded.hidden));
          // Made when they are asked for: fifty rows would have hundreds.
          if (place.childElementCount > 0) return;
          const groups = neighbourGroups(graph, node.key, (edge) => content.edges.has(edge));
          place.append(...neighbourList(groups, { href, onPick, heading: "h3" }));
        },
      },
      String(relations),
      element("span", { class: "map-unseen" }, ` relations of ${node.label}`),
    );
    const first = element(
      "tr",
      { class: chosen ? "map-chosen" : undefined },
      element(
        "th",
        { scope: "row" },
        element("a", { href: href(node.address) }, node.label),
        element(
          "span",
          { class: "map-kind map-narrow" },
          kindSign(node.kind),
          element("small", {}, [KINDS[node.kind].one, ...systems].join(" · ")),
        ),
        element(
          "button",
          { type: "button", class: "map-select", "aria-pressed": String(chosen), onclick: () => onPick(node.key) },
          chosen ? "selected" : "select",
          element("span", { class: "map-unseen" }, ` ${node.label}`),
        ),
      ),
      element(
        "td",
        { class: "map-wide" },
        element("span", { class: "map-kind" }, kindSign(node.kind), element("span", {}, KINDS[node.kind].one)),
      ),
      element("td", { class: "map-wide" }, systems.join(", ")),
      element("td", {}, relations === 0 ? "none" : unfold),
    );
    return [first, unfolded];
  }

  function turner(page: number, pages: number): HTMLElement {
    const turn = (label: string, to: number): HTMLElement =>
      element("button", { type: "button", disabled: to < 1 || to > pages, onclick: () => parts.onPage(to) }, label);
    return element(
      "nav",
      { class: "map-turner", "aria-label": "Pages of the table" },
      turn("Previous", page - 1),
      element("span", {}, `Page ${page} of ${pages}`),
      turn("Next", page + 1),
    );
  }

  return {
    show(next) {
      content = next;
      draw();
    },
  };
}
