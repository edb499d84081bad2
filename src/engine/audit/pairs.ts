/** Every two of a list, the earlier one first. */
export function* pairs<T>(list: readonly T[]): Generator<readonly [T, T]> {
  for (const [at, one] of list.entries()) for (const other of list.slice(at + 1)) yield [one, other];
}
