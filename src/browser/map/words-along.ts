/**
 * The words on a line, with an arrow from the node they are said of to the other. Words are always written from left to
 * right, so without it "must not stand in for" could be read from the wrong end.
 */
export function wordsAlong(words: string, from: { readonly x: number }, to: { readonly x: number }): string {
  return from.x <= to.x ? `${words} →` : `← ${words}`;
}
