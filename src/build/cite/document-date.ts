/** The day of a document, as far as it says one: in the facts in front of a Markdown file, or in the head of a page. */

const DAY = /(\d{4}-\d{2}-\d{2})/;
const FACTS = /^\uFEFF?---[ \t]*\r?\n([\s\S]*?)^---[ \t]*$/m;
const NAMED = /^(?:date|issued|published)[ \t]*:[ \t]*["']?(\d{4}-\d{2}-\d{2})/im;
const META =
  /<meta\b[^>]*\b(?:name|property)\s*=\s*["']?(?:date|dc\.date|dcterms\.(?:date|issued)|article:published_time)\b[^>]*>/i;

export function documentDate(text: string): string | undefined {
  const facts = FACTS.exec(text);
  if (facts?.index === 0) return NAMED.exec(facts[1] as string)?.[1];
  const meta = META.exec(text)?.[0];
  return meta === undefined ? undefined : DAY.exec(meta)?.[1];
}
