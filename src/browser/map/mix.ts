/** One colour faded into another: 0 leaves it, 1 is the other. Both and the result are #rrggbb. */
export function mix(colour: string, into: string, share: number): string {
  const [from, to] = [parts(colour), parts(into)];
  return `#${from.map((value, i) => hex(value + ((to[i] ?? 0) - value) * share)).join("")}`;
}

function parts(colour: string): number[] {
  return [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16));
}

function hex(value: number): string {
  return Math.round(value).toString(16).padStart(2, "0");
}
