/**
 * Paths judged from outside. Source: cytoscape (npm, its graph algorithms: aStar, bfs, successors, outgoers and
 * tarjanStronglyConnectedComponents), which is given what was drawn and nothing of ours.
 *
 *   One part where another belongs: every permission is an arrow from the part to the one it may stand in for.
 *   The current number: every delivery rule is an arrow from the old number to the new one.
 *
 * All is asked for one car. Statements about other cars are drawn too, and cytoscape does not see them.
 */
import cytoscape from "cytoscape";
import fc from "fast-check";
import { expect, test } from "vitest";
import { currentOf } from "../../src/engine/interchange/current.ts";
import { openPartIndex } from "../../src/engine/interchange/part-index.ts";
import { type Chain, isPermitted, standsFor } from "../../src/engine/interchange/stands-for.ts";
import type { Catalog } from "../../src/engine/records/catalog.ts";
import type { StandInVerdict, Statement } from "../../src/engine/records/statement.ts";
import { ALL } from "../../src/engine/scope/diagram.ts";
import { readScope } from "../../src/engine/scope/read-scope.ts";
import type { Scope } from "../../src/engine/scope/scope.ts";
import { SEED } from "../helpers/seed.ts";
import { tractorSpace } from "../helpers/tractor-space.ts";

const space = tractorSpace();
const CAR = read("line=B; my=1959; plant=K").cars;
/** Scopes, by whether the car is inside. */
const SCOPES = new Map<string | undefined, boolean>([
  [undefined, true],
  ["line=B", true],
  ["line=B,M; my=1958-1960", true],
  ["line=H", false],
  ["my>=1960 || plant=D2", false],
]);

function read(text: string): Scope {
  const result = readScope(space, text);
  if ("slips" in result) throw new Error(result.slips[0]?.message);
  return result.scope;
}

/** An empty place: nothing leads on from it. */
const NOTHING = "nothing";

interface Arrow {
  readonly from: string;
  readonly to: string;
  readonly scope: string | undefined;
  readonly verdict: StandInVerdict;
}

const PERMISSIONS: readonly StandInVerdict[] = ["yes", "yes", "on-conditions"];
const ANYTHING: readonly StandInVerdict[] = [
  ...PERMISSIONS,
  ...PERMISSIONS,
  ...PERMISSIONS,
  "does-not-go-on",
  "must-not-be-used",
];

interface World {
  readonly parts: readonly string[];
  readonly arrows: readonly Arrow[];
}

/** From some parts to some more, so many arrows a part. */
function worlds(
  [least, most]: readonly [number, number],
  perPart: number,
  verdicts: readonly StandInVerdict[],
): fc.Arbitrary<World> {
  return fc.integer({ min: least, max: most }).chain((size) => {
    const parts = Array.from({ length: size }, (_, i) => `P${i}`);
    const scopes = [...SCOPES.keys()];
    const arrow = fc
      .record({
        at: fc.nat(size - 1),
        // Mostly a little way on, so that there are long chains and ways around; now and then back, to itself or to nothing.
        ahead: fc.constantFrom(1, 1, 2, 2, 3, 4, size - 1, size, undefined),
        scope: fc.oneof({ weight: 3, arbitrary: fc.constant(undefined) }, fc.constantFrom(...scopes)),
        verdict: fc.constantFrom(...verdicts),
      })
      .map(({ at, ahead, ...it }): Arrow => {
        const to = ahead === undefined ? NOTHING : (parts[(at + ahead) % size] as string);
        return { from: parts[at] as string, to, ...it };
      });
    const count = Math.round(size * perPart);
    return fc.record({
      parts: fc.constant(parts),
      arrows: fc.array(arrow, { minLength: Math.floor(count * 0.75), maxLength: count, size: "max" }),
    });
  });
}

function open(statements: readonly Statement[]) {
  const records = new Map([["R1", { statements }]]);
  return openPartIndex({ space, buildable: ALL, records, places: new Map(), parts: new Map() } as unknown as Catalog);
}

/** The stand-ins of a world for the engine; a statement's number there is that of its arrow. */
function openStandIns({ arrows }: World) {
  return open(
    arrows.map(({ from, to, scope, verdict }, index) => ({
      ...{ type: "stands-in", record: "R1", index, part: from, for: to === NOTHING ? undefined : to, verdict },
      ...{ with: [], do: undefined, why: undefined, scope: scope === undefined ? undefined : read(scope) },
    })),
  );
}

