/** The drawings of marks: as many as the value says, everything in words too, nothing outside the frame. */
import { describe, expect, test } from "vitest";
import { type DrawnMark, markDrawing } from "../../src/drawings/mark-drawing.ts";
import type { Picture } from "../../src/drawings/picture.ts";
import { DRAWN } from "../../src/engine/records/shapes/parts.ts";
import { plainFiles } from "../helpers/demo-data.ts";

const marksIn = (picture: Picture | undefined): number =>
  picture?.shapes.filter((shape) => shape.is !== "text" && shape.stroke === "mark").length ?? 0;
const textsIn = (picture: Picture | undefined): string[] =>
  picture?.shapes.flatMap((shape) => (shape.is === "text" ? shape.text : [])) ?? [];

describe("what is drawn of a mark", () => {
  // name, drawn, how it is made, value, alternative text; nothing where no picture is drawn; how many shapes of the mark
  const CASES: [string, DrawnMark["drawn"], string, string | number, string | undefined, number][] = [
    ["grooves round the base", "grooves", "counted", 3, "Three grooves round the base.", 6],
    ["grooves round the base", "grooves", "counted", 1, "One groove round the base.", 2],
    ["grooves round the base", "grooves", "counted", 0, "No grooves round the base.", 0],
    ["number of turned grooves round the body", "grooves", "counted", 2, "Two turned grooves round the body.", 4],
    ["groove in the insulator", "grooves", "shaped", "one", "One groove in the insulator.", 2],
    ["groove in the insulator", "grooves", "shaped", "none", "No grooves in the insulator.", 0],
    ["teeth of the pinion", "teeth", "counted", 19, "19 teeth of the pinion.", 1],
    ["notches in the rim", "notches", "counted", 6, "Six notches in the rim.", 6],
    ["holes through the barrel", "holes", "counted", 2, "Two holes through the barrel.", 2],
    ["number of outlets", "terminals", "counted", 2, "Outlets: two.", 2],
    ["raised dots on the nose", "dots", "cast", "three", "Three raised dots on the nose.", 3],
    ["white stripes on the spring", "stripes", "painted", "two", "Two white stripes on the spring.", 2],
    ["mark on the end face", "bars", "cast", "one bar", "Mark on the end face: one bar.", 1],
    ["mark on the end face", "bars", "cast", "bar and U", undefined, 0],
    ["letter", "stamp", "stamped", "W", "Letter: W.", 1],
    ["letter", undefined, "cast", "L", "Letter: L.", 1],
    ["letter", undefined, "stamped", "none", "Letter: none.", 0],
    ["dab", undefined, "painted", "green", "Dab: green.", 1],
    ["dab", undefined, "painted", "none", "Dab: none.", 0],
    ["length of the rod", undefined, "measured", 8.27, "Length of the rod: 8.27 in.", 0],
    ["length of the rod", undefined, "measured", "none", undefined, 0],
    ["thickness", "thickness", "measured", 0.18, "Thickness: 0.18 in.", 0],
    ["piston diameter", "diameter", "measured", 0.875, "Piston diameter: 0.875 in.", 0],
    ["terminals", undefined, "counted", 4, "Terminals: four.", 4],
    ["terminals", undefined, "counted", 400, undefined, 0],
    ["shape", undefined, "shaped", "domed", undefined, 0],
    ["springs in the hub", "none", "counted", 4, undefined, 0],
  ];
  test.each(CASES)("%s (%s, %s) %s: %s", (name, drawn, made, value, alt, marks) => {
    const picture = markDrawing({ name, drawn, made, unit: made === "measured" ? "in" : undefined }, value);
    expect([picture?.alt, marksIn(picture)]).toEqual([alt, marks]);
    if (picture) expect(textsIn(picture).join(" ")).toContain(value === "none" && made === "painted" ? "" : `${value}`);
  });

  test("a dab has its colour as a word in it; where there is none, it says so", () => {
    const dab: DrawnMark = { name: "dab", made: "painted", absent: "bare metal" };
    expect(textsIn(markDrawing(dab, "green"))).toEqual(["green", "green"]);
    const bare = markDrawing(dab, "bare metal");
    expect([marksIn(bare), textsIn(bare).at(-1)]).toEqual([0, "nothing there"]);
  });

  test("with a name it says of what it is", () => {
    const picture = markDrawing({ name: "ribs", made: "counted" }, 2, "HT-101");
    expect([picture?.alt, textsIn(picture)]).toEqual(["HT-101: ribs: two.", ["HT-101", "2"]]);
  });
});

/** Every number of a shape that is a place in the drawing; paths by their absolute points only. */
function placesIn({ shapes }: Picture): [x: number, y: number][] {
  return shapes.flatMap((shape): [number, number][] => {
    switch (shape.is) {
      case "line":
        return [
          [shape.x1, shape.y1],
          [shape.x2, shape.y2],
        ];
      case "rect":
        return [
          [shape.x, shape.y],
          [shape.x + shape.width, shape.y + shape.height],
        ];
      case "circle":
        return [
          [shape.cx - shape.r, shape.cy - shape.r],
          [shape.cx + shape.r, shape.cy + shape.r],
        ];
      case "path":
        return [...shape.d.matchAll(/[ML]([\d.]+) ([\d.]+)/g)].map((it) => [Number(it[1]), Number(it[2])]);
      default:
        return [[shape.x, shape.y]];
    }
  });
}

describe("every way of drawing", () => {
  test.each(DRAWN)("%s lies in the frame, whatever the value", (drawn) => {
    for (const value of [0, 1, 2, 7, 32, 0.655, "none", "three", "black with a white band", "P"]) {
      const picture = markDrawing({ name: "mark", made: "counted", drawn }, value, "HT-101");
      if (!picture) continue;
      expect([picture.width, picture.height]).toEqual([160, 100]);
      expect(picture.alt).toMatch(/^HT-101: .+\.$/);
      const outside = placesIn(picture).filter(([x, y]) => x < 0 || x > 160 || y < 0 || y > 100);
      expect(outside).toEqual([]);
    }
  });

  test("the same mark is drawn the same", () => {
    const draw = (): Picture | undefined => markDrawing({ name: "notches", made: "counted", drawn: "notches" }, 5);
    expect(draw()).toEqual(draw());
  });
});

test("the marks of the data folder that ask for a drawing get one for every number", () => {
  const features = plainFiles("parts/").flatMap(({ facts }) =>
    (facts.features ?? []).flatMap((feature: DrawnMark & { id: string }) =>
      feature.drawn === undefined || feature.drawn === "none"
        ? []
        : [
            {
              feature,
              values: facts.parts.flatMap(
                (part: { marks?: Record<string, unknown> }) => part.marks?.[feature.id] ?? [],
              ),
            },
          ],
    ),
  );
  expect(features.length).toBeGreaterThan(20);
  for (const { feature, values } of features)
    for (const value of values.filter((it: unknown) => typeof it === "number"))
      expect(markDrawing(feature, value)?.alt, `${feature.name} ${value}`).toBeTruthy();
});
