/**
 * Teeth of the driven pinion = teeth of the drive gear x axle ratio x turns of the tyre in a mile / turns of the cable in a mile.
 * Axle ratio = ring teeth / pinion teeth. Turns in a mile = 63360 / (2 x pi x loaded radius), or 63360 / (pi x diameter).
 * Shown / true = teeth needed / teeth fitted: above one it reads fast.
 */
import { num, undusted } from "./num.ts";
import type { Sum } from "./sum.ts";

const INCHES_IN_A_MILE = 63360;

export const speedometer: Sum = {
  id: "speedometer",
  name: "Speedometer pinion",
  about: "When the axle or the tyres are changed, or the speedometer reads fast or slow.",
  inputs: [
    {
      id: "driveTeeth",
      label: "teeth of the drive gear in the transmission",
      letter: "g",
      unit: "teeth",
      counted: ["teeth"],
      whole: true,
      atLeast: 1,
      atMost: 200,
    },
    { id: "ratio", label: "axle ratio", letter: "i", unit: "", counted: [], above: 0, atMost: 50 },
    {
      id: "ringTeeth",
      label: "or teeth of the ring gear",
      letter: "r",
      unit: "teeth",
      counted: ["teeth"],
      whole: true,
      atLeast: 1,
      atMost: 500,
    },
    {
      id: "pinionTeeth",
      label: "and teeth of the axle pinion",
      letter: "p",
      unit: "teeth",
      counted: ["teeth"],
      whole: true,
      atLeast: 1,
      atMost: 500,
    },
    {
      id: "turns",
      label: "turns of the tyre in a mile",
      letter: "t",
      unit: "turns per mile",
      counted: ["turns", "turns per mile", "turns a mile", "per mile", "/mile", "rev/mile"],
      atLeast: 100,
      atMost: 5000,
    },
    {
      id: "radius",
      label: "or loaded radius, ground to the middle of the wheel",
      letter: "R",
      unit: "in",
      atLeast: 2,
      atMost: 100,
    },
    {
      id: "diameter",
      label: "or diameter of the free tyre",
      letter: "D",
      unit: "in",
      atLeast: 4,
      atMost: 200,
      help: "Gives 3 to 4 per cent too few turns: a tyre under load is flatter.",
    },
    {
      id: "fitted",
      label: "teeth of the driven pinion that is fitted",
      letter: "f",
      unit: "teeth",
      counted: ["teeth"],
      whole: true,
      atLeast: 1,
      atMost: 200,
      optional: true,
    },
    {
      id: "cable",
      label: "turns of the cable in a mile",
      letter: "c",
      unit: "turns per mile",
      counted: ["turns", "turns per mile", "per mile", "/mile"],
      atLeast: 100,
      atMost: 5000,
      default: "1000",
    },
  ],
  ways: [
    { what: "the axle ratio", ways: [["ratio"], ["ringTeeth", "pinionTeeth"]] },
    { what: "the tyre", ways: [["turns"], ["radius"], ["diameter"]] },
  ],
  results: [
    { id: "ratio", label: "axle ratio", unit: "", round: { digits: 4, words: "to four digits" } },
    {
      id: "turns",
      label: "turns of the tyre in a mile",
      unit: "turns per mile",
      round: { digits: 4, words: "to four digits" },
    },
    { id: "exact", label: "teeth needed, exactly", unit: "teeth", round: { digits: 4, words: "not to a whole tooth" } },
    {
      id: "teeth",
      label: "driven pinion to take",
      unit: "teeth",
      round: { steps: { teeth: 1 }, digits: 1, words: "to the nearest whole tooth" },
    },
    {
      id: "error",
      label: "error with that pinion (above 0 reads fast)",
      unit: "per cent",
      round: { digits: 2, words: "to two digits" },
    },
    {
      id: "fittedError",
      label: "error with the fitted pinion (above 0 reads fast)",
      unit: "per cent",
      round: { digits: 2, words: "to two digits" },
    },
    {
      id: "at60",
      label: "shown at a true 60 mph with the fitted pinion",
      unit: "mph",
      round: { digits: 3, words: "to three digits" },
    },
  ],
  formula:
    "teeth = g x i x t / c;   i = r / p;   t = 63360 / (2 x pi x R) or 63360 / (pi x D);   shown / true = teeth needed / teeth fitted",
  notes: [
    "Take the axle ratio from the teeth where they are known: the ratio on a tag is rounded.",
    "The diameter of a free tyre gives 3 to 4 per cent too few turns a mile; the loaded radius is nearer (from memory, no source).",
    "1,000 turns of the cable in a mile: SAE J678, from memory.",
  ],
  caution: "Block the wheels and support the car safely before anything is turned.",
  source:
    "63360 inches in a mile, exact; the gear train by its teeth; 1,000 cable turns in a mile from SAE J678, from memory.",
  example: {
    inputs: { driveTeeth: "8", ratio: "3.5", diameter: "26 in", fitted: "22" },
    results: { turns: "775.7", exact: "21.72", teeth: "22", fittedError: "-1.3" },
    source: "made up from the formula: 63360 / (pi x 26) = 775.7; 8 x 3.5 x 775.7 / 1000 = 21.72",
  },
  solve: ({ driveTeeth = 0, ringTeeth = 0, pinionTeeth = 1, radius, diameter = 0, fitted, cable = 0, ...given }) => {
    if (given.ratio === undefined && ringTeeth < pinionTeeth)
      return {
        impossible: `The ring gear (${num(ringTeeth)} teeth) has fewer teeth than the axle pinion (${num(pinionTeeth)}): the other way round?`,
      };
    if (given.ratio !== undefined && given.ratio < 1)
      return {
        impossible: `An axle ratio of ${num(given.ratio)} is below one, which no axle has: the pinion would have more teeth than the ring gear.`,
      };
    const ratio = given.ratio ?? ringTeeth / pinionTeeth;
    const turns = given.turns ?? INCHES_IN_A_MILE / (Math.PI * (radius === undefined ? diameter : 2 * radius));
    const steps: string[] = [];
    if (given.ratio === undefined) steps.push(`i = ${num(ringTeeth)} / ${num(pinionTeeth)} = ${num(ratio)}`);
    if (given.turns === undefined)
      steps.push(
        `t = 63360 / (${radius === undefined ? `pi x ${num(diameter)}` : `2 x pi x ${num(radius)}`}) = ${num(turns)} turns per mile`,
      );
    const exact = (driveTeeth * ratio * turns) / cable;
    const teeth = Math.round(undusted(exact));
    if (teeth < 1) return { impossible: `These figures ask for ${num(exact)} teeth, less than one.` };
    steps.push(
      `teeth = ${num(driveTeeth)} x ${num(ratio)} x ${num(turns)} / ${num(cable)} = ${num(exact)}, so ${teeth}`,
    );
    const results: Record<string, number> = { ratio, turns, exact, teeth, error: (exact / teeth - 1) * 100 };
    if (fitted !== undefined) {
      results.fittedError = (exact / fitted - 1) * 100;
      results.at60 = (60 * exact) / fitted;
      const reads = exact === fitted ? "reads true" : exact > fitted ? "reads fast" : "reads slow";
      steps.push(`shown / true = ${num(exact)} / ${num(fitted)} = ${num(exact / fitted)}: it ${reads}`);
    }
    return { results, steps };
  },
};
