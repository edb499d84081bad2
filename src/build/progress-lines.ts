/** How progress looks: the line of a finished stage, and the bar of one that takes long. Only text, nothing is written. */

export interface StageState {
  readonly name: string;
  /** What was done to the counted things: "read", "written". */
  readonly verb: string;
  readonly count: number | undefined;
  /** How many there will be, where that is known beforehand. */
  readonly total: number | undefined;
  readonly milliseconds: number;
}

const NAME = 14;
const COUNT = 8;
const VERB = 10;
const SECONDS = 9;
const BAR = 24;

/**
 * One line per stage, in columns:
 *
 *     records            134 read         0.4 s
 *     styles                 bundled      1.2 s
 */
export function stageLine(stage: StageState): string {
  const count = stage.count === undefined ? "" : inThousands(stage.count);
  return `${stage.name.padEnd(NAME)} ${count.padStart(COUNT)} ${stage.verb.padEnd(VERB)}${seconds(stage.milliseconds)}`;
}

/**
 * The bar in place of that line, cut to the width of the terminal. With a known total it fills up; without one a
 * short piece walks along, one place with each drawing.
 *
 *     pages        ████████░░░░░░░░░░░░░░░░  1,700 of 5,000     2.1 s
 */
export function barLine(stage: StageState, drawing: number, width: number): string {
  const count = stage.count ?? 0;
  const filled =
    stage.total !== undefined && stage.total > 0
      ? "█".repeat(Math.floor(Math.min(1, count / stage.total) * BAR)).padEnd(BAR, "░")
      : walking(drawing);
  const counted =
    stage.total !== undefined
      ? `${inThousands(count)} of ${inThousands(stage.total)}`
      : stage.count === undefined
        ? ""
        : inThousands(count);
  const line = `${stage.name.padEnd(NAME)} ${filled} ${counted.padStart(COUNT)}${seconds(stage.milliseconds)}`;
  // A line as wide as the terminal would wrap in some, and a wrapped line cannot be drawn over.
  return line.slice(0, Math.max(0, width - 1));
}

function walking(drawing: number): string {
  const piece = 4;
  const at = drawing % (BAR - piece + 1);
  return "░".repeat(at) + "█".repeat(piece) + "░".repeat(BAR - piece - at);
}

function seconds(milliseconds: number): string {
  return `${(milliseconds / 1000).toFixed(1)} s`.padStart(SECONDS);
}

function inThousands(count: number): string {
  return count.toLocaleString("en");
}
