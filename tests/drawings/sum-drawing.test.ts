/** Every sum has a drawing with its letters, inside its frame, and in words. */
import { expect, test } from "vitest";
import { sumDrawing } from "../../src/drawings/sum-drawing.ts";
import { SUM_INPUTS } from "../../src/engine/records/shapes/sums.ts";

test.each(Object.keys(SUM_INPUTS))("%s is drawn inside its frame, and said in words", (id) => {
  const picture = sumDrawing(id);
  expect(picture?.alt).toMatch(/^[A-Z].+\.$/);
  expect(picture?.shapes.some((shape) => shape.is === "text")).toBe(true);
  const { width = 0, height = 0 } = picture ?? {};
  for (const shape of picture?.shapes ?? []) {
    const [xs, ys] = extent(shape as unknown as Record<string, unknown>);
    for (const x of xs) expect(x >= 0 && x <= width).toBe(true);
    for (const y of ys) expect(y >= 0 && y <= height).toBe(true);
  }
});

test("what is no sum has no drawing", () => {
  expect(sumDrawing("toString")).toBeUndefined();
});

function extent(shape: Record<string, unknown>): [number[], number[]] {
  const n = (key: string): number => Number(shape[key] ?? 0);
  switch (shape.is) {
    case "line":
      return [
        [n("x1"), n("x2")],
        [n("y1"), n("y2")],
      ];
    case "rect":
      return [
        [n("x"), n("x") + n("width")],
        [n("y"), n("y") + n("height")],
      ];
    case "circle":
      return [
        [n("cx") - n("r"), n("cx") + n("r")],
        [n("cy") - n("r"), n("cy") + n("r")],
      ];
    case "text":
      return [[n("x")], [n("y") - 12, n("y")]];
    default:
      return [[], []];
  }
}
