/**
 * An opening is gauged with two drill shanks: one must go in, the next must not.
 *
 *   From limits to drills: the one that must go is the smallest that is not below the lower limit, the one that must not is the
 *   largest that is not above the upper limit. So whatever passes lies within the limits.
 *   From drills to a window: the opening is at least as wide as the drill that goes and narrower than the one that does not.
 *
 * An opening just as wide as a drill lets it in.
 */
import { DRILLS, type Drill } from "../drills.ts";
import { num } from "./num.ts";
import type { Solved, Sum } from "./sum.ts";

const SERIES = ["inch sizes", "number drills", "metric", "any"] as const;
const WIDTH = { steps: { in: 0.0001 }, digits: 3, words: "to 0.0001 in" } as const;

export const gaugeDrill: Sum = {
  id: "gauge-drill",
  name: "Drills as gauges",
  about: "When an opening is checked with drill shanks, and its limits or the drills have changed.",
  inputs: [
    { id: "low", label: "lower limit of the opening", letter: "a", unit: "in", above: 0, atMost: 2 },
    { id: "high", label: "upper limit of the opening", letter: "b", unit: "in", above: 0, atMost: 2 },
    {
      id: "goes",
      label: "drill that goes in",
      letter: "g",
      unit: "in",
      above: 0,
      atMost: 2,
      drill: true,
      help: "No. 55, E, 1/16 or 1.5 mm.",
    },
    { id: "stays", label: "drill that does not", letter: "s", unit: "in", above: 0, atMost: 2, drill: true },
    {
      id: "series",
      label: "drills at hand",
      letter: "",
      unit: "",
      choices: SERIES,
      default: "inch sizes",
      help: "Inch sizes: number, letter and fraction drills.",
    },
  ],
  ways: [
    {
      what: "the limits or the drills",
      ways: [
        ["low", "high"],
        ["goes", "stays"],
      ],
      several: true,
    },
  ],
  goesWith: [
    { given: ["low", "high"], needs: ["low", "high"] },
    { given: ["goes", "stays"], needs: ["goes", "stays"] },
  ],
  results: [
    { id: "goesDrill", label: "drill that must go in", unit: "", round: { digits: 4, words: "" } },
    { id: "staysDrill", label: "drill that must not", unit: "", round: { digits: 4, words: "" } },
    { id: "goesSize", label: "size of the drill that goes", unit: "in", unitOf: ["low", "goes"], round: WIDTH },
    { id: "staysSize", label: "size of the drill that does not", unit: "in", unitOf: ["low", "goes"], round: WIDTH },
    { id: "says", label: "so", unit: "", round: { digits: 1, words: "" } },
  ],
  formula: "g ≤ opening < s",
  notes: [
    "Number drills run backwards: the larger number is the smaller drill.",
    "Two shanks give a window, not a value.",
    "Gauge with the plain shank; a worn or chucked drill is smaller than its number.",
  ],
  caution: "Use the shank, not the point, and never turn the drill in the opening.",
  source: "Drill sizes: ASME B94.11M, from memory; the rule is common practice, no source.",
  example: {
    inputs: { goes: "1/16 in", stays: "5/64 in" },
    results: { goesSize: "0.0625", staysSize: "0.0781" },
    source: "made up from the rule: 1/16 = 0.0625 in and 5/64 = 0.078125 in",
  },
  solve: ({ low, high, goes, stays, series = 0 }): Solved | { impossible: string } => {
    if (goes !== undefined && stays !== undefined) {
      if (goes >= stays)
        return {
          impossible: `The drill that goes (${num(goes)} in) is not smaller than the one that does not (${num(stays)} in): the other way round?`,
        };
      const says = `the opening is at least ${num(goes)} in and below ${num(stays)} in`;
      const within =
        low === undefined || high === undefined
          ? ""
          : goes >= low && stays <= high
            ? ", all within the limits"
            : stays <= low || goes > high
              ? ", outside the limits"
              : ", which may lie within the limits or not";
      return {
        results: { goesSize: goes, staysSize: stays },
        words: { ...named("goesDrill", goes), ...named("staysDrill", stays), says: says + within },
        steps: [`${num(goes)} ≤ opening < ${num(stays)} in`],
      };
    }
    if (low === undefined || high === undefined || low >= high)
      return { impossible: `The lower limit (${num(low ?? 0)} in) is not below the upper one (${num(high ?? 0)} in).` };
    const at = DRILLS.filter((drill) => isOf(SERIES[series] ?? "any", drill));
    const first = at.filter((drill) => sizeOf(drill) >= low).sort(bySize)[0];
    const last = at
      .filter((drill) => sizeOf(drill) <= high)
      .sort(bySize)
      .at(-1);
    if (!first || !last || sizeOf(first) >= sizeOf(last))
      return { impossible: `No two of these drills (${SERIES[series]}) lie between ${num(low)} and ${num(high)} in.` };
    return {
      results: { goesSize: sizeOf(first), staysSize: sizeOf(last) },
      words: {
        goesDrill: first.name,
        staysDrill: last.name,
        says: `${first.name} must go in, ${last.name} must not`,
      },
      steps: [
        `smallest drill from ${num(low)} in on: ${first.name}, ${num(sizeOf(first))} in`,
        `largest drill up to ${num(high)} in: ${last.name}, ${num(sizeOf(last))} in`,
      ],
    };
  },
};

function sizeOf(drill: Drill): number {
  return drill.inches.valueOf();
}

function bySize(a: Drill, b: Drill): number {
  return sizeOf(a) - sizeOf(b);
}

function isOf(series: (typeof SERIES)[number], { kind }: Drill): boolean {
  if (series === "any") return true;
  if (series === "inch sizes") return kind !== "metric";
  return series === "metric" ? kind === "metric" : kind === "number";
}

function named(id: string, inches: number): Record<string, string> {
  const drill = DRILLS.find((it) => Math.abs(sizeOf(it) - inches) < 1e-9);
  return drill ? { [id]: drill.name } : {};
}
