/** What the text search may narrow by, and the order of lists without words. Read by the index from attributes; nothing of it is text of the page. */
import { type Html, html } from "./html.ts";

export interface SearchTags {
  readonly type: "record" | "part" | "component" | "bulletin";
  readonly system?: readonly string[];
  readonly component?: readonly string[];
  readonly line?: readonly string[];
  readonly year?: readonly string[];
  readonly kind?: readonly string[];
  /** Nine digits, smallest first. */
  readonly rank: string;
}

export function searchTags({ rank, ...filters }: SearchTags): Html {
  return html`<div hidden data-pagefind-ignore="index">${Object.entries(filters).map(([name, values]) =>
    [values].flat().map((value) => html`<i data-pagefind-filter="${name}[data-of]" data-of="${value}"></i>`),
  )}<i data-pagefind-sort="rank[data-of]" data-of="${rank}"></i></div>`;
}
