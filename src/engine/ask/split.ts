/** A text as words, and a word as it is compared. */
/** Words of a question: runs of letters, digits and the signs that hold a word or number together, the sign before '74, and the point before .005. */
export function split(text: string): string[] {
  return (
    text
      .normalize("NFKD")
      .replaceAll(/\p{Mark}/gu, "")
      .replaceAll(/[‘’]/g, "'")
      .match(
        /(?:'(?=\p{Number})|(?<![\p{Letter}\p{Number}])\.(?=\p{Number}))?[\p{Letter}\p{Number}]+(?:[-./'–]'?[\p{Letter}\p{Number}]+)*/gu,
      ) ?? []
  );
}

/** A word as it is compared: lower case, without a possessive or plural s. */
export function fold(word: string): string {
  const lower = word.toLowerCase().replace(/'s$/, "");
  return lower.length > 3 && /[^su]s$/.test(lower) && !/\d/.test(lower)
    ? lower.replace(/(?<=ch|sh|x)es$|s$/, "")
    : lower;
}
