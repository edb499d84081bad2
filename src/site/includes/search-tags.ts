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
  /** One line about the page, shown in a list of results where no words were searched for. */
  readonly about: string;
  readonly trap?: boolean;
}

export function searchTags({ rank, about, trap, ...filters }: SearchTags): Html {
  return html`<div hidden data-pagefind-ignore="index">${Object.entries(filters).map(([name, values]) =>
    [values].flat().map((value) => html`<i data-pagefind-filter="${name}[data-of]" data-of="${value}"></i>`),
  )}<i data-pagefind-sort="rank[data-of]" data-of="${rank}"></i><i data-pagefind-meta="about[data-of]" data-of="${about}"></i>${trap ? html`<i data-pagefind-meta="trap[data-of]" data-of="yes"></i>` : ""}</div>`;
}
