/**
 * What must go along. A way is open where all that it asks for can go on too, and what that asks for, and nothing of it rules
 * another thing out; of all such sets the smallest is named. A kit can go on where everything in it can. Cars that need different
 * sets are told apart.
 */
import { idOf, type StandsIn } from "../records/statement.ts";
import type { CarSet } from "../scope/diagram.ts";
import { companionStanding, type Standing } from "./companion-standing.ts";
import type { PartIndex } from "./part-index.ts";
import type { Reported } from "./reported.ts";
import { smallestSet } from "./smallest-set.ts";
import { type Chain, isPlain } from "./stands-for.ts";

export interface Companion {
  readonly part: string;
  /** The car has it already. */
  readonly onTheCar: boolean;
  /** The statement that asks for it. */
  readonly because: StandsIn;
  /** Its own statements, where it takes another part's place. */
  readonly steps: Chain;
}

export interface Way {
  readonly steps: Chain;
  /** All of them, those of companions too, each once. */
  readonly companions: readonly Companion[];
}

export interface WithCompanions {
  readonly cars: CarSet;
  /** The open ones, best first: with no more to do than to fit, with the fewest parts, as they stand in the records. */
  readonly ways: readonly Way[];
  /** Where no way is open: who closes them. */
  readonly closedBy: readonly StandsIn[];
  readonly found: Found;
}

/** How parts that may have to go along stand on some cars. */
export interface Found {
  readonly cars: CarSet;
  readonly onTheCar: ReadonlySet<string>;
  /** The ways of the others, in the order in which they are asked for. */
  readonly ways: ReadonlyMap<string, readonly Chain[]>;
  /** Who refuses a part that cannot go on. */
  readonly closed: ReadonlyMap<string, readonly StandsIn[]>;
}

/** Of a car nothing is taken for granted at first. */
export function nothingFound(cars: CarSet): Found {
  return { cars, onTheCar: new Set(), ways: new Map(), closed: new Map() };
}

/** Cars are in several pieces where it is not known what is on the car; what was found already stays so. */
export function withCompanions(
  index: PartIndex,
  part: string,
  ways: readonly Chain[],
  before: Found,
  on: Reported,
): WithCompanions[] {
  const pieces = findAll(index, part, ways, before, on).map((found) => openWays(index, part, ways, found));
  return merged(index, pieces);
}

/** Beyond so many parts that go along, or so many kinds of cars that differ in them, a way is held to be closed. */
const MOST_ALONG = 200;
const MOST_PIECES = 200;

/** What was found so far, and what is still to be looked at. */
interface Search {
  cars: CarSet;
  readonly onTheCar: Set<string>;
  readonly ways: Map<string, readonly Chain[]>;
  readonly closed: Map<string, readonly StandsIn[]>;
  readonly todo: string[];
  /** Place in `todo`. */
  at: number;
}

/** Follows everything that is asked for; the cars are cut wherever a part stands differently. */
function findAll(index: PartIndex, part: string, ways: readonly Chain[], before: Found, on: Reported): Found[] {
  const done: Found[] = [];
  const open: Search[] = [copyOf({ ...before, todo: [...asked(ways), ...partsInKit(index, part)], at: 0 })];
  for (let search = open.pop(); search; search = open.pop()) {
    while (search.at < search.todo.length) {
      const one = search.todo[search.at++] as string;
      if (one === part || isKnown(search, one)) continue;
      const isTooMuch = search.ways.size >= MOST_ALONG || open.length + done.length >= MOST_PIECES;
      const [first, ...others] = isTooMuch
        ? [{ how: "closed", cars: search.cars, by: [] } as const]
        : companionStanding(index, one, search.cars, on);
      for (const other of others) {
        const branch = copyOf(search);
        note(index, branch, one, other);
        open.push(branch);
      }
      if (first) note(index, search, one, first);
    }
    done.push(search);
  }
  return done;
}

function note(index: PartIndex, search: Search, part: string, standing: Standing): void {
  search.cars = standing.cars;
  if (standing.how === "on the car") search.onTheCar.add(part);
  else if (standing.how === "closed") search.closed.set(part, standing.by);
  else {
    search.ways.set(part, standing.ways);
    search.todo.push(...asked(standing.ways), ...partsInKit(index, part));
  }
}

function partsInKit({ contentsOf }: PartIndex, kit: string): string[] {
  return (contentsOf.get(kit) ?? []).flatMap((content) => content.part ?? []);
}

/** What cannot go on: parts by themselves, and kits with such a part, or such a kit, in them. */
function closedParts(index: PartIndex, part: string, { closed, ways }: Found): Set<string> {
  const found = new Set(closed.keys());
  const kits = [part, ...ways.keys()].filter((one) => index.contentsOf.has(one));
  for (let before = -1; before < found.size; ) {
    before = found.size;
    for (const kit of kits) if (partsInKit(index, kit).some((one) => found.has(one))) found.add(kit);
  }
  return found;
}

function copyOf({ cars, onTheCar, ways, closed, todo, at }: Omit<Search, keyof Found> & Found): Search {
  return { cars, onTheCar: new Set(onTheCar), ways: new Map(ways), closed: new Map(closed), todo: [...todo], at };
}

