/**
 * A quantity or a window of two limits, as typed: "30..40 ft-lb", "30 to 40 ft-lb", "30-40 ft-lb", "0.5 mm..0.03 in".
 *
 *   The unit of the second limit is that of the first, where the first has none; else the first one's is kept.
 *   Where a limit has to be asked about, each choice is the whole window, so that no limit is lost by choosing.
 *   A window with one limit is refused: its limit can be typed alone, and must not pass for a value unseen.
 */
import { convertTo } from "./convert.ts";
import { clearWord } from "./find-unit.ts";
import { type Choice, type ReadQuantity, readQuantity } from "./read-quantity.ts";
import type { Unit } from "./unit-table.ts";
import { windowEnds } from "./window-ends.ts";

export function readWindow(typed: string, expected?: Unit): ReadQuantity {
  const ends = windowEnds(typed);
  if (!ends) return readQuantity(typed, expected);
  const { from, to } = ends;
  if (from === "" || to === "") return oneLimit(typed, from, to);
  const high = readQuantity(to, expected);
  if (high.as === "refused") return high;
  if (high.as === "choice")
    return wholeWindows(typed, high, expected, (choice) => ({
      typed: `${from}..${choice.typed}`,
      words: `${from} to ${withoutSize(choice.words)}`,
    }));
  const low = readQuantity(isBare(from) ? `${from} ${clearWord(high.unit)}` : from, high.unit);
  if (low.as === "refused") return low;
  if (low.as === "choice")
    return wholeWindows(typed, low, expected, (choice) => ({
      typed: `${choice.typed}..${to}`,
      words: `${choice.typed} to ${to}`,
    }));
  const end = convertTo(high.high, high.unit, low.unit);
  if (low.low.gt(end)) return { as: "refused", why: `'${typed.trim()}' begins above its end.` };
  return { ...low, high: end, written: typed.trim() };
}

/** "40 thou (0.04 in)": what stands in brackets is the size of one limit. */
function withoutSize(words: string): string {
  return words.replace(/ \([^()]*\)/, "");
}

/** A number and nothing else. */
function isBare(text: string): boolean {
  return /^[-+−]?[\d.,/ ]+(?:-\d+\/\d+)?$/.test(text);
}

function oneLimit(typed: string, from: string, to: string): ReadQuantity {
  const limit = from === "" ? to : from;
  const which = from === "" ? "no lower limit" : "no upper limit";
  return {
    as: "refused",
    why:
      limit === ""
        ? `'${typed.trim()}' has no limits. Type them as '30..40 ft-lb'.`
        : `'${typed.trim()}' has ${which}. Type the one limit alone: '${limit}'.`,
  };
}

type OneChoice = Choice["choices"][number];

/** The window once for each thing that its asked-about limit may be; those that can't be a window are no choice. */
function wholeWindows(
  typed: string,
  asked: Choice,
  expected: Unit | undefined,
  whole: (choice: OneChoice) => OneChoice,
): ReadQuantity {
  const read = asked.choices
    // It would be asked about for ever.
    .filter((choice) => readQuantity(choice.typed, expected).as !== "choice")
    .map(whole)
    .map((choice) => ({ choice, window: readWindow(choice.typed, expected) }));
  const choices = read.flatMap(({ choice, window }) => {
    if (window.as === "choice") return window.choices;
    return window.as === "quantity" ? [choice] : [];
  });
  const [first] = read;
  if (choices.length === 0 && first) return first.window;
  return { as: "choice", ask: `'${typed.trim()}' can be read in more than one way. Which is meant?`, choices };
}
