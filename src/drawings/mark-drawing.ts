/** The small drawing of one mark as one part shows it: so many grooves, the letter in its box, the measure. */
import type { DRAWN } from "../engine/records/shapes/parts.ts";
import type { Picture, Shape, Stroke } from "./picture.ts";

export type Drawn = (typeof DRAWN)[number];

/** What has to be known of the mark. */
export interface DrawnMark {
  readonly name: string;
  readonly made: string;
  readonly drawn?: Drawn | undefined;
  readonly unit?: string | undefined;
  /** The value that stands for "nothing there". Default: none. */
  readonly absent?: string | undefined;
}

const [WIDTH, HEIGHT] = [160, 100];
/** More than these would not be told apart in so small a drawing. */
const MOST = 32;
const NUMBERS = "no one two three four five six seven eight nine ten eleven twelve".split(" ");

/**
 * Nothing where the mark is not drawn: its shape is not a count, a stamp, paint or a measure, or the value is no number where one
 * is needed. `name` is what the drawing is of; left out where that is said beside it.
 */
export function markDrawing(mark: DrawnMark, value: string | number, name?: string): Picture | undefined {
  const drawn = mark.drawn ?? USUAL[mark.made] ?? "none";
  const sketch = drawn === "none" ? undefined : SKETCHES[drawn](mark, value);
  if (!sketch) return undefined;
  const title: Shape[] = name === undefined ? [] : [text(WIDTH / 2, 12, name, "small")];
  const alt = name === undefined ? capital(sketch.words) : `${name}: ${sketch.words}`;
  return {
    width: WIDTH,
    height: HEIGHT,
    alt: `${alt}.`,
    shapes: [...title, ...sketch.shapes, text(WIDTH / 2, 96, sketch.label, "small")],
  };
}

interface Sketch {
  readonly shapes: readonly Shape[];
  /** The value, as it stands below. */
  readonly label: string;
  readonly words: string;
}
type Sketcher = (mark: DrawnMark, value: string | number) => Sketch | undefined;

const USUAL: Readonly<Record<string, Drawn>> = {
  counted: "lines",
  stamped: "stamp",
  cast: "stamp",
  painted: "paint",
  printed: "stamp",
  coloured: "paint",
  measured: "length",
};

