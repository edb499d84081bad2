import { distance } from "fastest-levenshtein";

/**
 * The known name that a mistyped one most likely meant; nothing when none is near enough to be a slip.
 * About a third of the letters may be wrong, and one in a short name, but something of it must be right. In an id with digits in it
 * only one: numbers two digits apart are numbers of two things, and which of many is meant nobody knows.
 */
export function nearest(typed: string, known: readonly string[]): string | undefined {
  const wanted = typed.toLowerCase();
  const most = /^(?=.*\d)\S+$/.test(typed) ? 1 : Math.max(1, Math.round(typed.length / 3));
  let best: string | undefined;
  let fewest = most + 1;
  for (const name of known) {
    const slips = slipsBetween(wanted, name.toLowerCase());
    if (slips >= fewest || slips >= Math.max(typed.length, name.length)) continue;
    best = name;
    fewest = slips;
  }
  return best;
}

/** Letters left out, put in or mistaken; two neighbours the wrong way round are one slip. */
export function slipsBetween(typed: string, name: string): number {
  let i = 0;
  while (i < typed.length && typed[i] === name[i]) i++;
  const turned = typed.slice(0, i) + (typed[i + 1] ?? "") + (typed[i] ?? "") + typed.slice(i + 2);
  return typed !== name && turned === name ? 1 : distance(typed, name);
}
