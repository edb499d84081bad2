import { expect, test } from "vitest";
import { fitCamera } from "../../../src/browser/map/fit-camera.ts";

const STAGE = { width: 1000, height: 500, margin: { x: 100, y: 50 } };
/** The camera's coordinates are parts of the stage. */
const place = ({ x, y }: { x: number; y: number }) => ({ x: x / 1000, y: y / 500 });

test("without points everything is shown", () => {
  expect(fitCamera([], STAGE, place)).toEqual({ x: 0.5, y: 0.5, ratio: 1 });
});

test("the points fill the room inside the margins", () => {
  const corners = [
    { x: 100, y: 50 },
    { x: 500, y: 250 },
  ];
  expect(fitCamera(corners, STAGE, place)).toEqual({ x: 0.3, y: 0.3, ratio: 0.5 });
});

test("a single point is not looked at from too near", () => {
  expect(fitCamera([{ x: 500, y: 250 }], STAGE, place)).toEqual({ x: 0.5, y: 0.5, ratio: 0.12 });
});