const SKETCHES: Readonly<Record<Exclude<Drawn, "none">, Sketcher>> = {
  grooves: counting("groove", (n) => [
    rect(30, 22, 100, 56, "body", 4),
    ...along(n, 40, 120).flatMap((x) => [line(x - 2, 22, x - 2, 78, "mark"), line(x + 2, 22, x + 2, 78, "mark")]),
  ]),
  rings: counting("ring", (n) => [
    rect(30, 28, 100, 44, "body", 2),
    ...along(n, 40, 120).map((x) => rect(x - 4, 22, 8, 56, "mark", 3)),
  ]),
  lines: counting("line", (n) => [
    rect(30, 22, 100, 56, "body", 8),
    ...along(n, 38, 122).map((x) => line(x, 30, x, 70, "mark")),
  ]),
  stripes: counting("stripe", (n) => [
    rect(30, 22, 100, 56, "body", 8),
    ...along(n, 40, 120).map((x) => rect(x - 3, 22, 6, 56, "mark", 0, true)),
  ]),
  bars: counting("bar", (n) => [
    rect(30, 22, 100, 56, "body", 8),
    ...along(n, 40, 120).map((x) => rect(x - 4, 32, 8, 36, "mark", 3, true)),
  ]),
  dots: counting("dot", (n) => [
    rect(30, 22, 100, 56, "body", 8),
    ...along(n, 42, 118).map((x) => circle(x, 50, Math.min(5, 40 / Math.max(n, 1)), "mark", true)),
  ]),
  holes: counting("hole", (n) => [
    rect(30, 22, 100, 56, "body", 8),
    ...along(n, 44, 116).map((x) => circle(x, 50, Math.min(8, 34 / Math.max(n, 1)), "mark")),
  ]),
  terminals: counting("terminal", (n) => [
    rect(30, 50, 100, 28, "body", 4),
    ...along(n, 42, 118).map((x) => rect(x - 3, 24, 6, 26, "mark")),
  ]),
  teeth: counting("tooth", (n) => (n < 3 ? [circle(80, 50, 26)] : [path(toothed(n), "mark"), circle(80, 50, 7)])),
  notches: counting("notch", (n) => [
    circle(80, 50, 30),
    circle(80, 50, 14),
    ...Array.from({ length: n }, (_, i) => path(notch((i * 2 * Math.PI) / n), "mark")),
  ]),
  stamp: (mark, value) => {
    const nothing = isNothing(mark, value);
    const shown = nothing ? [] : fitted(String(value), 80, 55);
    const shapes = [rect(20, 22, 120, 56, "body", 4), ...(nothing ? [] : [rect(30, 32, 100, 36, "mark")]), ...shown];
    return { shapes, label: String(value), words: `${plainName(mark)}: ${value}` };
  },
  paint: (mark, value) => {
    const nothing = isNothing(mark, value);
    // The word stands in the dab: colours are not told by colour.
    const dab = path("M36 50C34 26 62 30 82 28C110 24 130 34 126 52C124 72 96 68 78 72C56 74 38 70 36 50Z", "mark");
    const shapes = [rect(20, 22, 120, 56, "body", 8), ...(nothing ? [] : [dab]), ...fitted(String(value), 80, 55)];
    return { shapes, label: nothing ? "nothing there" : String(value), words: `${plainName(mark)}: ${value}` };
  },
  length: measuring((label) => [
    rect(20, 36, 120, 24, "body", 3),
    line(20, 60, 20, 82, "measure"),
    line(140, 60, 140, 82, "measure"),
    ...dimension(20, 140, 78),
    text(80, 32, label),
  ]),
  diameter: measuring((label) => [circle(80, 50, 30), ...dimension(50, 110, 50), text(80, 46, label)]),
  thickness: measuring((label) => [
    rect(74, 20, 12, 60, "body", 1),
    line(40, 50, 74, 50, "measure"),
    path("M74 50l-8 -4M74 50l-8 4", "measure"),
    line(86, 50, 120, 50, "measure"),
    path("M86 50l8 -4M86 50l8 4", "measure"),
    text(123, 44, label),
  ]),
};

/** A sketch for a mark of which there are so many. */
function counting(one: string, draw: (count: number) => Shape[]): Sketcher {
  return (mark, value) => {
    const count = countOf(mark, value);
    if (count === undefined || count > MOST) return undefined;
    return { shapes: draw(count), label: String(value), words: sayCount(plainName(mark), one, count, value) };
  };
}

function measuring(draw: (label: string) => Shape[]): Sketcher {
  return (mark, value) => {
    if (typeof value !== "number") return undefined;
    const label = mark.unit === undefined ? String(value) : `${value} ${mark.unit}`;
    return { shapes: draw(label), label, words: `${plainName(mark)}: ${label}` };
  };
}

/** "three", 3 and "3 dots" are 3; "none" is 0; of words without a number nothing can be counted. */
function countOf(mark: DrawnMark, value: string | number): number | undefined {
  if (typeof value === "number") return Number.isInteger(value) && value >= 0 ? value : undefined;
  if (isNothing(mark, value)) return 0;
  const [first = ""] = value.toLowerCase().split(" ");
  if (/\band\b/.test(value)) return undefined;
  const word = NUMBERS.indexOf(first);
  return word > 0 ? word : /^\d+$/.test(first) ? Number(first) : undefined;
}

function isNothing({ absent }: DrawnMark, value: string | number): boolean {
  return value === "none" || value === absent;
}

