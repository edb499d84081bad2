/** Signs that word processors and web pages put in place of plain ones, and that look like these. */

interface LookAlike {
  readonly signs: string;
  readonly name: string;
  /** The plain sign that it looks like. */
  readonly plain: string;
  /** It leaves no ink, so to show it would show nothing. */
  readonly blank?: boolean;
}

const LOOK_ALIKES: readonly LookAlike[] = [
  { signs: "\u00A0\u2007\u202F", name: "a no-break space", plain: " ", blank: true },
  { signs: "\u2002\u2003\u2009\u200A\u3000", name: "a wide or narrow space", plain: " ", blank: true },
  { signs: "\u00AD\u200B\u200C\u200D\u2060\uFEFF", name: "an invisible sign", plain: "", blank: true },
  { signs: "\u2010\u2011", name: "a non-breaking hyphen", plain: "-" },
  { signs: "\u2012\u2013", name: "an en dash", plain: "-" },
  { signs: "\u2014\u2015", name: "an em dash", plain: "-" },
  { signs: "\u2212", name: "a minus sign", plain: "-" },
  { signs: "“”„‟″", name: "a curly quote", plain: '"' },
  { signs: "‘’‚‛′", name: "a curly apostrophe", plain: "'" },
];

const BY_SIGN = new Map(LOOK_ALIKES.flatMap((one) => [...one.signs].map((sign) => [sign, one] as const)));

/** The first sign in the text that only looks like a plain one. */
export function firstLookAlike(text: string): { readonly sign: string; readonly at: number } | undefined {
  let at = 0;
  for (const sign of text) {
    if (BY_SIGN.has(sign)) return { sign, at };
    at += sign.length;
  }
  return undefined;
}

/** In words, and shown where there is something to see: "'–' (an en dash)", 'a space'. */
export function nameOfSign(sign: string): string {
  if (sign === " ") return "a space";
  if (sign === "\t") return "a tab";
  const known = BY_SIGN.get(sign);
  if (known) return known.blank ? known.name : `'${sign}' (${known.name})`;
  return `'${sign}'`;
}

/** The text with plain signs in place of those that only look like them. */
export function withPlainSigns(text: string): string {
  return [...text].map((sign) => BY_SIGN.get(sign)?.plain ?? sign).join("");
}
