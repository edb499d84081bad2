/** Displacement = 0.785398 x bore x bore x stroke x cylinders. */
import { num } from "./num.ts";
import type { Sum } from "./sum.ts";

export const CC_IN_A_CUBIC_INCH = 16.387064;

export const displacement: Sum = {
  id: "displacement",
  name: "Displacement",
  about: "When an engine is told by its size, or its compression ratio is worked out.",
  inputs: [
    { id: "bore", label: "bore", letter: "B", unit: "in", above: 0, atMost: 100 },
    { id: "stroke", label: "stroke", letter: "S", unit: "in", above: 0, atMost: 100 },
    {
      id: "cylinders",
      label: "cylinders",
      letter: "z",
      unit: "cylinders",
      counted: ["cylinders", "cylinder", "cyl"],
      whole: true,
      atLeast: 1,
      atMost: 64,
    },
  ],
  results: [
    { id: "total", label: "displacement", unit: "cu in", round: { digits: 4, words: "to four digits" } },
    { id: "totalMetric", label: "displacement", unit: "cc", round: { digits: 4, words: "to four digits" } },
    { id: "each", label: "swept volume of one cylinder", unit: "cc", round: { digits: 4, words: "to four digits" } },
  ],
  formula: "V = 0.785398 x B x B x S x z",
  notes: ["1 cu in = 16.387064 cc, exact.", "A handbook that takes 3.14 for pi comes out 0.05 per cent smaller."],
  source: "Volume of a cylinder; worked example in the US Navy training manual NAVEDTRA 14264.",
  example: {
    inputs: { bore: "3 1/2 in", stroke: "4 in", cylinders: "8" },
    results: { total: "307.9" },
    source: "US Navy training manual NAVEDTRA 14264: 3-1/2 by 4 in, eight cylinders; it prints 307.44 with pi as 3.14",
  },
  solve: ({ bore = 0, stroke = 0, cylinders = 0 }) => {
    const one = (Math.PI / 4) * bore * bore * stroke;
    const total = one * cylinders;
    return {
      results: { total, totalMetric: total * CC_IN_A_CUBIC_INCH, each: one * CC_IN_A_CUBIC_INCH },
      steps: [`V = 0.785398 x ${num(bore)} x ${num(bore)} x ${num(stroke)} x ${num(cylinders)} = ${num(total)} cu in`],
    };
  },
};
