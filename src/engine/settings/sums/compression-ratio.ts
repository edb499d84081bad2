/**
 * Compression ratio = (swept + clearance) / clearance, for one cylinder, all in one unit.
 * Clearance = chamber + gasket (0.785398 x gasket bore squared x thickness) + deck (0.785398 x bore squared x height) + dish.
 * A dome counts as a dish below zero, and so does the height of a piston that stands above the deck.
 */
import { CC_IN_A_CUBIC_INCH } from "./displacement.ts";
import { num } from "./num.ts";
import type { Sum } from "./sum.ts";

/** More than any engine has, one that fires by compression included. */
const MOST = 25;

export const compressionRatio: Sum = {
  id: "compression-ratio",
  name: "Compression ratio",
  about: "When heads, head gaskets or pistons of another kind go on an engine.",
  inputs: [
    { id: "swept", label: "swept volume of one cylinder", letter: "V", unit: "cc", above: 0, atMost: 100000 },
    {
      id: "bore",
      label: "bore (with the stroke in place of the swept volume)",
      letter: "B",
      unit: "in",
      above: 0,
      atMost: 100,
      optional: true,
      help: "Also for the deck; left out, the gasket's bore is taken.",
    },
    { id: "stroke", label: "or stroke", letter: "S", unit: "in", above: 0, atMost: 100 },
    { id: "chamber", label: "volume of the chamber in the head", letter: "C", unit: "cc", atLeast: 0, atMost: 100000 },
    { id: "gasketBore", label: "bore of the gasket", letter: "G", unit: "in", above: 0, atMost: 100 },
    { id: "gasket", label: "thickness of the pressed gasket", letter: "q", unit: "in", atLeast: 0, atMost: 5 },
    {
      id: "deck",
      label: "height of the deck above the piston",
      letter: "k",
      unit: "in",
      atLeast: -5,
      atMost: 5,
      default: "0 in",
      help: "Below 0 for a piston that stands above the deck.",
    },
    {
      id: "dish",
      label: "dish in the piston",
      letter: "s",
      unit: "cc",
      atLeast: -10000,
      atMost: 10000,
      default: "0 cc",
      help: "Below 0 for a dome.",
    },
    {
      id: "newChamber",
      label: "volume of the other chamber",
      letter: "C2",
      unit: "cc",
      atLeast: 0,
      atMost: 100000,
      optional: true,
    },
    {
      id: "newGasket",
      label: "thickness of the other gasket",
      letter: "q2",
      unit: "in",
      atLeast: 0,
      atMost: 5,
      optional: true,
    },
  ],
  ways: [{ what: "the swept volume", ways: [["swept"], ["bore", "stroke"]] }],
  results: [
    { id: "clearance", label: "clearance volume", unit: "cc", round: { digits: 4, words: "to four digits" } },
    {
      id: "ratio",
      label: "compression ratio, to one",
      unit: "",
      round: { steps: { "": 0.1 }, digits: 2, words: "to 0.1" },
    },
    {
      id: "newClearance",
      label: "clearance volume with the other parts",
      unit: "cc",
      round: { digits: 4, words: "to four digits" },
    },
    {
      id: "newRatio",
      label: "compression ratio with the other parts, to one",
      unit: "",
      round: { steps: { "": 0.1 }, digits: 2, words: "to 0.1" },
    },
  ],
  formula: "e = (V + c) / c;   c = C + 0.785398 x G x G x q + 0.785398 x B x B x k + s;   V = 0.785398 x B x B x S",
  notes: [
    "All volumes of one cylinder.",
    "The gasket counts as thick as it is when the head is tightened.",
    "Where no bore is given, the deck is taken as wide as the gasket.",
  ],
  source: "The definition of the ratio; all else is the volume of a cylinder.",
  example: {
    inputs: { swept: "823.70 cc", chamber: "100 cc", gasketBore: "4 in", gasket: "0 in" },
    results: { clearance: "100", ratio: "9.2" },
    source: "the definition: (100.00 + 823.70) / 100.00 = 9.237",
  },
  solve: ({
    bore,
    stroke = 0,
    chamber = 0,
    gasketBore = 0,
    gasket = 0,
    deck = 0,
    dish = 0,
    newChamber,
    newGasket,
    ...given
  }) => {
    if (bore !== undefined && gasketBore < bore)
      return {
        impossible: `The gasket's bore (${num(gasketBore)} in) is smaller than the cylinder's (${num(bore)} in): it would reach into the cylinder.`,
      };
    const disc = (width: number, height: number): number => (Math.PI / 4) * width * width * height * CC_IN_A_CUBIC_INCH;
    const swept = given.swept ?? disc(bore ?? 0, stroke);
    const steps: string[] = given.swept === undefined ? [`V = ${num(swept)} cc`] : [];
    const ratioWith = (head: number, thick: number): { clearance: number; ratio: number } => {
      const [pressed, above] = [disc(gasketBore, thick), disc(bore ?? gasketBore, deck)];
      const clearance = head + pressed + above + dish;
      const ratio = (swept + clearance) / clearance;
      steps.push(
        `c = ${num(head)} + ${num(pressed)} + ${num(above)} + ${num(dish)} = ${num(clearance)} cc`,
        `e = (${num(swept)} + ${num(clearance)}) / ${num(clearance)} = ${num(ratio)}`,
      );
      return { clearance, ratio };
    };
    const none = {
      impossible: "Nothing is left above the piston: chamber, gasket, deck and dish together come to no volume.",
    };
    const now = ratioWith(chamber, gasket);
    if (now.clearance <= swept * 1e-9) return none;
    if (now.ratio > MOST) return tooHigh(now.ratio, given.swept !== undefined);
    if (newChamber === undefined && newGasket === undefined) return { results: { ...now }, steps };
    const other = ratioWith(newChamber ?? chamber, newGasket ?? gasket);
    if (other.clearance <= swept * 1e-9) return none;
    if (other.ratio > MOST) return tooHigh(other.ratio, false);
    return { results: { ...now, newClearance: other.clearance, newRatio: other.ratio }, steps };
  },
};

function tooHigh(ratio: number, isSweptTyped: boolean): { impossible: string } {
  const why = isSweptTyped
    ? "Is the swept volume that of the whole engine? That of one cylinder is needed."
    : "Was one of the figures measured in another unit?";
  return { impossible: `That is ${num(ratio)} to one, and no engine has more than ${MOST}. ${why}` };
}