function openRules({ arrows }: World) {
  return open(
    arrows.map(({ from, to, scope }, index) => ({
      ...{ type: "supersedes", record: "R1", index, old: from, new: to, with: [] },
      scope: scope === undefined ? undefined : read(scope),
    })),
  );
}

/** What cytoscape sees: the arrows that hold for the car, each by its number. */
function drawn({ parts, arrows }: World, keep: (arrow: Arrow) => boolean): cytoscape.Core {
  return cytoscape({
    headless: true,
    elements: [
      ...[...parts, NOTHING].map((id) => ({ data: { id } })),
      ...arrows.flatMap((arrow, i) =>
        SCOPES.get(arrow.scope) && keep(arrow)
          ? [{ data: { id: `${i}`, source: arrow.from, target: arrow.to, verdict: arrow.verdict } }]
          : [],
      ),
    ],
  });
}

function permits({ verdict }: Arrow): boolean {
  return verdict === "yes" || verdict === "on-conditions";
}

/** Every part where every other one, or nothing, belongs. */
function pairsOf({ parts }: World): [string, string][] {
  return parts.flatMap((from) =>
    [...parts, NOTHING].filter((to) => to !== from).map((to): [string, string] => [from, to]),
  );
}

function stepsTo(graph: cytoscape.Core, from: string, to: string): number | undefined {
  const found = graph
    .elements()
    .aStar({ root: graph.getElementById(from), goal: graph.getElementById(to), directed: true });
  return found.found ? found.distance : undefined;
}

/** By node the number of its shortest paths from one: every arrow that leads a step deeper carries on those of its source. */
function shortestPaths(graph: cytoscape.Core, from: string): Map<string, number> {
  const depths = new Map<string, number>();
  const paths = new Map([[from, 1]]);
  graph.elements().bfs({
    roots: graph.getElementById(from),
    directed: true,
    visit: (node, _edge, _previous, _i, depth) => {
      depths.set(node.id(), depth);
      for (const edge of node.incomers("edge").edges())
        if (depths.get(edge.source().id()) === depth - 1)
          paths.set(node.id(), (paths.get(node.id()) ?? 0) + (paths.get(edge.source().id()) ?? 0));
    },
  });
  return paths;
}

interface Path {
  readonly ids: readonly number[];
  readonly nodes: readonly string[];
}

/** Every path from one node to another that meets no node twice, as numbers of arrows. */
function simplePaths(node: cytoscape.NodeSingular, to: string, before: readonly string[]): Path[] {
  const nodes = [...before, node.id()];
  if (node.id() === to) return [{ ids: [], nodes }];
  return node
    .outgoers("edge")
    .toArray()
    .map((edge) => edge as cytoscape.EdgeSingular)
    .filter((edge) => !nodes.includes(edge.target().id()))
    .flatMap((edge) =>
      simplePaths(edge.target(), to, nodes).map((path) => ({ ...path, ids: [Number(edge.id()), ...path.ids] })),
    );
}

function lengthOf(paths: readonly Path[]): number {
  return Math.min(...paths.map(({ ids }) => ids.length));
}

/** The verdict of some paths, and the shortest ones. */
function shortestOf({ arrows }: World, paths: readonly Path[]): [verdict: string, ways: string[]] {
  const ways = paths.map(({ ids }) => ids).filter((ids) => ids.length === lengthOf(paths));
  const isPlain = ways.some((ids) => ids.every((id) => arrows[id]?.verdict === "yes"));
  return [ways.length === 0 ? "not on record" : isPlain ? "yes" : "yes, on conditions", inOrder(ways)];
}

function inOrder(ways: readonly (readonly number[])[]): string[] {
  return ways.map((way) => way.join(" ")).sort();
}

function numbersOf(ways: readonly Chain[]): string[] {
  return inOrder(ways.map((way) => way.map((step) => step.index)));
}

