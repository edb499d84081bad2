/** Numbers as they stand on paper. */

/** Six digits at most, no exponent, no zeros at the end. */
export function num(value: number): string {
  const size = Math.abs(value);
  if (size === 0) return "0";
  const places = Math.min(12, Math.max(0, 5 - Math.floor(Math.log10(size))));
  const text = value.toFixed(places);
  return text.includes(".") ? text.replace(/\.?0+$/, "") : text;
}

/** Without the dust that sums of binary fractions leave behind: 0.1 + 0.2 is 0.3. Twelve digits are kept, more than any tool has. */
export function undusted(value: number): number {
  return Number(value.toPrecision(12)) + 0;
}
