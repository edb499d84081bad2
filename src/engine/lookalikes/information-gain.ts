/**
 * How much a look is expected to tell, in bits.
 *
 *   The uncertainty about which of some things it is, with weights w: H = -sum of (w / all) log2 (w / all). (Shannon's entropy.)
 *   The gain of a look is the uncertainty before it, less the uncertainty that each outcome leaves, counted as often as that
 *   outcome is to be expected.
 */

/** `before`: the weight of each thing. `outcomes`: for each outcome the weight of each thing with it, in the same order. */
export function informationGain(before: readonly number[], outcomes: readonly (readonly number[])[]): number {
  const all = sum(outcomes.map(sum));
  if (all === 0) return 0;
  return entropy(before) - sum(outcomes.map((weights) => (sum(weights) / all) * entropy(weights)));
}

export function entropy(weights: readonly number[]): number {
  const all = sum(weights);
  // A thing without weight adds nothing; its logarithm would be infinite.
  return sum(weights.filter((weight) => weight > 0).map((weight) => (weight / all) * Math.log2(all / weight)));
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