test("without refusals a part may stand in exactly where a path leads, by each of the shortest ones", () => {
  const counts = { pairs: 0, apart: 0, oneStep: 0, chains: 0, severalWays: 0, longest: 0 };
  for (const world of fc.sample(worlds([4, 14], 1.8, PERMISSIONS), { seed: SEED, numRuns: 60 })) {
    const index = openStandIns(world);
    const graph = drawn(world, () => true);
    const plain = drawn(world, ({ verdict }) => verdict === "yes");
    const paths = new Map(world.parts.map((part) => [part, shortestPaths(graph, part)]));
    for (const [from, to] of pairsOf(world)) {
      const [piece, ...others] = standsFor(index, from, to === NOTHING ? undefined : to, CAR, undefined);
      const steps = stepsTo(graph, from, to);
      const isPlain = steps !== undefined && stepsTo(plain, from, to) === steps;
      expect(
        {
          pieces: 1 + others.length,
          verdict: piece?.verdict,
          ways: piece?.ways.length,
          lengths: [...new Set(piece?.ways.map((way) => way.length))],
        },
        JSON.stringify({ from, to, ...world }),
      ).toEqual({
        pieces: 1,
        verdict: steps === undefined ? "not on record" : isPlain ? "yes" : "yes, on conditions",
        ways: paths.get(from)?.get(to) ?? 0,
        lengths: steps === undefined ? [] : [steps],
      });
      counts.pairs++;
      counts[steps === undefined ? "apart" : steps === 1 ? "oneStep" : "chains"]++;
      if ((piece?.ways.length ?? 0) > 1) counts.severalWays++;
      counts.longest = Math.max(counts.longest, steps ?? 0);
    }
  }
  console.log(`paths without refusals: seed ${SEED}, ${JSON.stringify(counts)}`);
  expect(counts.pairs).toBeGreaterThan(2000);
  expect(Math.min(counts.apart, counts.chains)).toBeGreaterThan(500);
  expect(counts.severalWays).toBeGreaterThan(100);
});

test("with refusals it may by the shortest of all paths on which no part is refused where a later one belongs", () => {
  const counts = { pairs: 0, refused: 0, apart: 0, cutOff: 0, chains: 0, longerWay: 0, oneMore: 0 };
  for (const world of fc.sample(worlds([6, 8], 4.5, ANYTHING), { seed: SEED, numRuns: 55 })) {
    const index = openStandIns(world);
    const graph = drawn(world, permits);
    const refusals = drawn(world, (arrow) => !permits(arrow));
    const isRefused = (from: string, to: string): boolean =>
      refusals.getElementById(from).edgesTo(refusals.getElementById(to)).nonempty();
    const isOpen = (nodes: readonly string[]): boolean =>
      !nodes.some((from, i) => nodes.slice(i + 1).some((to) => isRefused(from, to)));
    for (const [from, to] of pairsOf(world)) {
      const found = standsFor(index, from, to === NOTHING ? undefined : to, CAR, undefined);
      const [piece] = found;
      const where = JSON.stringify({ from, to, ...world });
      expect(found.length, where).toBe(1);
      counts.pairs++;
      const against = refusals.getElementById(from).edgesTo(refusals.getElementById(to));
      if (against.nonempty()) {
        const hard = against.filter('[verdict = "does-not-go-on"]').nonempty();
        expect(piece?.verdict, where).toBe(hard ? "does not go on" : "goes on but must not be used");
        counts.refused++;
        continue;
      }
      const steps = stepsTo(graph, from, to);
      if (piece && isPermitted(piece.verdict)) expect(steps, where).toBeDefined();
      const ways = simplePaths(graph.getElementById(from), to, []).filter(({ nodes }) => isOpen(nodes));
      const expected = shortestOf(world, ways);
      expect([piece?.verdict, numbersOf(piece?.ways ?? [])], where).toEqual(expected);
      const shortest = lengthOf(ways);
      // The engine goes on to longer ways where all of these are closed; what is said of the two by name it never goes around.
      if (shortest > 1 && ways.length > 0) {
        const longer = ways.filter(({ ids }) => ids.length > shortest);
        const [next] = standsFor(index, from, to === NOTHING ? undefined : to, CAR, undefined, shortest);
        expect([next?.verdict, numbersOf(next?.ways ?? [])], where).toEqual(shortestOf(world, longer));
        if (longer.length > 0) counts.oneMore++;
      }
      if (steps === undefined) counts.apart++;
      else if (ways.length === 0) counts.cutOff++;
      else if (shortest > steps) counts.longerWay++;
      else if (shortest > 1) counts.chains++;
    }
  }
  console.log(`paths with refusals: seed ${SEED}, ${JSON.stringify(counts)}`);
  expect(counts.pairs).toBeGreaterThan(2000);
  expect(Math.min(counts.refused, counts.cutOff, counts.chains)).toBeGreaterThan(100);
  expect(counts.longerWay).toBeGreaterThan(5);
  expect(counts.oneMore).toBeGreaterThan(100);
}, 60_000);

