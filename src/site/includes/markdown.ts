/** Markdown of stories and bulletins. HTML in it is shown as text, and nothing is loaded from elsewhere: pictures become their text. */
import MarkdownIt from "markdown-it";
import { address } from "../../engine/graph/node.ts";
import type { Catalog } from "../../engine/records/catalog.ts";
import { renderCitations } from "../../engine/records/citations.ts";
import { type Html, raw } from "./html.ts";
import type { Page } from "./page.ts";

const markdown = new MarkdownIt({ html: false, linkify: false, typographer: false }).disable("image");

export function renderMarkdown(text: string): Html {
  return raw(shiftHeadings(markdown.render(text)));
}

/** A bulletin's text: every citation is a link with the title of what it cites. */
export function renderCited(page: Page, text: string): Html {
  const { catalog } = page.site;
  const linked = renderCitations(text, ({ id, words }) => {
    const target = cited(catalog, id);
    return `[${escapeMarkdown(words ?? `${id} ${target.title}`)}](${page.href(target.address)})`;
  });
  return renderMarkdown(linked);
}

function cited(catalog: Catalog, id: string): { title: string; address: string } {
  const record = catalog.records.get(id);
  if (record) return { title: record.facts.title, address: address("record", id) };
  const part = catalog.parts.get(id);
  if (part) return { title: part.name, address: address("part", id) };
  return { title: catalog.components.get(id)?.name ?? "", address: address("component", id) };
}

function escapeMarkdown(text: string): string {
  return text.replaceAll(/[\\[\]*_`<>]/g, "\\$&");
}

/** The page has the one first-level heading; those of a text begin one below it. */
function shiftHeadings(rendered: string): string {
  return rendered.replaceAll(
    /<(\/?)h([1-5])>/g,
    (_, slash: string, level: string) => `<${slash}h${Number(level) + 1}>`,
  );
}
