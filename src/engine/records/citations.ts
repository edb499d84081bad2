import type { Citation } from "./catalog.ts";

const CITATION = /\[\[([^\][|]+)(?:\|([^\][]+))?\]\]/g;

/** The citations of a bulletin's text: [[ID]] or [[ID|words]]. Positions are in the text. */
export function citations(text: string): Citation[] {
  return [...text.matchAll(CITATION)].map((match) => ({
    id: (match[1] as string).trim(),
    words: match[2]?.trim(),
    from: match.index,
    to: match.index + match[0].length,
  }));
}

/** The text with every citation replaced by what `render` makes of it. */
export function renderCitations(text: string, render: (citation: Citation) => string): string {
  let last = 0;
  let done = "";
  for (const citation of citations(text)) {
    done += text.slice(last, citation.from) + render(citation);
    last = citation.to;
  }
  return done + text.slice(last);
}
