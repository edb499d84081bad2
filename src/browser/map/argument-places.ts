/** Places for an argument that is drawn alone: it reads from the part asked, at the top, down to the records. */
import type { MapEdge, MapGraph } from "./map-graph.ts";
import type { Place } from "./ring-places.ts";

/** Half the width of the oval. */
const WIDTH = 1.3;
/** From the part asked down, at most, to the last of the parts. */
const HEIGHT = 2.4;
/** How far the oval reaches above the part asked, and below the last of the parts. */
const ABOVE = 0.6;
const BELOW = 1.1;
/** How much of the oval's width there is for what stands beneath. */
const BENEATH = 0.7;

/**
 *      asked ─┐                  parts: left what is an even number of steps from the part asked, right what is an odd
 *             └──── b            number, so that a line crosses from side to side and has room for its words. A part
 *         c ──┘                  that no line reaches stands across from the part asked.
 *
 *          R1    R2              what is no part: beneath
 *
 * All stand on one oval, so that no line between two nodes runs over a third.
 */
export function argumentPlaces(
  graph: MapGraph,
  { nodes, edges }: { nodes: ReadonlySet<string>; edges: ReadonlySet<MapEdge> },
): Map<string, Place> {
  const isPart = (key: string): boolean => graph.nodes.get(key)?.kind === "part";
  const steps = stepsFromFirst([...nodes].filter(isPart), edges);
  const sides = { left: [] as string[], right: [] as string[] };
  for (const [key, step] of steps) sides[step % 2 === 0 ? "left" : "right"].push(key);
  const gap = HEIGHT / Math.max(1, sides.left.length, sides.right.length);
  const down = (side: string, i: number): number => -gap * (side === "left" ? i : i + 0.5);
  const lowest = Math.min(0, down("left", sides.left.length - 1), down("right", sides.right.length - 1));
  const half = (ABOVE - lowest + BELOW) / 2;
  const middle = ABOVE - half;
  const places = new Map<string, Place>();
  for (const [side, keys] of Object.entries(sides))
    for (const [i, key] of keys.entries()) {
      const y = down(side, i);
      const x = WIDTH * Math.sqrt(1 - ((y - middle) / half) ** 2);
      places.set(key, { x: side === "left" ? -x : x, y });
    }
  const others = [...nodes].filter((key) => !isPart(key));
  for (const [i, key] of others.entries()) {
    const across = BENEATH * ((2 * (i + 0.5)) / others.length - 1);
    places.set(key, { x: WIDTH * across, y: middle - half * Math.sqrt(1 - across ** 2) });
  }
  return places;
}

/** How many steps lead from the first part to each of them, in the order in which they are reached. */
function stepsFromFirst(parts: readonly string[], edges: ReadonlySet<MapEdge>): Map<string, number> {
  const steps = new Map<string, number>();
  for (const [i, start] of parts.entries()) {
    if (steps.has(start)) continue;
    steps.set(start, i === 0 ? 0 : 1);
    const waiting = [start];
    // A list that grows while it is walked is walked to its new end.
    for (const key of waiting)
      for (const other of parts)
        if (!steps.has(other) && areJoined(edges, key, other)) {
          steps.set(other, (steps.get(key) ?? 0) + 1);
          waiting.push(other);
        }
  }
  return steps;
}

function areJoined(edges: ReadonlySet<MapEdge>, a: string, b: string): boolean {
  for (const { source, target } of edges)
    if ((source === a && target === b) || (source === b && target === a)) return true;
  return false;
}
