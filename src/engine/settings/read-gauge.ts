/** Drills as people name them, and what two of them say about an opening. */
import { type Drill, drillCalled } from "./drills.ts";

export interface NamedDrill {
  /** What it is called: "42", "E". */
  readonly name: string;
  /** Nothing where there is none of that name. */
  readonly drill: Drill | undefined;
}

/** "No. 42 drill", "#42", "drill 42", "E drill", "letter E". Nothing where the text names no number or letter drill. */
export function readDrill(text: string): NamedDrill | undefined {
  const bare = withoutDrill(text);
  const isDrill = bare !== text;
  const [, sign = "", name] = /^(#|(?:no|nr|num|number|letter)\b\.?)?\s*#?\s*(\d{1,3}|[a-z])$/i.exec(bare) ?? [];
  if (name === undefined || (sign === "" && !isDrill)) return undefined;
  const isLetter = /[a-z]/i.test(name);
  if (sign !== "" && isLetter !== /letter/i.test(sign)) return undefined;
  return { name: name.toUpperCase(), drill: drillCalled(name) };
}

/** The text without the word "drill". */
export function withoutDrill(text: string): string {
  return text
    .replaceAll(/\b(?:drill bits?|drills?|shanks?)\b/gi, " ")
    .replaceAll(/\s+/g, " ")
    .trim();
}

const GOES = "(?:goes in|goes|go|fits|passes|enters)";
const NOT = String.raw`(?:does not|does n't|doesn't|doesnt|do not|don't|will not|won't|wont|can't|not|no[- ]go|no)(?: (?:go in|go|goes|fit|pass|enter)\b)?`;
const AND = String.raw`\s*[,;]?\s*(?:(?:and|but)\s+)?`;

/** "55 goes, 51 does not", "goes 55 not 51", "51 does not, 55 goes": what went in and what did not, as typed. */
export function readGoesNotGoes(text: string): { goes: string; stays: string } | undefined {
  const size = "([^,;]+?)";
  // which sentence, and which of its sizes went in
  const sentences: [pattern: string, goes: 1 | 2][] = [
    [`${size} ${GOES}${AND}${size} ${NOT}`, 1],
    [`${GOES} ${size}${AND}${NOT} ${size}`, 1],
    [`${size} ${GOES}${AND}${NOT} ${size}`, 1],
    [`${size} ${NOT}${AND}${size} ${GOES}`, 2],
  ];
  // The word "drill" may stand before either size or once for both.
  const plain = withoutDrill(text);
  for (const [pattern, goes] of sentences) {
    const [, first, second] = new RegExp(`^${pattern}$`, "i").exec(plain) ?? [];
    if (first !== undefined && second !== undefined)
      return goes === 1 ? { goes: first, stays: second } : { goes: second, stays: first };
  }
  return undefined;
}
