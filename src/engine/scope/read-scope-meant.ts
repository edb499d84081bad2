/**
 * What was most likely meant by a piece of a scope that cannot be read: the same in the right writing, and what is wrong with it.
 *
 *   signs     ≥ ≤ ≠ => =< == : become >= <= != =, quotes are taken off
 *   ranges    1972–1974, 1972..1974, 1972 to 1974 become 1972-1974, and 1974+ becomes >=1974
 *   joiners   between clauses 'and', '&', ',' or nothing become ';', 'or' and '|' become '||'; between values they become ','
 *   years     of two digits are written in full
 *
 * Whoever calls it says whether the result can be read: what cannot is no help.
 */
export interface Meant {
  readonly text: string;
  /** Nothing where what is said of the piece already is enough. */
  readonly message?: string;
}

export interface ScopeWords {
  /** What may stand before a sign: ids and labels of traits, and the words of the language. */
  readonly names: readonly string[];
  /** Those of them that mean the model year. */
  readonly years: readonly string[];
  /** A year in full, where its last two digits leave no doubt. */
  readonly fullYear: (twoDigits: string) => number | undefined;
}

export function meantBy(piece: string, words: ScopeWords, isRead: (text: string) => boolean): Meant | undefined {
  let text = piece;
  let message: string | undefined;
  let isJoined = false;
  for (const [pattern, by, said] of rewritings(words.names)) {
    // A scope is 2,000 letters at most, and nobody slips more often than this.
    for (let i = 0, sign = pattern.exec(text); sign && i < MOST; i++, sign = pattern.exec(text)) {
      message ??= said.replace("{}", sign[0].trim());
      isJoined ||= by.includes(";") || by.includes("||");
      text = text.replace(pattern, by);
    }
  }
  text = withFullYears(text, words);
  // Clauses that are told apart help even where a value in one of them is wrong as well.
  if (text === piece || !(isJoined || isRead(text))) return undefined;
  return message === undefined ? { text } : { text, message };
}

const MOST = 20;
const SIGN = "\\s*(?:!=|[<>]=?|=)";

/** In this order: what a later one looks for may only stand there after an earlier one. */
function rewritings(names: readonly string[]): [pattern: RegExp, by: string, said: string][] {
  const clause = `\\b(?:${anyOf(names)})${SIGN}`;
  // The first words of a name are no value before the rest of it: "model" of "model year".
  const begun = names.flatMap((name) => name.split(" ").map((_, i, all) => all.slice(0, i).join(" "))).filter(Boolean);
  const notBegun = begun.length > 0 ? `(?<!\\b(?:${anyOf([...new Set(begun)])}))` : "";
  const rows: [pattern: string, by: string, said: string][] = [
    ["≥|=>", ">=", "'{}' is not read here, '>=' is"],
    ["≤|=<", "<=", "'{}' is not read here, '<=' is"],
    ["≠|<>", "!=", "'{}' is not read here, '!=' is"],
    ["==+", "=", "'{}' is not read here, '=' is"],
    [`(?<=\\b(?:${anyOf(names)}))\\s*:\\s*`, "=", "'{}' is not read here, '=' is"],
    ["[“”„\"'‘’]", "", "no quotes are read here"],
    ["(?<=\\w)\\s*(?:[\u2010-\u2015\u2212…]|\\.{2,}|\\bto\\b)\\s*(?=\\w)", "-", "'{}' makes no range, '-' does"],
    ["=\\s*(\\d+)(?:\\s*\\+|\\s+on(?:wards?)?\\b)", ">=$1", "'from a value on' is written with '>='"],
    [`\\s*(?:&+|\\band\\b)\\s*(?=${clause})`, "; ", "'{}' joins no clauses, ';' does"],
    [`\\s*(?:(?<!\\|)\\|(?!\\|)|\\bor\\b)\\s*(?=${clause})`, " || ", "'{}' separates no alternatives, '||' does"],
    [`\\s*,\\s*(?=${clause})`, "; ", "',' stands between values; clauses are joined by ';'"],
    [`(?<=[^\\s;|])${notBegun}\\s+(?=${clause})`, "; ", "clauses are joined by ';', and none stands between these"],
    // What a car has both of takes two clauses.
    [
      "\\b(eq|fitted)(\\s*=\\s*)([^\\s;,|=]+)\\s+(?:&+|and\\b)\\s*(?=\\w)",
      "$1$2$3; $1$2",
      "what a car has both of is written as two clauses",
    ],
    ["(?<=\\w)\\s*(?:/|&+|(?<!\\|)\\|(?!\\|)|\\bor\\b|\\band\\b)\\s*(?=\\w)", ",", "'{}' joins no values, ',' does"],
  ];
  return rows.map(([pattern, by, said]) => [new RegExp(pattern, "iu"), by, said]);
}

function withFullYears(text: string, { years, fullYear }: ScopeWords): string {
  if (years.length === 0) return text;
  const clause = new RegExp(`(\\b(?:${anyOf(years)})${SIGN})([\\d\\s,-]+)`, "giu");
  return text.replace(
    clause,
    (_, before: string, values: string) =>
      before + values.replace(/(?<!\d)\d\d(?!\d)/g, (two) => String(fullYear(two) ?? two)),
  );
}

/** Longer names first, so that none is taken for the end of another. */
function anyOf(names: readonly string[]): string {
  const longest = [...names].sort((a, b) => b.length - a.length);
  return longest.map((name) => name.replaceAll(/[$()*+.?[\\\]^{|}]/g, "\\$&")).join("|");
}
