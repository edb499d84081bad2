/**
 * Setting of a torque wrench with an adapter = wanted torque x L / (L + E cos a).
 * L: pivot of the wrench to the middle of the grip. E: square drive to the fastener. a: 0 in line, 90 square (no change),
 * 180 pointing back (L - E). The same turned round gives the torque that a setting puts on.
 */
import { num } from "./num.ts";
import type { Rounding, Sum } from "./sum.ts";

const TORQUE: Rounding = { steps: { "ft-lb": 1, "in-lb": 1, N·m: 1 }, digits: 2, words: "to 1 ft-lb, in-lb or N·m" };

export const torqueAdapter: Sum = {
  id: "torque-adapter",
  name: "Torque wrench with an adapter",
  about: "When a fastener can only be reached with an adapter that makes the wrench longer or shorter.",
  inputs: [
    { id: "torque", label: "torque wanted at the fastener", letter: "T", unit: "ft-lb", above: 0, atMost: 10000 },
    { id: "setting", label: "or torque set on the wrench", letter: "S", unit: "ft-lb", above: 0, atMost: 10000 },
    {
      id: "wrench",
      label: "length of the wrench, pivot to the middle of the grip",
      letter: "L",
      unit: "in",
      above: 0,
      atMost: 200,
    },
    {
      id: "adapter",
      label: "length of the adapter, drive to the middle of the fastener",
      letter: "E",
      unit: "in",
      above: 0,
      atMost: 200,
    },
    {
      id: "angle",
      label: "angle of the adapter to the wrench",
      letter: "a",
      unit: "deg",
      atLeast: 0,
      atMost: 180,
      default: "0 deg",
      help: "0 in line, 90 square to the wrench, 180 pointing back over it.",
    },
  ],
  ways: [{ what: "the torque", ways: [["torque"], ["setting"]] }],
  results: [
    { id: "setting", label: "set the wrench to", unit: "ft-lb", unitOf: ["torque"], round: TORQUE },
    { id: "torque", label: "torque at the fastener", unit: "ft-lb", unitOf: ["setting"], round: TORQUE },
    {
      id: "least",
      label: "at the fastener with a wrench 4 per cent weak",
      unit: "ft-lb",
      unitOf: ["torque", "setting"],
      round: TORQUE,
    },
    {
      id: "most",
      label: "at the fastener with a wrench 4 per cent strong",
      unit: "ft-lb",
      unitOf: ["torque", "setting"],
      round: TORQUE,
    },
  ],
  formula: "S = T x L / (L + E cos a)",
  notes: [
    "Pull at the middle of the grip: L is true only there.",
    "Square to the wrench (90 degrees) nothing changes.",
    "A torque wrench may be off by 4 per cent either way (ISO 6789, from memory).",
  ],
  caution: "Hold the wrench by its grip and never lengthen it with a pipe.",
  source: "US Army TM 9-254 and TM 1-1500-204-23-9, printed formula and examples.",
  example: {
    inputs: { torque: "300 in-lb", wrench: "10 in", adapter: "4 in" },
    results: { setting: "214" },
    source: "US Army TM 1-1500-204-23-9",
  },
  solve: ({ torque, setting, wrench = 0, adapter = 0, angle = 0 }) => {
    // At 90 degrees the cosine is zero; the computer's is not quite.
    const cosine = angle === 90 ? 0 : Math.cos((angle * Math.PI) / 180);
    const reach = wrench + adapter * cosine;
    // The nearer to nothing, the more a small error of either length changes the torque.
    if (reach < wrench * 0.1)
      return {
        impossible: `The adapter points back ${num(-adapter * cosine)} in over a wrench of ${num(wrench)} in, so that less than a tenth of its length is left: no setting can be trusted.`,
      };
    const cos = angle === 0 ? "" : angle === 180 ? " x -1" : ` x cos ${num(angle)}°`;
    const length = `${num(wrench)} + ${num(adapter)}${cos}`;
    const at = torque ?? ((setting ?? 0) * reach) / wrench;
    const set = torque === undefined ? (setting ?? 0) : (torque * wrench) / reach;
    const step =
      torque === undefined
        ? `T = ${num(set)} x (${length}) / ${num(wrench)} = ${num(at)} ft-lb`
        : `S = ${num(at)} x ${num(wrench)} / (${length}) = ${num(set)} ft-lb`;
    const result = torque === undefined ? { torque: at } : { setting: set };
    return { results: { ...result, least: at * 0.96, most: at * 1.04 }, steps: [step] };
  },
};
