import { expect, test } from "vitest";
import { passing } from "../../../src/browser/map/passing.ts";
import { FIRST_VIEW, type View } from "../../../src/browser/map/view.ts";
import { MADE_UP, sorted } from "./made-up.ts";

const nodesOf = (view: Partial<View>): string[] => sorted(passing(MADE_UP, { ...FIRST_VIEW, ...view }).nodes);
const edgesOf = (view: Partial<View>): string[] =>
  [...passing(MADE_UP, { ...FIRST_VIEW, ...view }).edges].map(
    ({ source, relation, target }) => `${source} ${relation} ${target}`,
  );

test("without filters everything passes", () => {
  expect(nodesOf({})).toEqual(sorted(MADE_UP.nodes.keys()));
  expect(edgesOf({})).toHaveLength(MADE_UP.document.edges.length);
});

test("a hidden kind takes its relations with it", () => {
  expect(nodesOf({ hiddenKinds: ["part"] }).some((key) => key.startsWith("part:"))).toBe(false);
  expect(edgesOf({ hiddenKinds: ["part"] }).some((edge) => edge.includes("part:"))).toBe(false);
});

test("a hidden relation leaves its ends", () => {
  expect(nodesOf({ hiddenRelations: ["supersedes"] })).toEqual(nodesOf({}));
  expect(edgesOf({ hiddenRelations: ["supersedes"] }).some((edge) => edge.includes("supersedes"))).toBe(false);
});

test("a chosen system leaves what is of it, the lines and years, and what cites it", () => {
  expect(nodesOf({ systems: ["hob"] })).toEqual([
    "bulletin:N",
    "component:ring",
    "line:A",
    "line:B",
    "part:2-100",
    "record:R2",
    "system:hob",
    "year:1",
    "year:2",
  ]);
});

test("a bulletin that cites nothing of a chosen system is left out", () => {
  expect(nodesOf({ systems: ["oven"] })).not.toContain("bulletin:N");
});

test("a chosen year leaves what its records speak of, up to the systems", () => {
  expect(nodesOf({ years: [1] })).toEqual([
    "component:door",
    "line:A",
    "line:B",
    "part:1-100",
    "part:1-200",
    "record:R1",
    "system:oven",
    "year:1",
  ]);
});

test("a relation that only a record of another year states does not pass", () => {
  const edges = edgesOf({ years: [2] });
  expect(edges).toContain("part:2-100 goes-with part:1-200");
  expect(edges).not.toContain("part:1-200 supersedes part:1-100");
});

test("a line and a year must both hold for one record", () => {
  expect(nodesOf({ lines: ["B"], years: [1] }).filter((key) => key.startsWith("record:"))).toEqual([]);
});

test("parts of a year can be seen without the records that speak of them", () => {
  expect(nodesOf({ years: [1], hiddenKinds: ["record"] })).toContain("part:1-100");
});

test("no filter hides what an answer rests on", () => {
  const proof = ["part:1-200", "part:1-100", "record:R1"];
  const view = {
    focus: "part:1-200",
    proof,
    hiddenKinds: ["part", "record"],
    hiddenRelations: ["supersedes"],
    systems: ["hob"],
    years: [2],
  } as const;
  expect(nodesOf(view)).toEqual(expect.arrayContaining(proof));
  expect(edgesOf(view)).toContain("part:1-200 supersedes part:1-100");
});

test("the selected node passes whatever the filters say", () => {
  expect(nodesOf({ focus: "part:1-100", hiddenKinds: ["part"], systems: ["hob"] })).toContain("part:1-100");
});
