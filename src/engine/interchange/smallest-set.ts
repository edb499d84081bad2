/**
 * The smallest set of parts that has all that its parts ask for, and in which no two stand against each other.
 *
 *   A part of the set asks for companions in one or more ways; one of these ways must be in the set with all its companions.
 *   A part that asks for nothing has no ways.
 *   Of two parts that clash the set has one at most; a part that clashes with itself is in no set.
 *   Of several smallest sets the one whose places in the given order have the least sum.
 *
 * That is a small integer program; yalps, a package, solves it exactly. What it returns is looked over before it is believed.
 * Cost: parts with one way are settled without a search; each alternative may double it, which a few hundred parts bear.
 */
import { type Constraint, solve } from "yalps";

export interface SetQuestion {
  /** All parts that may be in the set, in the order that breaks ties. */
  readonly parts: readonly string[];
  /** Parts that must be in it. */
  readonly wanted: readonly string[];
  readonly ways: (part: string) => readonly (readonly string[])[];
  readonly clashes: readonly (readonly [string, string])[];
}

/** The parts in the given order; nothing where there is no such set. */
export function smallestSet(question: SetQuestion): string[] | undefined {
  const settled = settle(question);
  if (!settled) return undefined;
  const open = openParts(question, settled);
  const chosen = open.length === 0 ? new Set<string>() : choose(question, settled, open);
  if (!chosen) return undefined;
  const found = question.parts.filter((part) => settled.inside.has(part) || chosen.has(part));
  if (!isClosed(question, found)) throw new Error(`No smallest set was found for ${question.wanted.join(", ")}.`);
  return found;
}

interface Settled {
  /** Parts that are in every such set, and parts that are in none. */
  readonly inside: ReadonlySet<string>;
  readonly outside: ReadonlySet<string>;
}

/** What follows without a choice; nothing where there can be no such set. */
function settle({ parts, wanted, ways, clashes }: SetQuestion): Settled | undefined {
  const known = new Set(parts);
  const inside = new Set(wanted);
  const outside = new Set(clashes.flatMap(([a, b]) => (a === b ? [a] : [])));
  if (wanted.some((part) => !known.has(part))) return undefined;
  for (let before = -1; before !== inside.size + outside.size; ) {
    before = inside.size + outside.size;
    for (const [a, b] of clashes) {
      if (inside.has(a)) outside.add(b);
      if (inside.has(b)) outside.add(a);
    }
    for (const part of parts) {
      const own = ways(part);
      if (own.length === 0 || outside.has(part)) continue;
      const left = own.filter((companions) => companions.every((it) => known.has(it) && !outside.has(it)));
      if (left.length === 0) outside.add(part);
      else if (left.length === 1 && inside.has(part)) for (const it of left[0] as readonly string[]) inside.add(it);
    }
    if ([...inside].some((part) => outside.has(part))) return undefined;
  }
  return { inside, outside };
}

/** The ways of a part that are still open, without what is in the set anyway; none where it asks for nothing more. */
function openWays({ ways }: SetQuestion, { inside, outside }: Settled, part: string): string[][] {
  const own = ways(part);
  const left = own
    .filter((companions) => companions.every((it) => !outside.has(it)))
    .map((companions) => companions.filter((it) => !inside.has(it)));
  return left.some((companions) => companions.length === 0) ? [] : left;
}

/** Parts about which there is a choice: those that lie on an open way from the parts of the set, in the given order. */
function openParts(question: SetQuestion, settled: Settled): string[] {
  const reached = new Set<string>();
  const todo = [...settled.inside];
  for (const part of todo)
    for (const it of openWays(question, settled, part).flat()) {
      if (reached.has(it)) continue;
      reached.add(it);
      todo.push(it);
    }
  return question.parts.filter((part) => reached.has(part));
}

/** The choice as an integer program: as few of the open parts as will do. */
function choose(question: SetQuestion, settled: Settled, open: readonly string[]): Set<string> | undefined {
  const constraints = new Map<string, Constraint>();
  const variables = new Map<string, Map<string, number>>();
  // Far below one in all, so that it never makes a larger set the cheaper one.
  const tie = 1 / (4 * (open.length + 1) ** 2);
  open.forEach((part, i) => {
    variables.set(`part ${part}`, new Map([["cost", 1 + tie * i]]));
  });
  const add = (constraint: string, variable: string, coefficient: number): void => {
    variables.get(variable)?.set(constraint, coefficient);
  };
  for (const part of [...settled.inside, ...open]) {
    const own = openWays(question, settled, part);
    if (own.length === 0) continue;
    const asks = `asks ${part}`;
    constraints.set(asks, { min: settled.inside.has(part) ? 1 : 0 });
    add(asks, `part ${part}`, -1);
    own.forEach((companions, w) => {
      const way = `way ${part} ${w}`;
      variables.set(way, new Map([[asks, 1]]));
      for (const it of companions) {
        constraints.set(`${way} needs ${it}`, { min: 0 });
        add(`${way} needs ${it}`, way, -1);
        add(`${way} needs ${it}`, `part ${it}`, 1);
      }
    });
  }
  question.clashes.forEach(([a, b], i) => {
    if (!variables.has(`part ${a}`) || !variables.has(`part ${b}`)) return;
    constraints.set(`clash ${i}`, { max: 1 });
    add(`clash ${i}`, `part ${a}`, 1);
    add(`clash ${i}`, `part ${b}`, 1);
  });
  const { status, variables: values } = solve(
    { direction: "minimize", objective: "cost", constraints, variables, binaries: true },
    { tolerance: 0, maxIterations: Number.POSITIVE_INFINITY },
  );
  if (status === "infeasible") return undefined;
  if (status !== "optimal") throw new Error(`No smallest set was found for ${question.wanted.join(", ")}: ${status}.`);
  return new Set(values.flatMap(([name, value]) => (name.startsWith("part ") && value > 0.5 ? [name.slice(5)] : [])));
}

/** Whether a set has all that its parts ask for, and no two of it clash. */
export function isClosed({ wanted, ways, clashes }: SetQuestion, found: readonly string[]): boolean {
  const has = new Set(found);
  return (
    wanted.every((part) => has.has(part)) &&
    found.every((part) => {
      const own = ways(part);
      return own.length === 0 || own.some((companions) => companions.every((it) => has.has(it)));
    }) &&
    clashes.every(([a, b]) => !(has.has(a) && has.has(b)))
  );
}
