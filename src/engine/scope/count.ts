/** How many cars a set holds, counted over the traits that the data declares. Only for comparing sets: large counts are rounded. */
import { ALL, type CarSet, isBranch, NONE } from "./diagram.ts";
import type { Space } from "./space.ts";
import { span } from "./trait.ts";

export function count(space: Space, set: CarSet): number {
  const sizes = space.declared.map((trait) => span(trait)[1] - span(trait)[0] + 1);
  const below = new Map<number, number>();
  /** Cars of `at`, counted over the traits from `from` on. */
  const walk = (at: CarSet, from: number): number => {
    const until = Math.min(at.trait, sizes.length);
    const skipped = sizes.slice(from, until).reduce((product, size) => product * size, 1);
    if (at === NONE) return 0;
    if (at === ALL || !isBranch(at)) return skipped;
    let own = below.get(at.id);
    if (own === undefined) {
      const counted = at.trait < sizes.length;
      own = space.sets.pieces(at).reduce((sum, [values, next]) => {
        const size = values.reduce((total, [a, b]) => total + b - a + 1, 0);
        // "Fitted today" traits are not counted: a set that asks for one counts as far as either value goes.
        return counted ? sum + size * walk(next, at.trait + 1) : Math.max(sum, walk(next, at.trait + 1));
      }, 0);
      below.set(at.id, own);
    }
    return skipped * own;
  };
  return walk(set, 0);
}
