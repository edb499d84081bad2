/**
 * Random small worlds of parts over 36 kinds of tractors, and the slow twin of the interchange: for one kind at a time, by plain
 * loops over what was drawn, without sets.
 */
import fc from "fast-check";
import { openPartIndex, type PartIndex } from "../../src/engine/interchange/part-index.ts";
import type { Catalog } from "../../src/engine/records/catalog.ts";
import type { Statement } from "../../src/engine/records/statement.ts";
import { ALL, type CarSet } from "../../src/engine/scope/diagram.ts";
import { readScope } from "../../src/engine/scope/read-scope.ts";
import type { Scope } from "../../src/engine/scope/scope.ts";
import { tractorSpace } from "./tractor-space.ts";

const LINES = ["B", "H", "M"];
const YEARS = [1957, 1958, 1959, 1960, 1961, 1962];
const PLANTS = ["K", "D2"];
export const KINDS = LINES.flatMap((line) => YEARS.flatMap((my) => PLANTS.map((plant) => ({ line, my, plant }))));
export const PARTS = ["P1", "P2", "P3", "P4", "P5"];
export const PLACES = ["front", "rear"];

/** Which of the 36 kinds a statement is about; nothing for a statement without a scope. */
export type Drawn = ReadonlySet<number> | undefined;
export interface DrawnStandIn {
  readonly part: string;
  readonly for: string | undefined;
  readonly verdict: "yes" | "on-conditions" | "does-not-go-on" | "must-not-be-used";
  readonly about: Drawn;
  readonly record: string;
}
export interface DrawnWorld {
  readonly built: readonly {
    readonly place: string;
    readonly parts: readonly (string | undefined)[];
    readonly about: ReadonlySet<number>;
  }[];
  readonly standIns: readonly DrawnStandIn[];
  readonly ended: readonly { readonly record: string; readonly about: Drawn }[];
}

/** Some lines, a run of years, some plants. */
const about: fc.Arbitrary<ReadonlySet<number>> = fc
  .tuple(
    fc.subarray(LINES, { minLength: 1 }),
    fc.tuple(fc.constantFrom(...YEARS), fc.constantFrom(...YEARS)),
    fc.subarray(PLANTS, { minLength: 1 }),
  )
  .map(([lines, [a, b], plants]) => {
    const inside = KINDS.flatMap(({ line, my, plant }, i) =>
      lines.includes(line) && my >= Math.min(a, b) && my <= Math.max(a, b) && plants.includes(plant) ? [i] : [],
    );
    return new Set(inside);
  });

const part = fc.constantFrom(...PARTS);
const record = fc.constantFrom("R1", "R2", "R3");

export const world: fc.Arbitrary<DrawnWorld> = fc.record({
  built: fc.array(
    fc.record({
      place: fc.constantFrom(...PLACES),
      parts: fc.oneof(
        { weight: 4, arbitrary: part.map((it) => [it]) },
        fc.constant([undefined]),
        fc.uniqueArray(part, { minLength: 2, maxLength: 2 }),
      ),
      about,
    }),
    { minLength: 1, maxLength: 5 },
  ),
  standIns: fc.array(
    fc.record({
      part,
      for: fc.option(part, { nil: undefined, freq: 5 }),
      verdict: fc.constantFrom("yes", "yes", "on-conditions", "does-not-go-on", "must-not-be-used"),
      about: fc.option(about, { nil: undefined }),
      record,
    }),
    { maxLength: 9 },
  ),
  ended: fc.array(fc.record({ record, about: fc.option(about, { nil: undefined }) }), { maxLength: 1 }),
});

