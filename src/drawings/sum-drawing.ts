/** The drawing that goes with a shop sum: the thing in a few lines, with the letters of the formula. */
import type { SumId } from "../engine/records/shapes/sums.ts";
import type { Picture, Shape, Stroke } from "./picture.ts";

const [WIDTH, HEIGHT] = [320, 160];

export function sumDrawing(id: string): Picture | undefined {
  const drawn = Object.hasOwn(DRAWINGS, id) ? DRAWINGS[id as SumId] : undefined;
  return drawn && { width: WIDTH, height: HEIGHT, ...drawn };
}

function line(x1: number, y1: number, x2: number, y2: number, stroke: Stroke = "body"): Shape {
  return { is: "line", x1, y1, x2, y2, stroke };
}

function rect(x: number, y: number, width: number, height: number, stroke: Stroke = "body", round = 0): Shape {
  return { is: "rect", x, y, width, height, stroke, ...(round > 0 && { round }) };
}

function circle(cx: number, cy: number, r: number, stroke: Stroke = "body"): Shape {
  return { is: "circle", cx, cy, r, stroke };
}

function path(d: string, stroke: Stroke = "body"): Shape {
  return { is: "path", d, stroke };
}

function text(x: number, y: number, words: string, anchor: "start" | "middle" | "end" = "middle"): Shape {
  return { is: "text", x, y, text: words, anchor };
}

/** A dimension from side to side: the line with its two ticks, and the letter above its middle. */
function across(x1: number, x2: number, y: number, letter: string): Shape[] {
  const ticks = [x1, x2].map((x) => line(x, y - 5, x, y + 5, "measure"));
  return [line(x1, y, x2, y, "measure"), ...ticks, text((x1 + x2) / 2, y - 5, letter)];
}

/** A dimension from top to bottom, the letter to its right. */
function upright(y1: number, y2: number, x: number, letter: string): Shape[] {
  const ticks = [y1, y2].map((y) => line(x - 5, y, x + 5, y, "measure"));
  return [line(x, y1, x, y2, "measure"), ...ticks, text(x + 8, (y1 + y2) / 2 + 5, letter, "start")];
}

/** The outline of a wheel with so many teeth. */
function toothed(cx: number, cy: number, r: number, teeth: number): string {
  const points = Array.from({ length: teeth * 4 }, (_, i) => {
    const angle = ((i + 0.5) * Math.PI) / (teeth * 2);
    const at = i % 4 < 2 ? r : r - 7;
    return `${(cx + at * Math.sin(angle)).toFixed(1)} ${(cy - at * Math.cos(angle)).toFixed(1)}`;
  });
  return `M${points.join("L")}Z`;
}

