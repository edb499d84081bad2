/** The camera that shows a set of points with some room around. */
import type { Camera } from "./view.ts";

/** Nearer than this a few nodes look lost on a large screen. */
const NEAREST = 0.12;
const FARTHEST = 2;

/**
 * `points` are where the camera that shows everything would draw them, in pixels; `place` turns such a point into the
 * coordinates of the camera.
 */
export function fitCamera(
  points: readonly { x: number; y: number }[],
  { width, height, margin }: { width: number; height: number; margin: { x: number; y: number } },
  place: (point: { x: number; y: number }) => { x: number; y: number },
): Camera {
  if (points.length === 0) return { x: 0.5, y: 0.5, ratio: 1 };
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { x, y } of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  }
  const ratio = Math.max(
    (right - left) / Math.max(40, width - 2 * margin.x),
    (bottom - top) / Math.max(40, height - 2 * margin.y),
    NEAREST,
  );
  return { ...place({ x: (left + right) / 2, y: (top + bottom) / 2 }), ratio: Math.min(ratio, FARTHEST) };
}