/** The same world for the engine. */
export function openWorld({ built, standIns, ended }: DrawnWorld): { index: PartIndex; cars: readonly CarSet[] } {
  const space = tractorSpace();
  const read = (text: string): Scope => {
    const result = readScope(space, text);
    if ("slips" in result) throw new Error(result.slips[0]?.message);
    return result.scope;
  };
  const text = (i: number): string => {
    const { line, my, plant } = KINDS[i] as (typeof KINDS)[number];
    return `line=${line}; my=${my}; plant=${plant}`;
  };
  const scope = (kinds: ReadonlySet<number>): Scope => read([...kinds].map(text).join(" || "));
  const statements = [
    ...built.map(({ place, parts, about: kinds }, index): Statement => {
      const base = { record: "R0", index, place, scope: scope(kinds) };
      return parts.length === 1
        ? { ...base, type: "built", part: parts[0] }
        : { ...base, type: "mixed", parts: parts as string[] };
    }),
    ...standIns.map(
      ({ about: kinds, ...it }, index): Statement => ({
        ...it,
        type: "stands-in",
        index,
        with: [],
        do: undefined,
        why: undefined,
        scope: kinds && scope(kinds),
      }),
    ),
    ...ended.map(
      ({ record: target, about: kinds }, index): Statement => ({
        type: "cancels",
        record: "R9",
        index,
        target,
        scope: kinds && scope(kinds),
      }),
    ),
  ];
  const catalog = {
    space,
    buildable: ALL,
    records: new Map([["R0", { statements }]]),
    places: new Map(),
    parts: new Map(),
  };
  return { index: openPartIndex(catalog as unknown as Catalog), cars: KINDS.map((_, i) => read(text(i)).cars) };
}

export const REFUSALS = ["does-not-go-on", "must-not-be-used"];

export interface Said extends DrawnStandIn {
  /** Which one of the world it is. */
  readonly number: number;
}

/** What is said of one kind and was not ended for it. */
export function inForce({ standIns, ended }: DrawnWorld, kind: number): Said[] {
  const inside = (kinds: Drawn): boolean => kinds === undefined || kinds.has(kind);
  return standIns
    .map((it, number) => ({ ...it, number }))
    .filter((it) => inside(it.about) && !ended.some((end) => end.record === it.record && inside(end.about)));
}

/** What the records say of a part where another belongs, on one kind of tractor. */
export function slowStandsFor(drawn: DrawnWorld, one: string, other: string | undefined, kind: number): string {
  const said = inForce(drawn, kind);
  const saidOf = (a: string, b: string | undefined): string[] =>
    said.filter((it) => it.part === a && it.for === b).map((it) => it.verdict);
  const refused = (a: string, b: string | undefined): boolean => saidOf(a, b).some((it) => REFUSALS.includes(it));
  const direct = saidOf(one, other);
  if (direct.includes("does-not-go-on")) return "does not go on";
  if (direct.includes("must-not-be-used")) return "goes on but must not be used";
  if (direct.includes("yes")) return "yes";
  if (direct.length > 0) return "yes, on conditions";
  // Every chain of different parts, shortest first.
  const chains: { at: string; parts: string[]; verdicts: string[] }[] = [{ at: one, parts: [one], verdicts: [] }];
  let shortest: number | undefined;
  const found: string[] = [];
  for (const chain of chains) {
    if (shortest !== undefined && chain.verdicts.length >= shortest) break;
    for (const it of said.filter((step) => step.part === chain.at && !REFUSALS.includes(step.verdict))) {
      if (it.for !== undefined && chain.parts.includes(it.for)) continue;
      if (chain.parts.some((earlier) => refused(earlier, it.for))) continue;
      const verdicts = [...chain.verdicts, it.verdict];
      if (it.for === other) {
        shortest = verdicts.length;
        found.push(verdicts.every((verdict) => verdict === "yes") ? "yes" : "yes, on conditions");
      } else if (it.for !== undefined) chains.push({ at: it.for, parts: [...chain.parts, it.for], verdicts });
    }
  }
  return found.includes("yes") ? "yes" : (found[0] ?? "not on record");
}

/** What the plant fitted there: parts, "nothing", or "not on record"; several in a mixed stretch or where records contradict. */
export function slowBelongs(drawn: DrawnWorld, place: string, kind: number): string[] {
  const said = drawn.built.filter((it) => it.place === place && it.about.has(kind)).flatMap((it) => it.parts);
  return said.length === 0 ? ["not on record"] : [...new Set(said.map((it) => it ?? "nothing"))];
}
