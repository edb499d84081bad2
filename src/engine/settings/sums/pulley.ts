/**
 * Speed of the driven pulley = speed of the driver x its diameter / diameter of the driven one.
 * For the same driven speed with another driven pulley the driver must turn at old speed x new diameter / old diameter.
 */
import { num } from "./num.ts";
import type { Sum } from "./sum.ts";

export const pulley: Sum = {
  id: "pulley",
  name: "Pulleys and test speed",
  about: "When an alternator, pump or compressor has another pulley, and its test asks for an engine speed.",
  inputs: [
    { id: "engine", label: "speed of the driving pulley (engine)", letter: "N", unit: "rpm", above: 0, atMost: 100000 },
    {
      id: "crank",
      label: "diameter of the driving pulley (crank)",
      letter: "D",
      unit: "in",
      above: 0,
      atMost: 200,
      optional: true,
    },
    { id: "driven", label: "diameter of the driven pulley", letter: "d", unit: "in", above: 0, atMost: 200 },
    {
      id: "newDriven",
      label: "diameter of the other driven pulley",
      letter: "d2",
      unit: "in",
      above: 0,
      atMost: 200,
      optional: true,
    },
  ],
  ways: [{ what: "what is compared with the driven pulley", ways: [["crank"], ["newDriven"]], several: true }],
  results: [
    {
      id: "drivenSpeed",
      label: "speed of the driven pulley",
      unit: "rpm",
      round: { digits: 4, words: "to four digits" },
    },
    {
      id: "ratio",
      label: "turns of the driven pulley to one of the driver",
      unit: "",
      round: { digits: 4, words: "to four digits" },
    },
    {
      id: "newDrivenSpeed",
      label: "speed of the other driven pulley at the same engine speed",
      unit: "rpm",
      round: { digits: 4, words: "to four digits" },
    },
    {
      id: "newEngineExact",
      label: "engine speed for the same driven speed, exactly",
      unit: "rpm",
      round: { digits: 5, words: "to five digits" },
    },
    {
      id: "newEngine",
      label: "test speed with the other pulley",
      unit: "rpm",
      round: { steps: { rpm: 50 }, digits: 1, words: "to 50 rpm" },
    },
  ],
  formula: "n = N x D / d;   N2 = N x d2 / d",
  notes: [
    "Pitch diameters, where the belt runs, are right; outside diameters are near enough for a test speed only when both are measured alike.",
    "A slipping belt turns the driven pulley slower than the sum says.",
  ],
  caution: "Measure with the engine stopped; keep hands, sleeves and hair away from a running belt.",
  source: "The rule of belt drives: speed x diameter is the same on both pulleys.",
  example: {
    inputs: { engine: "1460 rpm", crank: "80 mm", driven: "160 mm" },
    results: { drivenSpeed: "730" },
    source: "the rule: 1460 x 80 / 160 = 730",
  },
  solve: ({ engine = 0, crank, driven = 0, newDriven }) => {
    const results: Record<string, number> = {};
    const steps: string[] = [];
    if (crank !== undefined) {
      results.ratio = crank / driven;
      results.drivenSpeed = engine * results.ratio;
      steps.push(`n = ${num(engine)} x ${num(crank)} / ${num(driven)} = ${num(results.drivenSpeed)} rpm`);
      if (newDriven !== undefined) results.newDrivenSpeed = (engine * crank) / newDriven;
    }
    if (newDriven !== undefined) {
      results.newEngineExact = (engine * newDriven) / driven;
      results.newEngine = results.newEngineExact;
      steps.push(`N2 = ${num(engine)} x ${num(newDriven)} / ${num(driven)} = ${num(results.newEngine)} rpm`);
    }
    return { results, steps };
  },
};
