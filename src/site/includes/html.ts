/**
 * Markup is written as tagged templates: every value put into one is escaped, unless it is markup itself.
 * So a record that holds '<script>' shows just that.
 */
import { html as tagged, raw as trusted } from "hono/html";

/** A piece of finished markup. */
export type Html = ReturnType<typeof trusted>;

export function html(strings: TemplateStringsArray, ...values: unknown[]): Html {
  return tagged(strings, ...values) as Html;
}

/**
 * Finished markup as one text. V8 keeps a text that was put together as a tree of its pieces until something looks into
 * it; Eleventy keeps all pages until the last is written, and thousands of such trees are gigabytes.
 */
export function toText(markup: Html): string {
  return markup.toString().replace(/^/, "");
}

/** Markup that was made elsewhere and is known to be safe, such as rendered Markdown. */
export const raw = trusted;
