/**
 * The id that comes next, learnt from those that are there. Nothing about ids is laid down, so it is read off the neighbours:
 *
 *   an id is a head and a running number:            HY59-  01
 *   the head may say the model year of its record:   HY{yy}-
 *   the head in use is the one that most neighbours have; of heads equally common the one used last
 *   the number is one more than any that this head ever had, of the same width
 *
 * Neighbours of a record are those of its system; of a bulletin all bulletins.
 */
export interface Neighbour {
  readonly id: string;
  readonly year: number;
}

/** `used` are all ids that are or were in use: none of them is given out again. Nothing when there is nobody to learn from. */
export function nextId(neighbours: readonly Neighbour[], used: Iterable<string>, year: number): string | undefined {
  const heads = new Map<string, { count: number; width: number }>();
  for (const neighbour of neighbours) {
    const [head, number] = split(neighbour.id);
    if (number === "") continue;
    const pattern = withYear(head, neighbour.year);
    const before = heads.get(pattern);
    heads.delete(pattern);
    heads.set(pattern, { count: (before?.count ?? 0) + 1, width: number.length });
  }
  const most = Math.max(...[...heads.values()].map(({ count }) => count));
  const found = [...heads].findLast(([, { count }]) => count === most);
  if (!found) return undefined;
  const [pattern, { width }] = found;
  const head = pattern.replaceAll("{yyyy}", String(year)).replaceAll("{yy}", lastTwo(year));
  const numbers = [...used].map(split).flatMap(([other, number]) => (other === head && number ? [Number(number)] : []));
  return head + String(Math.max(0, ...numbers) + 1).padStart(width, "0");
}

function split(id: string): [head: string, number: string] {
  const number = /\d*$/.exec(id)?.[0] ?? "";
  return [id.slice(0, id.length - number.length), number];
}

/** The year in full, or else its last two digits where no other digit stands beside them. */
function withYear(head: string, year: number): string {
  if (head.includes(String(year))) return head.replace(String(year), "{yyyy}");
  return head.replace(new RegExp(`(?<!\\d)${lastTwo(year)}(?!\\d)`), "{yy}");
}

function lastTwo(year: number): string {
  return String(year % 100).padStart(2, "0");
}
