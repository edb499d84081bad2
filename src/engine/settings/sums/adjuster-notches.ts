/**
 * Travel of a star wheel adjuster = notches / (teeth x threads per inch).
 * The same travel on another screw takes old count x (new teeth x new threads) / (old teeth x old threads), to the nearest notch.
 * A part of a turn is that part of the teeth.
 */
import { num, undusted } from "./num.ts";
import type { Sum } from "./sum.ts";

export const adjusterNotches: Sum = {
  id: "adjuster-notches",
  name: "Adjuster wheel: notches and travel",
  about:
    "When a brake adjuster has another thread or another wheel, and the count to back off has to give the same gap.",
  inputs: [
    {
      id: "teeth",
      label: "teeth of the wheel",
      letter: "z",
      unit: "teeth",
      counted: ["teeth", "notches"],
      whole: true,
      atLeast: 1,
      atMost: 500,
    },
    {
      id: "threads",
      label: "threads per inch of the screw",
      letter: "n",
      unit: "threads per inch",
      counted: ["tpi", "threads", "threads per inch", "per inch", "/in"],
      above: 0,
      atMost: 200,
      optional: true,
      help: "Lay a thread gauge on the screw.",
    },
    {
      id: "notches",
      label: "notches turned",
      letter: "k",
      unit: "notches",
      counted: ["notch", "notches", "clicks", "teeth"],
      atLeast: 0,
      atMost: 10000,
    },
    {
      id: "turn",
      label: "or part of a turn",
      letter: "u",
      unit: "turns",
      counted: ["turn", "turns"],
      atLeast: 0,
      atMost: 100,
      help: "1/2 for half a turn.",
    },
    {
      id: "newTeeth",
      label: "teeth of the other wheel",
      letter: "z2",
      unit: "teeth",
      counted: ["teeth", "notches"],
      whole: true,
      atLeast: 1,
      atMost: 500,
      optional: true,
    },
    {
      id: "newThreads",
      label: "threads per inch of the other screw",
      letter: "n2",
      unit: "threads per inch",
      counted: ["tpi", "threads", "threads per inch", "per inch", "/in"],
      above: 0,
      atMost: 200,
      optional: true,
    },
  ],
  ways: [{ what: "how far the wheel is turned", ways: [["notches"], ["turn"]] }],
  goesWith: [{ given: ["newTeeth", "newThreads"], needs: ["threads", "newTeeth", "newThreads"] }],
  results: [
    { id: "count", label: "notches turned", unit: "notches", round: { digits: 4, words: "not rounded" } },
    {
      id: "travel",
      label: "change in length",
      unit: "in",
      round: { steps: { in: 0.0001 }, digits: 3, words: "to 0.0001 in" },
    },
    {
      id: "newExact",
      label: "the same travel on the other screw, exactly",
      unit: "notches",
      round: { digits: 4, words: "not to a whole notch" },
    },
    {
      id: "newCount",
      label: "count on the other screw",
      unit: "notches",
      round: { steps: { notches: 1 }, digits: 1, words: "to the nearest whole notch" },
    },
    {
      id: "newTravel",
      label: "travel that this count gives",
      unit: "in",
      round: { steps: { in: 0.0001 }, digits: 3, words: "to 0.0001 in" },
    },
    {
      id: "oldCountTravel",
      label: "travel if the old count were kept",
      unit: "in",
      round: { steps: { in: 0.0001 }, digits: 3, words: "to 0.0001 in" },
    },
  ],
  formula: "travel = k / (z x n);   new count = k x (z2 x n2) / (z x n);   k = u x z",
  notes: [
    "Counting teeth alone is wrong where the thread changed: the teeth can be equal.",
    "The lining moves by about half of the change in length where one end of the shoe is fixed (from memory, no source).",
  ],
  source: "The geometry of a screw; half a turn as half of the teeth is common practice, no source.",
  example: {
    inputs: { teeth: "24", turn: "1/2" },
    results: { count: "12" },
    source: "common practice, no source: half a turn back on a wheel of 24 teeth is 12 notches",
  },
  solve: ({ teeth = 0, threads, notches, turn = 0, newTeeth, newThreads }) => {
    const count = notches ?? turn * teeth;
    const steps = notches === undefined ? [`k = ${num(turn)} x ${num(teeth)} = ${num(count)} notches`] : [];
    if (threads === undefined) return { results: { count }, steps };
    const travel = count / (teeth * threads);
    steps.push(`travel = ${num(count)} / (${num(teeth)} x ${num(threads)}) = ${num(travel)} in`);
    if (newTeeth === undefined || newThreads === undefined) return { results: { count, travel }, steps };
    const newExact = (count * newTeeth * newThreads) / (teeth * threads);
    const newCount = Math.round(undusted(newExact));
    if (count > 0 && newCount === 0)
      return { impossible: `One notch of the other wheel moves further than the whole travel of ${num(travel)} in.` };
    const newTravel = newCount / (newTeeth * newThreads);
    const oldCountTravel = count / (newTeeth * newThreads);
    steps.push(
      `new count = ${num(count)} x (${num(newTeeth)} x ${num(newThreads)}) / (${num(teeth)} x ${num(threads)}) = ${num(newExact)}, so ${newCount}`,
      `the old count on the other screw = ${num(count)} / (${num(newTeeth)} x ${num(newThreads)}) = ${num(oldCountTravel)} in`,
    );
    return { results: { count, travel, newExact, newCount, newTravel, oldCountTravel }, steps };
  },
};
