/** What of a document is read for citations, and where it stands there: findings name the place in the document as it is. */

const HTML = /\.x?html?$/i;
/** Programs, styles and comments of a page are not what its readers see. */
const NOT_READ = /<!--[\s\S]*?(?:-->|$)|<(script|style)\b[^>]*>[\s\S]*?(?:<\/\1\s*>|$)/gi;

/** What is not read is blanked out, so that every place keeps its line and column. */
export function readableText(name: string, text: string): string {
  return HTML.test(name) ? text.replaceAll(NOT_READ, blank) : text;
}

/** Blanks, one for each sign; lines stay. */
export function blank(text: string): string {
  return text.replaceAll(/[^\r\n]/g, " ");
}

/** A text as its readers see it, and from which signs of what is written each of its signs comes. */
export interface Seen {
  readonly text: string;
  /** The places in what is written of a stretch of the text that is not empty. */
  written(from: number, to: number): readonly [from: number, to: number];
}

/**
 * Writers and their programs write a sign of an id in other ways, and nobody sees a difference:
 *
 *   A&#45;1, A&#x2D;1, A&ndash;1         an entity is the sign that it stands for
 *   A\-1                                 Markdown takes the sign behind a backslash as it is
 *   A-<wbr>1, and signs without width    say where a line may be broken, and are nothing themselves
 */
export function seenText(written: string): Seen {
  const pieces: string[] = [];
  const starts: number[] = [];
  const ends: number[] = [];
  let last = 0;
  const keep = (to: number): void => {
    pieces.push(written.slice(last, to));
    for (let at = last; at < to; at++) {
      starts.push(at);
      ends.push(at + 1);
    }
  };
  for (const { 0: sign, index } of written.matchAll(WRITTEN_OTHERWISE)) {
    const seen = seenAs(sign);
    if (seen === undefined) continue;
    keep(index);
    last = index + sign.length;
    pieces.push(seen);
    if (seen === "") continue;
    starts.push(index);
    ends.push(last);
  }
  keep(written.length);
  return {
    text: pieces.join(""),
    written: (from, to) => [starts[from] as number, ends[to - 1] as number],
  };
}

const WRITTEN_OTHERWISE = /&(?:#\d{1,7}|#x[0-9a-f]{1,6}|[a-z]{2,20});|\\[-_.[\]]|<wbr\s*\/?>|[\u00AD\u200B\u2060]/gi;

const NAMED: Readonly<Record<string, string>> = {
  amp: "&",
  hyphen: "\u2010",
  dash: "\u2010",
  ndash: "\u2013",
  minus: "\u2212",
  period: ".",
  lowbar: "_",
  lbrack: "[",
  lsqb: "[",
  rbrack: "]",
  rsqb: "]",
  shy: "",
};

/** One sign, or none; nothing where it is to be read as it is written. */
function seenAs(sign: string): string | undefined {
  if (sign.startsWith("\\")) return sign[1];
  if (!sign.startsWith("&")) return "";
  const [, hex, figures, name] = /^&(?:#x([0-9a-f]+)|#(\d+)|([a-z]+));$/i.exec(sign) ?? [];
  if (name !== undefined) return NAMED[name.toLowerCase()];
  const code = hex === undefined ? Number(figures) : Number.parseInt(hex, 16);
  if ([0xad, 0x200b, 0x2060].includes(code)) return "";
  // Line ends keep their places, and what takes two units of a text is in no id.
  return code > 0x1f && code < 0xd800 ? String.fromCharCode(code) : undefined;
}
