/**
 * End play = width of the groove (or case) - width of the part - washers. Smallest play: smallest groove less the thickest
 * parts; largest: the other way round. Where a piece is changed, both limits move by the difference, once for each piece.
 * Below zero it binds.
 * A shim brings every play into the wanted window when it is at least (largest play - largest wanted) and at most
 * (smallest play - smallest wanted) thick; below zero so much is to be taken out.
 */
import { num } from "./num.ts";
import type { Solved, Sum } from "./sum.ts";

const PLAY = { steps: { in: 0.001, mm: 0.01 }, digits: 1, words: "to 0.001 in or 0.01 mm" } as const;
const DOWN = { ...PLAY, side: "down", words: "down to 0.001 in or 0.01 mm" } as const;
const UP = { ...PLAY, side: "up", words: "up to 0.001 in or 0.01 mm" } as const;
/** Whoever keeps to the rounded limits gets a play that is wanted. */
const SHIM = { unit: "in", unitOf: ["play", "groove"], between: ["shimLeast", "shimMost"] } as const;
const size = { unit: "in", window: true, above: 0, atMost: 200 } as const;
/** Sizes are added as people write them: 0.1 + 0.2 is 0.3. */
const clean = (value: number): number => Number(value.toFixed(12)) + 0;

export const endPlay: Sum = {
  id: "end-play",
  name: "End play, washers and shims",
  about:
    "When a thrust plate, washer or gear of another thickness goes in, or a measured play has to be brought into its limits.",
  inputs: [
    {
      id: "play",
      label: "play now, measured or on record",
      letter: "x",
      unit: "in",
      window: true,
      atLeast: -10,
      atMost: 100,
      help: "One value, or a window: 0.002..0.006 in.",
    },
    { id: "groove", label: "or width of the groove or case", letter: "G", ...size },
    { id: "part", label: "width of the part in it", letter: "P", ...size },
    {
      id: "washers",
      label: "number of washers",
      letter: "m",
      unit: "washers",
      counted: ["washers", "washer"],
      whole: true,
      atLeast: 0,
      atMost: 100,
      optional: true,
      help: "Needed with the thickness of one.",
    },
    { id: "washer", label: "thickness of one washer", letter: "w", ...size, optional: true },
    { id: "was", label: "thickness of the piece that comes out", letter: "a", ...size, optional: true },
    { id: "becomes", label: "thickness of the piece that goes in", letter: "b", ...size, optional: true },
    {
      id: "pieces",
      label: "how many such pieces",
      letter: "j",
      unit: "pieces",
      counted: ["pieces", "washers", "shims", "piece"],
      whole: true,
      atLeast: 1,
      atMost: 100,
      default: "1",
    },
    {
      id: "wanted",
      label: "play wanted",
      letter: "y",
      unit: "in",
      window: true,
      atLeast: 0,
      atMost: 100,
      optional: true,
    },
  ],
  ways: [{ what: "the play now", ways: [["play"], ["groove", "part"]] }],
  goesWith: [
    { given: ["was", "becomes"], needs: ["was", "becomes"] },
    { given: ["washer"], needs: ["groove", "part", "washers"] },
  ],
  results: [
    { id: "least", label: "smallest play", unit: "in", unitOf: ["play", "groove"], round: DOWN },
    { id: "most", label: "largest play", unit: "in", unitOf: ["play", "groove"], round: UP },
    {
      id: "newLeast",
      label: "smallest play with the other piece",
      unit: "in",
      unitOf: ["play", "groove"],
      round: DOWN,
    },
    { id: "newMost", label: "largest play with the other piece", unit: "in", unitOf: ["play", "groove"], round: UP },
    { id: "says", label: "so", unit: "", round: { digits: 1, words: "" } },
    { id: "shimLeast", label: "add at least (below 0: take out)", ...SHIM, round: UP },
    { id: "shimMost", label: "add at most (below 0: take out)", ...SHIM, round: DOWN },
    { id: "shimMiddle", label: "best, for the middle of the window", ...SHIM, round: PLAY },
  ],
  formula:
    "play = G - P - m x w;   new play = play - j x (b - a);   shim between (largest play - largest wanted) and (smallest play - smallest wanted)",
  notes: [
    "The smallest play comes from the smallest groove and the thickest parts.",
    "A play below zero means that it binds: it will not turn, or seizes when hot.",
    "0.001 in is as near as a feeler or a dial tells.",
  ],
  caution: "Never run a part that binds to let it bed in.",
  source: "Adding up sizes; common practice, no source.",
  example: {
    inputs: { groove: "0.184..0.186 in", part: "0.180 in" },
    results: { least: "0.004", most: "0.006" },
    source: "made up from the rule: 0.184 - 0.180 and 0.186 - 0.180",
  },
  solve: (values): Solved | { impossible: string } => {
    const { playLow, playHigh, washers = 0, pieces = 1 } = values;
    const get = (id: string): number => values[id] ?? 0;
    if (washers > 0 && playLow === undefined && values.washerLow === undefined)
      return { impossible: "There are washers, but their thickness is not given." };
    if (washers === 0 && values.washerLow !== undefined)
      return { impossible: "The thickness of a washer is given, but the number of washers is 0." };
    const least = clean(playLow ?? get("grooveLow") - get("partHigh") - washers * get("washerHigh"));
    const most = clean(playHigh ?? get("grooveHigh") - get("partLow") - washers * get("washerLow"));
    const results: Record<string, number> = { least, most };
    const steps: string[] = [];
    if (playLow === undefined) {
      const sides = [
        ["smallest", "grooveLow", "partHigh", "washerHigh", least],
        ["largest", "grooveHigh", "partLow", "washerLow", most],
      ] as const;
      for (const [which, groove, part, washer, play] of sides)
        steps.push(
          `${which} play = ${num(get(groove))} - ${num(get(part))}${washers > 0 ? ` - ${washers} x ${num(get(washer))}` : ""} = ${num(play)} in`,
        );
    }
    let [low, high] = [least, most];
    if (values.wasLow !== undefined) {
      low = clean(least - pieces * (get("becomesHigh") - get("wasLow")));
      high = clean(most - pieces * (get("becomesLow") - get("wasHigh")));
      Object.assign(results, { newLeast: low, newMost: high });
      steps.push(
        `new smallest play = ${num(least)} - ${pieces} x (${num(get("becomesHigh"))} - ${num(get("wasLow"))}) = ${num(low)} in`,
        `new largest play = ${num(most)} - ${pieces} x (${num(get("becomesLow"))} - ${num(get("wasHigh"))}) = ${num(high)} in`,
      );
    }
    let says = sayPlay(low, high);
    if (values.wantedLow !== undefined) {
      const [from, to] = [values.wantedLow, get("wantedHigh")];
      const shimLeast = clean(high - to);
      const shimMost = clean(low - from);
      if (low >= from && high <= to) says = "the play is within what is wanted";
      else if (shimLeast > shimMost)
        says = "no one thickness of shim is right for every play between these limits: measure this one";
      else says += ", and outside what is wanted";
      if (shimLeast <= shimMost)
        Object.assign(results, { shimLeast, shimMost, shimMiddle: clean((shimLeast + shimMost) / 2) });
      steps.push(
        `shim at least ${num(high)} - ${num(to)} = ${num(shimLeast)} in, at most ${num(low)} - ${num(from)} = ${num(shimMost)} in`,
      );
    }
    return { results, words: { says }, steps };
  },
};

function sayPlay(low: number, high: number): string {
  if (high < 0) return "it binds";
  if (low < 0) return "it may bind";
  return low === 0 ? "there may be no play at all" : "it has play";
}
