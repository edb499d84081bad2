/** What of a document is read for citations: everything else is blanked out, so that every place keeps its line and column. */

const HTML = /\.x?html?$/i;
/** Programs, styles and comments of a page are not what its readers see. */
const NOT_READ = /<!--[\s\S]*?(?:-->|$)|<(script|style)\b[^>]*>[\s\S]*?(?:<\/\1\s*>|$)/gi;

export function readableText(name: string, text: string): string {
  return HTML.test(name) ? text.replaceAll(NOT_READ, blank) : text;
}

/** Blanks, one for each sign; lines stay. */
export function blank(text: string): string {
  return text.replaceAll(/[^\r\n]/g, " ");
}
