import { expect, test } from "vitest";
import { neighbourhood } from "../../../src/browser/map/neighbourhood.ts";
import { ringPlaces } from "../../../src/browser/map/ring-places.ts";
import { edge, graphOf, MADE_UP, node } from "./made-up.ts";

test("no two nodes stand at one place", () => {
  for (const start of MADE_UP.nodes.keys()) {
    const around = neighbourhood(MADE_UP, { start, steps: 2, allowed: () => true });
    const places = ringPlaces(MADE_UP, { start, ...around });
    expect(places.size).toBe(around.nodes.size);
    const written = [...places.values()].map(({ x, y }) => `${x.toFixed(6)} ${y.toFixed(6)}`);
    expect(new Set(written).size).toBe(places.size);
  }
});

test("neighbours on a ring stand at least one unit apart, however many", () => {
  const parts = Array.from({ length: 60 }, (_, i) => node("part", `${i}`));
  const graph = graphOf(
    [node("component", "c"), ...parts],
    parts.map(({ key }) => edge(key, "belongs-to", "component:c")),
  );
  const around = neighbourhood(graph, { start: "component:c", steps: 1, allowed: () => true });
  const places = [...ringPlaces(graph, { start: "component:c", ...around }).values()].slice(1);
  for (const [i, { x, y }] of places.entries()) {
    const next = places[(i + 1) % places.length];
    expect(Math.hypot(x - (next?.x ?? 0), y - (next?.y ?? 0))).toBeGreaterThan(0.99);
  }
});

test("on a ring that is small enough for words no line stands upright", () => {
  for (let count = 1; count <= 24; count++) {
    const parts = Array.from({ length: count }, (_, i) => node("part", `${i}`));
    const graph = graphOf(
      [node("component", "c"), ...parts],
      parts.map(({ key }) => edge(key, "belongs-to", "component:c")),
    );
    const around = neighbourhood(graph, { start: "component:c", steps: 1, allowed: () => true });
    for (const [key, { x }] of ringPlaces(graph, { start: "component:c", ...around }))
      if (key !== "component:c") expect(Math.abs(x)).toBeGreaterThan(0.01);
  }
});
