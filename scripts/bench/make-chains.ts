/**
 * Parts that follow each other in chains of up to twelve, each step with three companions, as a page would load them: the
 * records of one line. The same every time.
 *
 *   At every place one part follows another over the years. Each may be fitted where the one before it belongs, along with
 *   parts of three other places of its assembly, which ask for companions in turn; none may go back. Every second chain asks for an engine or for equipment besides.
 */
import type { Catalog } from "../../src/engine/records/catalog.ts";
import { change } from "../../src/engine/records/shapes/change.ts";
import type { Slice } from "../../src/engine/records/slice.ts";
import { random } from "./random.ts";

const LONGEST = 12;
const COMPANIONS = 3;
/** So many chains change together, such as all that is on one axle. */
const ASSEMBLY = 8;
const SYSTEM = "chains";

interface Chain {
  readonly component: string;
  readonly parts: readonly string[];
  /** Part by part the years in which it was built; one that no year is left for is for repair only. */
  readonly years: readonly (readonly [from: number, to: number])[];
  readonly condition: string;
}

export function makeChains(catalog: Catalog, parts: number): Slice {
  const { whole, percent, pick, some } = random(parts);
  const assembly = (own: Chain): Chain[] => {
    const start = Math.floor(chains.indexOf(own) / ASSEMBLY) * ASSEMBLY;
    return chains.slice(start, start + ASSEMBLY).filter((other) => other !== own);
  };
  const [line] = catalog.lines;
  const [first, last] = [catalog.years[0] ?? 0, catalog.years.at(-1) ?? 0];
  const chains: Chain[] = [];
  for (let made = 0; made < parts; ) {
    const length = Math.min(whole(2, LONGEST), parts - made);
    const number = (i: number): string => `P${String(made + i).padStart(6, "0")}`;
    const starts = Array.from({ length }, (_, i) => first + Math.floor((i * (last - first + 1)) / length));
    chains.push({
      component: `c${chains.length}`,
      parts: starts.map((_, i) => number(i)),
      years: starts.map((from, i) => [from, (starts[i + 1] ?? last + 1) - 1]),
      condition: percent(50) ? "" : `; ${pick(["eng=A", "eng=A,B", "eq=PB", "no=AC"])}`,
    });
    made += length;
  }
  /** Parts that stand at the same step of other chains of the assembly. */
  const companions = (own: Chain, step: number): string[] =>
    some(assembly(own), COMPANIONS).flatMap((other) => other.parts[Math.min(step, other.parts.length - 1)] ?? []);
  return {
    format: "yearmark-line/1",
    line: line?.id ?? "",
    systems: [
      {
        id: SYSTEM,
        name: "Chains",
        order: 1,
        components: chains.map(({ component }) => ({
          ...{ id: component, name: component, aliases: [], system: SYSTEM, under: undefined, places: [component] },
        })),
      },
    ],
    cautions: [],
    records: chains.map((chain, i) => recordOf(chain, i, companions)),
    parts: Object.fromEntries(
      chains.flatMap(({ component, parts: own }) => own.map((part) => [part, { name: `part ${part}`, component }])),
    ),
  };
}

function recordOf(chain: Chain, i: number, companions: (chain: Chain, step: number) => string[]) {
  const { component, parts, years, condition } = chain;
  const built = parts.flatMap((part, step) => {
    const [from, to] = years[step] as readonly [number, number];
    return from > to ? [] : [{ place: component, part, scope: `my=${from}-${to}` }];
  });
  const steps = parts.slice(1).map((part, step) => ({ part, before: parts[step] as string, step: step + 1 }));
  return change.parse({
    ...{ id: `R${i}`, title: `Chain ${i}`, issued: "1961-01-01", kinds: ["part"], components: [component] },
    ...{ starts: "year by year", scope: "all", story: "x" },
    built,
    supersedes: steps.map(({ part, before }) => ({ old: before, new: part })),
    "stands-in": steps.flatMap(({ part, before, step }) => [
      {
        ...{ part, for: before, verdict: "on-conditions", scope: `my>=1961${condition}` },
        with: [...new Set(companions(chain, step))],
      },
      { part: before, for: part, verdict: "must-not-be-used", why: "it is too short" },
    ]),
  });
}
