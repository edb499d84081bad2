/** Of the turn of the distributor each cylinder has 360 / cylinders degrees; the points are closed for the dwell of them. */
import { num } from "./num.ts";
import type { Sum } from "./sum.ts";

export const dwellAngle: Sum = {
  id: "dwell-angle",
  name: "Dwell of the points",
  about: "When points are set by a meter that shows per cent, or the dwell was changed and the timing with it.",
  inputs: [
    {
      id: "cylinders",
      label: "cylinders (lobes of the cam)",
      letter: "z",
      unit: "cylinders",
      counted: ["cylinders", "cylinder", "cyl", "lobes"],
      whole: true,
      atLeast: 1,
      atMost: 16,
    },
    { id: "dwell", label: "dwell", letter: "w", unit: "deg", above: 0, atMost: 360 },
    { id: "newDwell", label: "dwell after setting", letter: "w2", unit: "deg", above: 0, atMost: 360, optional: true },
  ],
  results: [
    { id: "share", label: "degrees that one cylinder has", unit: "deg", round: { digits: 4, words: "to four digits" } },
    { id: "fraction", label: "dwell", unit: "per cent", round: { digits: 3, words: "to three digits" } },
    {
      id: "newFraction",
      label: "dwell after setting",
      unit: "per cent",
      round: { digits: 3, words: "to three digits" },
    },
    {
      id: "timing",
      label: "timing moves by about (above 0 is later)",
      unit: "crank degrees",
      round: { digits: 2, words: "to two digits" },
    },
  ],
  formula: "dwell in per cent = 100 x w / (360 / z)",
  notes: [
    "A larger gap is less dwell, a smaller gap more.",
    "More dwell fires later, about one degree of the crank for each degree of dwell: set the points first, then the timing (from memory, no source).",
  ],
  source: "The definition of dwell; the effect on the timing is common practice, from memory.",
  example: {
    inputs: { cylinders: "8", dwell: "30 deg" },
    results: { fraction: "66.7" },
    source: "the definition: 30 of 45 degrees",
  },
  solve: ({ cylinders = 0, dwell = 0, newDwell }) => {
    const share = 360 / cylinders;
    const worst = Math.max(dwell, newDwell ?? 0);
    if (worst >= share)
      return {
        impossible: `With ${cylinders} cylinders each has ${num(share)} degrees; points closed for ${num(worst)} would never open.`,
      };
    const percent = (it: number): number => (100 * it) / share;
    const steps = [`100 x ${num(dwell)} / (360 / ${cylinders}) = ${num(percent(dwell))} per cent`];
    if (newDwell === undefined) return { results: { share, fraction: percent(dwell) }, steps };
    steps.push(`100 x ${num(newDwell)} / (360 / ${cylinders}) = ${num(percent(newDwell))} per cent`);
    return {
      results: { share, fraction: percent(dwell), newFraction: percent(newDwell), timing: newDwell - dwell },
      steps,
    };
  },
};