const DRAWINGS: Readonly<Record<SumId, Pick<Picture, "alt" | "shapes">>> = {
  "adjuster-notches": {
    alt: "A star wheel with z teeth on a screw with n threads per inch; turning it by k notches moves the screw by the travel.",
    shapes: [
      path(toothed(80, 80, 52, 20)),
      circle(80, 80, 14),
      path("M95 20A62 62 0 0 1 139 59", "moved"),
      path("M139 59l-9 -4M139 59l3 -9", "moved"),
      text(140, 32, "k"),
      text(80, 154, "z teeth"),
      rect(170, 66, 26, 28),
      rect(196, 72, 84, 16),
      ...Array.from({ length: 11 }, (_, i) => line(200 + i * 7, 88, 204 + i * 7, 72)),
      text(238, 62, "n per inch"),
      ...across(280, 306, 118, "travel"),
      line(306, 72, 306, 88, "moved"),
      line(280, 72, 306, 72, "moved"),
      line(280, 88, 306, 88, "moved"),
    ],
  },
  "torque-adapter": {
    alt: "A torque wrench seen from above. L runs from the square drive to the middle of the grip, E from the drive to the middle of the fastener, a is the angle between the two.",
    shapes: [
      rect(196, 66, 96, 20, "body", 8),
      line(106, 72, 196, 72),
      line(106, 80, 196, 80),
      circle(100, 76, 12),
      rect(95, 71, 10, 10),
      line(96, 65, 46, 29),
      line(90, 86, 36, 47),
      circle(36, 36, 13),
      path("M36 28l7 4v8l-7 4l-7 -4v-8z", "mark"),
      line(100, 76, 20, 76, "hidden"),
      path("M62 76A38 38 0 0 1 69 54", "measure"),
      text(50, 70, "a"),
      ...across(100, 244, 118, "L"),
      line(100, 88, 100, 118, "hidden"),
      line(244, 86, 244, 118, "hidden"),
      line(54, 10, 118, 56, "measure"),
      line(51, 14, 57, 6, "measure"),
      line(115, 60, 121, 52, "measure"),
      text(96, 28, "E"),
      line(244, 40, 244, 64, "moved"),
      path("M244 64l-4 -8M244 64l4 -8", "moved"),
      text(244, 34, "pull here: S"),
      text(16, 66, "T"),
    ],
  },
  pulley: {
    alt: "Two pulleys with a belt: the driving one of diameter D turns at N, the driven one of diameter d at n.",
    shapes: [
      circle(86, 74, 52),
      circle(86, 74, 5),
      circle(246, 74, 26),
      circle(246, 74, 4),
      line(95, 23, 250, 48),
      line(95, 125, 250, 100),
      ...across(34, 138, 150, "D, N"),
      ...across(220, 272, 150, "d, n"),
    ],
  },
  speedometer: {
    alt: "The drive gear of g teeth on the output shaft turns the driven pinion of the speedometer cable; behind it the axle with ring gear r and pinion p, and the tyre with its loaded radius R and diameter D.",
    shapes: [
      path(toothed(46, 88, 26, 8)),
      path(toothed(46, 40, 22, 17)),
      text(84, 92, "g", "start"),
      text(76, 38, "teeth", "start"),
      line(72, 104, 150, 104),
      line(72, 112, 150, 112),
      path("M150 98l18 -8v36l-18 -8z"),
      rect(168, 76, 12, 64),
      text(156, 84, "p"),
      text(186, 90, "r", "start"),
      circle(252, 70, 54),
      circle(252, 70, 26),
      line(190, 118, 314, 118, "mark"),
      line(252, 70, 252, 118, "measure"),
      text(258, 108, "R", "start"),
      ...across(198, 306, 150, "D"),
    ],
  },
  "brake-hydraulics": {
    alt: "A pedal with lever h to 1 pushes a master cylinder of bore M with force F; the line carries pressure P to a wheel cylinder of bore W.",
    shapes: [
      line(30, 20, 46, 132),
      circle(30, 20, 4),
      rect(38, 130, 22, 10),
      line(90, 136, 62, 136, "moved"),
      path("M62 136l8 -4M62 136l8 4", "moved"),
      text(98, 141, "F", "start"),
      text(16, 84, "h"),
      line(37, 62, 84, 62),
      rect(84, 46, 70, 32),
      line(100, 46, 100, 78),
      ...upright(46, 78, 128, "M"),
      path("M154 62H200V92H216"),
      text(190, 54, "P"),
      rect(216, 66, 76, 52),
      line(240, 66, 240, 118),
      line(278, 66, 278, 118),
      line(292, 92, 314, 92, "moved"),
      path("M314 92l-8 -4M314 92l-8 4", "moved"),
      ...upright(66, 118, 250, "W"),
    ],
  },
  displacement: {
    alt: "A cylinder of bore B with its piston at the bottom; the stroke S runs to the dashed place of the piston at the top.",
    shapes: [
      line(100, 16, 100, 148),
      line(220, 16, 220, 148),
      line(100, 16, 220, 16),
      rect(103, 104, 114, 36),
      rect(103, 32, 114, 36, "hidden"),
      ...upright(32, 104, 238, "S"),
      ...across(100, 220, 92, "B"),
      text(60, 80, "z of them"),
    ],
  },
  "compression-ratio": {
    alt: "The top of a cylinder: chamber C in the head, gasket of bore G and thickness q, deck height k above the piston, dish s in the piston, swept volume V below.",
    shapes: [
      path("M70 44H110Q120 12 160 12Q200 12 210 44H250"),
      text(160, 36, "C"),
      rect(70, 44, 34, 12, "mark"),
      rect(216, 44, 34, 12, "mark"),
      ...upright(44, 56, 266, "q"),
      line(110, 56, 110, 152),
      line(210, 56, 210, 152),
      line(70, 56, 110, 56),
      line(210, 56, 250, 56),
      path("M112 72H136Q160 92 184 72H208V108H112Z"),
      text(160, 98, "s"),
      line(70, 72, 108, 72, "hidden"),
      line(84, 56, 84, 72, "measure"),
      line(79, 56, 89, 56, "measure"),
      line(79, 72, 89, 72, "measure"),
      text(66, 70, "k", "end"),
      ...across(104, 216, 64, "G"),
      line(112, 146, 208, 146, "hidden"),
      text(160, 134, "V"),
    ],
  },
  "gauge-drill": {
    alt: "An opening seen in section: the shank of drill g goes in, the thicker shank of drill s does not.",
    shapes: [
      rect(40, 96, 50, 40),
      rect(120, 96, 80, 40),
      rect(230, 96, 50, 40),
      rect(94, 24, 22, 96, "moved"),
      text(105, 16, "g goes"),
      rect(197, 20, 36, 74, "mark"),
      text(215, 14, "s stays"),
      ...across(90, 120, 152, "opening").slice(0, 3),
      ...across(200, 230, 152, "opening").slice(0, 3),
      text(160, 156, "opening"),
    ],
  },
  "end-play": {
    alt: "A groove of width G holds a part of width P and washers of thickness w; what is left over is the play x.",
    shapes: [
      path("M30 150V60H60V120H260V60H290V150Z"),
      rect(60, 72, 24, 46),
      rect(84, 62, 128, 56),
      rect(212, 72, 24, 46),
      ...across(84, 212, 52, "P"),
      ...across(60, 84, 52, "w"),
      ...across(212, 236, 52, "w"),
      ...across(236, 260, 52, "x"),
      line(236, 52, 236, 118, "hidden"),
      ...across(60, 260, 24, "G"),
      line(60, 24, 60, 60, "hidden"),
      line(260, 24, 260, 60, "hidden"),
    ],
  },
  "dwell-angle": {
    alt: "A distributor cam with its lobes and the rubbing block of the points: w is the angle over which the points are closed, out of 360 divided by z.",
    shapes: [
      circle(110, 80, 8),
      path("M110 40Q136 54 150 80Q136 106 110 120Q84 106 70 80Q84 54 110 40"),
      line(110, 80, 180, 80, "measure"),
      line(110, 80, 160, 30, "measure"),
      path("M166 80A56 56 0 0 0 150 40", "measure"),
      text(176, 58, "w", "start"),
      rect(151, 74, 14, 12, "mark"),
      line(165, 80, 240, 80),
      line(240, 70, 240, 90, "mark"),
      line(246, 70, 246, 90, "mark"),
      line(246, 80, 290, 80),
      text(244, 112, "points"),
      text(110, 148, "z lobes"),
    ],
  },
};
