/** The box in which a person looks for a node: suggestions while typing, arrows and Enter choose, Escape closes. */
import { element } from "./element.ts";
import { findNodes } from "./find-nodes.ts";
import { KINDS } from "./kinds.ts";
import type { MapGraph, MapNode } from "./map-graph.ts";
import { kindSign } from "./signs.ts";

const MOST = 12;

export function findBox(
  { input, list, graph }: { input: HTMLInputElement; list: HTMLElement; graph: MapGraph },
  { onPick, say }: { onPick: (key: string) => void; say: (text: string) => void },
): void {
  let found: MapNode[] = [];
  let active = -1;

  function show(): void {
    found = findNodes(graph, input.value, MOST);
    active = -1;
    list.replaceChildren(...found.map(option));
    open(found.length > 0);
    if (input.value.trim() !== "")
      say(found.length === 0 ? `Nothing found for ${input.value.trim()}.` : `${found.length} found.`);
  }

  function option(node: MapNode, i: number): HTMLElement {
    return element(
      "li",
      {
        id: `map-found-${i}`,
        role: "option",
        "aria-selected": "false",
        // The box keeps the keyboard while the pointer chooses.
        onpointerdown: (event) => event.preventDefault(),
        onclick: () => pick(node),
      },
      kindSign(node.kind),
      element("span", {}, node.label),
      element("small", {}, KINDS[node.kind].one),
    );
  }

  function open(yes: boolean): void {
    list.hidden = !yes;
    input.setAttribute("aria-expanded", String(yes));
    if (!yes) input.removeAttribute("aria-activedescendant");
  }

  function mark(next: number): void {
    active = (next + found.length) % found.length;
    for (const [i, item] of [...list.children].entries()) item.setAttribute("aria-selected", String(i === active));
    input.setAttribute("aria-activedescendant", `map-found-${active}`);
    list.children[active]?.scrollIntoView({ block: "nearest" });
  }

  function pick(node: MapNode): void {
    input.value = "";
    open(false);
    onPick(node.key);
  }

  input.addEventListener("input", show);
  input.addEventListener("focus", () => {
    if (input.value !== "") show();
  });
  input.addEventListener("blur", () => open(false));
  input.addEventListener("keydown", (event) => {
    if (event.key === "Escape" && !list.hidden) {
      event.preventDefault();
      open(false);
    } else if ((event.key === "ArrowDown" || event.key === "ArrowUp") && found.length > 0) {
      event.preventDefault();
      if (list.hidden) open(true);
      mark(event.key === "ArrowDown" ? active + 1 : active < 0 ? -1 : active - 1);
    } else if (event.key === "Enter") {
      event.preventDefault();
      const chosen = found[Math.max(active, 0)];
      if (chosen && input.value !== "") pick(chosen);
    }
  });
}