/** Where rules run in circles: groups of numbers that all lead to each other, and a number with a rule to itself. */
function circlesOf(elements: cytoscape.CollectionReturnValue): string[] {
  // Its types say one collection; there is one for each component.
  const groups = elements.tarjanStronglyConnectedComponents()
    .components as unknown as cytoscape.CollectionReturnValue[];
  return groups
    .filter((group) => group.nodes().length > 1 || group.nodes().edgesWith(group.nodes()).nonempty())
    .map((group) => idsOf(group.nodes()).join(" "))
    .sort();
}

/** Not `leaves()`: that takes no notice of a rule from a number to itself. */
function sinksOf(elements: cytoscape.CollectionReturnValue): string[] {
  return idsOf(elements.nodes().filter((node) => node.outdegree(true) === 0));
}

function idsOf(nodes: cytoscape.NodeCollection): string[] {
  return nodes.map((node) => node.id()).sort();
}

test("where each number has one rule at most, the end of the rules is the sink, and a circle the strong component", () => {
  const counts = { numbers: 0, current: 0, chains: 0, circles: 0, longest: 0 };
  for (const drawing of fc.sample(worlds([4, 14], 1.4, ["yes"]), { seed: SEED, numRuns: 100 })) {
    const arrows = drawing.arrows.filter(
      (arrow, i) => arrow.to !== NOTHING && drawing.arrows.findIndex((it) => it.from === arrow.from) === i,
    );
    const world = { ...drawing, arrows };
    const index = openRules(world);
    const graph = drawn(world, () => true);
    for (const part of world.parts) {
      const node = graph.getElementById(part);
      const reached = node.union(node.successors());
      const [sink] = sinksOf(reached);
      const [end, ...others] = currentOf(index, part, CAR);
      const where = JSON.stringify({ part, ...world });
      expect([others, end?.circle], where).toEqual([[], sink === undefined]);
      counts.numbers++;
      const numbers = [part, ...(end?.steps ?? []).map((step) => step.new)];
      if (sink === undefined) {
        // From the last number its rule leads back to where the circle begins.
        const [back] = idsOf(
          graph
            .getElementById(end?.part ?? "")
            .outgoers("node")
            .nodes(),
        );
        const round = numbers.slice(numbers.indexOf(back ?? ""));
        expect([round.sort().join(" ")], where).toEqual(circlesOf(reached));
        counts.circles++;
      } else {
        expect([end?.part, end?.steps.length], where).toEqual([sink, stepsTo(graph, part, sink)]);
        expect(idsOf(reached.nodes()), where).toEqual(numbers.sort());
        counts[numbers.length === 1 ? "current" : "chains"]++;
        counts.longest = Math.max(counts.longest, numbers.length - 1);
      }
    }
  }
  console.log(`current by single rules: seed ${SEED}, ${JSON.stringify(counts)}`);
  expect(counts.numbers).toBeGreaterThan(500);
  expect(Math.min(counts.chains, counts.circles)).toBeGreaterThan(100);
});

test("where rules split and merge, the ends are all sinks, and the circles all strong components reached", () => {
  const counts = { numbers: 0, oneEnd: 0, severalEnds: 0, circles: 0, circlesAndEnds: 0 };
  for (const drawing of fc.sample(worlds([4, 10], 1.3, ["yes"]), { seed: SEED, numRuns: 200 })) {
    const world = { ...drawing, arrows: drawing.arrows.filter(({ to }) => to !== NOTHING) };
    const index = openRules(world);
    const graph = drawn(world, () => true);
    for (const part of world.parts) {
      const node = graph.getElementById(part);
      const reached = node.union(node.successors());
      const sinks = sinksOf(reached);
      const circles = circlesOf(reached);
      const found = currentOf(index, part, CAR);
      const partsOf = (circle: boolean): string[] => [
        ...new Set(found.filter((it) => it.circle === circle).map((it) => it.part)),
      ];
      // Each circle is named by the numbers in which the walks through it ended.
      const named = partsOf(true).map((end) => circles.find((circle) => circle.split(" ").includes(end)) ?? end);
      const where = JSON.stringify({ part, ...world });
      expect([partsOf(false).sort(), [...new Set(named)].sort()], where).toEqual([sinks, circles]);
      counts.numbers++;
      if (circles.length > 0) counts[sinks.length > 0 ? "circlesAndEnds" : "circles"]++;
      else counts[sinks.length > 1 ? "severalEnds" : "oneEnd"]++;
    }
  }
  console.log(`current by any rules: seed ${SEED}, ${JSON.stringify(counts)}`);
  expect(counts.numbers).toBeGreaterThan(500);
  expect(Math.min(counts.severalEnds, counts.circles, counts.circlesAndEnds)).toBeGreaterThan(40);
});
