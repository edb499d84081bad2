/**
 * Pressure = pedal force x lever x booster / area of the master cylinder. Force at a wheel cylinder = pressure x its area.
 * Areas go with the square of the bores, so force at the wheel changes by (new / old) squared for a wheel cylinder and by
 * (old / new) squared for a master cylinder; travel changes the other way by the same factor.
 */
import { num } from "./num.ts";
import type { Sum } from "./sum.ts";

const bore = { unit: "in", above: 0, atMost: 50, optional: true } as const;

export const brakeHydraulics: Sum = {
  id: "brake-hydraulics",
  name: "Brake hydraulics",
  about:
    "When a wheel or master cylinder of another bore is on the car, and the brakes pull harder or softer than they should.",
  inputs: [
    { id: "force", label: "force on the pedal", letter: "F", unit: "lbf", above: 0, atMost: 5000, optional: true },
    {
      id: "lever",
      label: "lever of the pedal, so many to one",
      letter: "h",
      unit: "",
      counted: ["to 1", ": 1", ":1"],
      above: 0,
      atMost: 50,
      optional: true,
      help: "1 if the force was measured at the push rod.",
    },
    {
      id: "booster",
      label: "gain of the booster",
      letter: "b",
      unit: "",
      counted: ["times", "to 1", ": 1", ":1"],
      atLeast: 1,
      atMost: 50,
      default: "1",
      help: "1 without a booster.",
    },
    { id: "master", label: "bore of the master cylinder", letter: "M", ...bore },
    { id: "newMaster", label: "bore of the other master cylinder", letter: "M2", ...bore },
    { id: "wheel", label: "bore of the wheel cylinder", letter: "W", ...bore },
    { id: "newWheel", label: "bore of the other wheel cylinder", letter: "W2", ...bore },
  ],
  ways: [
    {
      what: "two things to compare",
      ways: [
        ["force", "lever", "master"],
        ["master", "wheel"],
        ["wheel", "newWheel"],
        ["master", "newMaster"],
      ],
      several: true,
    },
  ],
  goesWith: [
    { given: ["force", "lever"], needs: ["force", "lever", "master"] },
    { given: ["newMaster"], needs: ["master"] },
    { given: ["newWheel"], needs: ["wheel"] },
  ],
  results: [
    { id: "pressure", label: "pressure in the line", unit: "psi", round: { digits: 3, words: "to three digits" } },
    {
      id: "wheelForce",
      label: "force of the wheel cylinder's piston",
      unit: "lbf",
      unitOf: ["force"],
      round: { digits: 3, words: "to three digits" },
    },
    {
      id: "multiplied",
      label: "force at the wheel piston to force at the master piston",
      unit: "",
      round: { digits: 5, words: "to five digits" },
    },
    {
      id: "newForce",
      label: "force with the other cylinder, old = 1",
      unit: "",
      round: { digits: 4, words: "to four digits" },
    },
    {
      id: "change",
      label: "change of the force (below 0 is less)",
      unit: "per cent",
      round: { steps: { "per cent": 1 }, digits: 2, words: "to 1 per cent" },
    },
    {
      id: "newTravel",
      label: "travel with the other cylinder, old = 1",
      unit: "",
      round: { digits: 4, words: "to four digits" },
    },
  ],
  formula:
    "P = F x h x b / (0.785398 x M x M);   wheel force = P x 0.785398 x W x W;   new force / old force = (W2 / W)² x (M / M2)²;   travel the other way",
  notes: [
    "Force goes with the square of the bore: a small step in bore is a large one in braking.",
    "For travel: the master piston must move as much further as the pistons at the wheels got larger.",
    "Friction, springs and the seals' drag are left out.",
  ],
  caution:
    "A cylinder of another bore upsets the balance of front and rear brakes. This sum shows the error; it allows no exchange.",
  source: "Pascal's law.",
  example: {
    inputs: { force: "100 lbf", lever: "6", master: "0.875 in" },
    results: { pressure: "998" },
    source: "Pascal's law: 100 x 6 / (0.785398 x 0.875 x 0.875) = 997.8",
  },
  solve: ({ force, lever = 1, booster = 1, master, newMaster, wheel, newWheel }) => {
    const results: Record<string, number> = {};
    const steps: string[] = [];
    const area = (d: number): number => (Math.PI / 4) * d * d;
    if (force !== undefined && master !== undefined) {
      const pressure = (force * lever * booster) / area(master);
      results.pressure = pressure;
      steps.push(`P = ${num(force)} x ${num(lever)} x ${num(booster)} / ${num(area(master))} = ${num(pressure)} psi`);
      if (wheel !== undefined) {
        results.wheelForce = pressure * area(wheel);
        steps.push(`wheel force = ${num(pressure)} x ${num(area(wheel))} = ${num(results.wheelForce)} lbf`);
      }
    }
    if (master !== undefined && wheel !== undefined) {
      results.multiplied = (wheel / master) ** 2;
      steps.push(`(W / M)² = (${num(wheel)} / ${num(master)})² = ${num(results.multiplied)}`);
    }
    if (newWheel !== undefined || newMaster !== undefined) {
      const atWheel = newWheel === undefined || wheel === undefined ? 1 : (newWheel / wheel) ** 2;
      const atMaster = newMaster === undefined || master === undefined ? 1 : (master / newMaster) ** 2;
      results.newForce = atWheel * atMaster;
      results.change = (results.newForce - 1) * 100;
      results.newTravel = 1 / results.newForce;
      const factors = [
        ...(newWheel === undefined || wheel === undefined ? [] : [`(${num(newWheel)} / ${num(wheel)})²`]),
        ...(newMaster === undefined || master === undefined ? [] : [`(${num(master)} / ${num(newMaster)})²`]),
      ];
      steps.push(
        `new force / old force = ${factors.join(" x ")} = ${num(results.newForce)}; travel ${num(results.newTravel)}`,
      );
    }
    return { results, steps };
  },
};
