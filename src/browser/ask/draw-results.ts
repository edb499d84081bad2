import type { Result } from "./open-search.ts";

const TYPE: Readonly<Record<string, string>> = {
  record: "Change record",
  part: "Part",
  component: "Component",
  bulletin: "Bulletin",
};

export function drawResults(list: HTMLElement, results: readonly Result[], root: URL): void {
  list.replaceChildren(...results.map((result) => entry(result, root)));
}

function entry(result: Result, root: URL): HTMLElement {
  const item = document.createElement("li");
  const link = document.createElement("a");
  link.href = new URL(result.url, root).href;
  link.textContent = result.title;
  const type = tag(TYPE[result.type] ?? result.type, "tag");
  const excerpt = document.createElement("p");
  excerpt.className = "who";
  excerpt.append(...marked(result.excerpt));
  item.append(link, " ", type);
  if (result.trap) item.append(tag("Trap", "tag trap"));
  item.append(excerpt);
  return item;
}

function tag(text: string, look: string): HTMLElement {
  const made = document.createElement("span");
  made.className = look;
  made.textContent = text;
  return made;
}

/** The search marks hits with <mark>; everything else in an excerpt is text, whatever it looks like. */
function marked(excerpt: string): Node[] {
  const parsed = new DOMParser().parseFromString(excerpt, "text/html").body;
  return [...parsed.childNodes].map((node) => {
    if (node.nodeName !== "MARK") return document.createTextNode(node.textContent ?? "");
    const mark = document.createElement("mark");
    mark.textContent = node.textContent;
    return mark;
  });
}