/** The parts that the steps of some ways ask for. */
function asked(ways: readonly Chain[]): string[] {
  return ways.flat().flatMap((step) => step.with);
}

function isKnown({ onTheCar, ways, closed }: Found, part: string): boolean {
  return onTheCar.has(part) || ways.has(part) || closed.has(part);
}

function openWays(index: PartIndex, part: string, ways: readonly Chain[], found: Found): WithCompanions {
  const { cars, closed } = found;
  const asks = asksOf(found);
  const shut = closedParts(index, part, found);
  const open = shut.has(part) ? [] : ways.flatMap((way) => completed(index, part, way, found, asks, shut) ?? []);
  if (open.length > 0) return { cars, ways: open.sort((a, b) => effort(a) - effort(b)), closedBy: [], found };
  const refusals = [...new Set([...closed.values()].flat())];
  return { cars, found, ways: [], closedBy: refusals.length > 0 ? refusals : [...new Set(ways.flat())] };
}

/** Way by way what each part asks for that is not on the car. */
function asksOf({ ways, onTheCar }: Found): ReadonlyMap<string, readonly string[][]> {
  return new Map([...ways].map(([part, its]) => [part, its.map((way) => asksOfWay(part, way, onTheCar))]));
}

function asksOfWay(part: string, way: Chain, onTheCar: ReadonlySet<string>): string[] {
  return [...new Set(asked([way]))].filter((it) => it !== part && !onTheCar.has(it));
}

/** Plain ways first, then by what has to be bought. */
function effort({ steps, companions }: Way): number {
  const more = companions.filter((it) => !it.onTheCar).length;
  return isPlain(steps) ? more : more + 1_000;
}

/** A way with the smallest set that it needs; nothing where there is none. */
function completed(
  index: PartIndex,
  part: string,
  way: Chain,
  found: Found,
  asks: ReadonlyMap<string, readonly string[][]>,
  shut: ReadonlySet<string>,
): Way | undefined {
  if (way.every((step) => step.with.length === 0)) return { steps: way, companions: [] };
  const waysOf = new Map<string, readonly Chain[]>([[part, [way]], ...found.ways]);
  const own = [asksOfWay(part, way, found.onTheCar)];
  const set = smallestSet({
    parts: [...waysOf.keys(), ...found.closed.keys()],
    wanted: [part],
    ways: (one) => (one === part ? own : (asks.get(one) ?? [])),
    clashes: [...[...shut].map((one): [string, string] => [one, one]), ...clashesAmong(index, waysOf, found.cars)],
  });
  if (!set) return undefined;
  const has = new Set(set);
  const chosen = (one: string): Chain => {
    const which = (asks.get(one) ?? []).findIndex((companions) => companions.every((it) => has.has(it)));
    return found.ways.get(one)?.[which] ?? [];
  };
  const companions = new Map<string, Companion>();
  const todo = way.flatMap((step) => step.with.map((one) => ({ one, because: step })));
  for (const { one, because } of todo) {
    if (one === part || companions.has(one)) continue;
    const onTheCar = found.onTheCar.has(one);
    const steps = onTheCar ? [] : chosen(one);
    companions.set(one, { part: one, onTheCar, because, steps });
    todo.push(...steps.flatMap((step) => step.with.map((it) => ({ one: it, because: step }))));
  }
  return { steps: way, companions: [...companions.values()] };
}

/** One part rules out another where all that permits it holds only while the other is not on the car. */
function clashesAmong(
  { space }: PartIndex,
  waysOf: ReadonlyMap<string, readonly Chain[]>,
  cars: CarSet,
): [string, string][] {
  const { sets } = space;
  const asked = [...waysOf.keys()].flatMap((part) => {
    const trait = space.askedFitted(part);
    return trait === undefined ? [] : [{ part, trait }];
  });
  if (asked.length === 0) return [];
  const kind = sets.forget(cars, new Set([...space.traits.keys()].filter((trait) => space.isFitted(trait))));
  return asked.flatMap(({ part: other, trait }) => {
    const together = sets.and(kind, space.where(trait, [[1, 1]]));
    return [...waysOf].flatMap(([part, ways]): [string, string][] => {
      const steps = ways.flat();
      if (part === other || steps.length === 0) return [];
      return steps.every((step) => step.scope && !sets.meet(together, step.scope.cars)) ? [[part, other]] : [];
    });
  });
}

/** Pieces that need the same are one; closed ones stay apart, for they may be asked again. */
function merged({ space }: PartIndex, pieces: readonly WithCompanions[]): WithCompanions[] {
  const open = new Map<string, WithCompanions>();
  for (const piece of pieces) {
    if (piece.ways.length === 0) continue;
    const key = JSON.stringify(
      piece.ways.map(({ steps, companions }) => [
        steps.map(idOf),
        companions.map((it) => [it.part, it.onTheCar, it.steps.map(idOf)]),
      ]),
    );
    const before = open.get(key);
    open.set(key, before ? { ...before, cars: space.sets.or(before.cars, piece.cars) } : piece);
  }
  return [...open.values(), ...pieces.filter((piece) => piece.ways.length === 0)];
}
