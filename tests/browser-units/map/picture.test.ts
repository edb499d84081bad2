import { expect, test } from "vitest";
import { notice } from "../../../src/browser/map/notice.ts";
import { passing } from "../../../src/browser/map/passing.ts";
import { type Picture, picture } from "../../../src/browser/map/picture.ts";
import { FIRST_VIEW, type View } from "../../../src/browser/map/view.ts";
import { MADE_UP, sorted } from "./made-up.ts";

function draw(change: Partial<View>, most?: number): Picture {
  const view = { ...FIRST_VIEW, ...change };
  return picture(MADE_UP, view, passing(MADE_UP, view), most);
}

test("everything is drawn, without the ties to lines and years", () => {
  const { nodes, edges, extent, places } = draw({});
  expect(nodes.size).toBe(MADE_UP.nodes.size);
  expect([...edges].some(({ relation }) => relation === "concerns")).toBe(false);
  expect(extent).toBe("everything");
  expect(places).toBeUndefined();
});

test("the ties to lines and years are drawn where they touch the selected node", () => {
  const { near } = draw({ focus: "year:2" });
  expect(sorted(near)).toEqual(["record:R2", "year:2"]);
});

test("the selection is lit up among the rest", () => {
  const { nodes, near, nearEdges } = draw({ focus: "part:1-100" });
  expect(nodes.size).toBe(MADE_UP.nodes.size);
  expect(sorted(near)).toEqual(["component:door", "part:1-100", "part:1-200"]);
  expect(nearEdges.size).toBe(2);
});

test("the neighbourhood alone has places of its own, the selected node in the middle", () => {
  const { nodes, near, places, extent } = draw({ focus: "part:1-100", only: true });
  expect(nodes).toEqual(near);
  expect(extent).toBe("around");
  expect(places?.get("part:1-100")).toEqual({ x: 0, y: 0 });
  expect(sorted(places?.keys() ?? [])).toEqual(sorted(nodes));
});

test("too many to draw: the neighbourhood of the selected node, and the page says so", () => {
  const drawn = draw({ focus: "part:1-100" }, 5);
  expect(drawn.extent).toBe("too-many");
  expect(drawn.nodes.size).toBe(3);
  expect(notice(drawn, 14)).toContain("14 nodes are too many");
});

test("too many to draw and nothing selected: systems, lines and years", () => {
  const drawn = draw({}, 5);
  expect(drawn.extent).toBe("overview");
  expect(sorted(drawn.nodes)).toEqual(["line:A", "line:B", "system:hob", "system:oven", "year:1", "year:2"]);
});

test("a neighbourhood that is itself too large is cut, the nearest stay", () => {
  const drawn = draw({ focus: "record:R2", only: true }, 3);
  expect(drawn.extent).toBe("cut");
  expect(drawn.nodes.size).toBe(3);
  expect(drawn.nodes.has("record:R2")).toBe(true);
});

const PROOF = ["part:2-100", "part:1-200", "part:1-100", "record:R2"];

test("an argument alone shows its nodes and what its own records state between them", () => {
  const { nodes, edges, near, nearEdges, extent, places } = draw({ focus: "part:2-100", proof: PROOF, only: true });
  expect([...nodes]).toEqual(PROOF);
  expect([...edges].map(({ relation }) => relation).sort()).toEqual(["brings", "goes-with"]);
  expect(near).toEqual(nodes);
  expect(nearEdges).toEqual(edges);
  expect(extent).toBe("around");
  expect(sorted(places?.keys() ?? [])).toEqual(sorted(nodes));
});

test("an argument stands where it stood, whichever of its nodes is selected", () => {
  const [first, second] = ["part:2-100", "record:R2"].map((focus) => draw({ focus, proof: PROOF, only: true }).places);
  expect(first).toEqual(second);
});

test("with the rest an argument is lit up in the whole graph", () => {
  const { nodes, edges, near, nearEdges, places } = draw({ focus: "part:2-100", proof: PROOF });
  expect(nodes.size).toBe(MADE_UP.nodes.size);
  expect(places).toBeUndefined();
  expect([...near]).toEqual(PROOF);
  expect(nearEdges.size).toBe(2);
  for (const edge of nearEdges) expect(edges.has(edge)).toBe(true);
});

test("a line or year that an argument names is drawn with its tie", () => {
  const { edges } = draw({ focus: "record:R1", proof: ["part:1-200", "record:R1", "line:A"], only: true });
  expect([...edges].map(({ relation }) => relation)).toEqual(["concerns"]);
});

test("too many to draw: the argument alone, and the page says so", () => {
  const drawn = draw({ focus: "part:2-100", proof: PROOF }, 5);
  expect([...drawn.nodes]).toEqual(PROOF);
  expect(notice(drawn, 14)).toContain("The argument alone is shown: 4 nodes");
});

test("every drawn relation joins drawn nodes", () => {
  for (const focus of MADE_UP.nodes.keys())
    for (const steps of [1, 2] as const) {
      const { nodes, edges } = draw({ focus, steps, only: true });
      for (const { source, target } of edges) expect(nodes.has(source) && nodes.has(target)).toBe(true);
    }
});
