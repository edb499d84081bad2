import fc from "fast-check";
import { expect, test } from "vitest";
import { argumentPlaces } from "../../../src/browser/map/argument-places.ts";
import type { Place } from "../../../src/browser/map/ring-places.ts";
import { edge, graphOf, node } from "./made-up.ts";

/** Lines between parts 0, 1, 2 ..., and so many records that each speak of every part. */
function placed(lines: readonly (readonly [number, number])[], parts: number, records: number) {
  const nodes = [
    ...Array.from({ length: parts }, (_, i) => node("part", `${i}`)),
    ...Array.from({ length: records }, (_, i) => node("record", `R${i}`)),
  ];
  const stated = lines.map(([a, b]) => edge(`part:${a}`, "stands-in-for", `part:${b}`));
  const graph = graphOf(nodes, stated);
  return argumentPlaces(graph, { nodes: new Set(nodes.map(({ key }) => key)), edges: new Set(stated) });
}

const part = (places: ReadonlyMap<string, Place>, i: number): Place => places.get(`part:${i}`) ?? { x: 0, y: 0 };

test("a chain goes from side to side and down, the part asked at the top, the records beneath", () => {
  const places = placed([[0, 1], [1, 2], [2, 3]], 4, 2); // biome-ignore format: a chain
  const chain = [0, 1, 2, 3].map((i) => part(places, i));
  expect(chain.map(({ x }) => Math.sign(x))).toEqual([-1, 1, -1, 1]);
  const heights = [
    ...chain.map(({ y }) => y),
    Math.max(...["R0", "R1"].map((id) => places.get(`record:${id}`)?.y ?? 0)),
  ];
  expect(heights).toEqual(heights.toSorted((a, b) => b - a));
  expect(new Set(heights).size).toBe(5);
});

test("it does not matter in which direction a statement is made", () => {
  expect(placed([[1, 0]], 2, 1)).toEqual(placed([[0, 1]], 2, 1));
});

test("what goes along stands on the side of what is replaced", () => {
  const places = placed([[0, 1], [0, 2]], 3, 0); // biome-ignore format: a fan
  expect([0, 1, 2].map((i) => Math.sign(part(places, i).x))).toEqual([-1, 1, 1]);
});

test("a part that no statement joins stands across from the part asked", () => {
  const places = placed([], 2, 1);
  expect([0, 1].map((i) => Math.sign(part(places, i).x))).toEqual([-1, 1]);
});

test("no line runs over a third node, whatever joins what", () => {
  const lines = fc.array(fc.tuple(fc.nat(7), fc.nat(7)), { maxLength: 12 });
  fc.assert(
    fc.property(lines, fc.nat(4), (made, records) => {
      const places = [...placed(made, 8, records).values()];
      for (const [i, a] of places.entries())
        for (const [j, b] of places.entries())
          for (const [k, c] of places.entries())
            if (i < j && k !== i && k !== j) expect(apart(a, b, c)).toBeGreaterThan(0.01);
    }),
    { numRuns: 30 },
  );
});

/** How far a point is from the line between two others. */
function apart(a: Place, b: Place, point: Place): number {
  const [x, y] = [b.x - a.x, b.y - a.y];
  const t = Math.min(1, Math.max(0, ((point.x - a.x) * x + (point.y - a.y) * y) / (x * x + y * y)));
  return Math.hypot(point.x - a.x - t * x, point.y - a.y - t * y);
}