/** What is counted: "number of outlets" are outlets. */
function plainName({ name }: DrawnMark): string {
  return name.replace(/^number of /, "");
}

/** "Three grooves round the base"; where the name does not begin with what is drawn, "outlets: two". */
function sayCount(name: string, one: string, count: number, value: string | number): string {
  const number = NUMBERS[count] ?? String(count);
  const many = MANY[one] ?? `${one}s`;
  const [before = "", after = ""] = splitAt(name, new RegExp(`\\b(?:${many}|${one})\\b`));
  const isNamed = before !== name && !/\b(?:in|on|of|the)\b/.test(before);
  if (!isNamed) return `${name}: ${typeof value === "string" ? value : count === 0 ? "none" : number}`;
  return `${number} ${before}${count === 1 ? one : many}${after}`;
}

const MANY: Readonly<Record<string, string>> = { tooth: "teeth", notch: "notches" };

function splitAt(words: string, what: RegExp): [before: string, after: string] {
  const found = what.exec(words);
  return found ? [words.slice(0, found.index), words.slice(found.index + found[0].length)] : [words, ""];
}

/** So many places spread evenly between two ends. */
function along(count: number, from: number, to: number): number[] {
  return Array.from({ length: count }, (_, i) => round(from + ((i + 0.5) * (to - from)) / count));
}

function round(number: number): number {
  return Math.round(number * 10) / 10;
}

function toothed(teeth: number): string {
  const points = Array.from({ length: teeth * 4 }, (_, i) => {
    const angle = ((i + 0.5) * Math.PI) / (teeth * 2);
    const radius = i % 4 < 2 ? 32 : 26;
    return `${round(80 + radius * Math.sin(angle))} ${round(50 - radius * Math.cos(angle))}`;
  });
  return `M${points.join("L")}Z`;
}

/** A small V in the rim of the disc. */
function notch(angle: number): string {
  const at = (turn: number, radius: number): string =>
    `${round(80 + radius * Math.sin(angle + turn))} ${round(50 - radius * Math.cos(angle + turn))}`;
  return `M${at(-0.12, 31)}L${at(0, 22)}L${at(0.12, 31)}`;
}

/** Words in the middle; long ones in two lines. */
function fitted(words: string, x: number, y: number): Shape[] {
  if (words.length <= 8) return [text(x, y, words, "large")];
  if (words.length <= 16) return [text(x, y, words, "small")];
  const middle = words.indexOf(" ", words.length / 2 - 4);
  if (middle < 0) return [text(x, y, words, "small")];
  return [text(x, y - 7, words.slice(0, middle), "small"), text(x, y + 7, words.slice(middle + 1), "small")];
}

function dimension(x1: number, x2: number, y: number): Shape[] {
  return [
    line(x1, y, x2, y, "measure"),
    path(`M${x1} ${y}l8 -4M${x1} ${y}l8 4M${x2} ${y}l-8 -4M${x2} ${y}l-8 4`, "measure"),
  ];
}

function line(x1: number, y1: number, x2: number, y2: number, stroke: Stroke = "body"): Shape {
  return { is: "line", x1, y1, x2, y2, stroke };
}

function rect(
  x: number,
  y: number,
  width: number,
  height: number,
  stroke: Stroke = "body",
  corner = 0,
  filled = false,
): Shape {
  return { is: "rect", x, y, width, height, stroke, ...(corner > 0 && { round: corner }), ...(filled && { filled }) };
}

function circle(cx: number, cy: number, r: number, stroke: Stroke = "body", filled = false): Shape {
  return { is: "circle", cx, cy, r, stroke, ...(filled && { filled }) };
}

function path(d: string, stroke: Stroke = "body"): Shape {
  return { is: "path", d, stroke };
}

function text(x: number, y: number, words: string, size?: "small" | "large"): Shape {
  return { is: "text", x, y, text: words, anchor: "middle", ...(size && { size }) };
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
