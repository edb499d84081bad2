/**
 * Does each of very many scopes hold for one car? Our sweep, for cars known in part, beside a hand-written loop and a general
 * rule engine, which both must know all of the car. Where all is known, the three must agree.
 */
import type { CarSet } from "../../src/engine/scope/diagram.ts";
import { carsWith } from "../../src/engine/scope/facts.ts";
import type { Car } from "../../src/engine/scope/pick.ts";
import { Sweep } from "../../src/engine/scope/sweep.ts";
import { median } from "./bench.ts";
import { make } from "./heap.ts";
import { factsOf, makeQuestion, type Question, read, someCar } from "./make-scopes.ts";
import { type Random, random } from "./random.ts";
import { RulePackage } from "./rule-package.ts";
import { singleQuestions, type Times } from "./single-questions.ts";
import { TypedLoop } from "./typed-loop.ts";

export interface Sizes {
  readonly rows: number;
  readonly scopes: number;
  /** The rule engine gets only so many of the scopes; its figures are scaled up. */
  readonly packageScopes: number;
  readonly carsPerLevel: number;
  readonly runs: number;
  /** How many single questions of each kind. */
  readonly single: number;
}
export const SIZES: Sizes = {
  rows: 2000,
  scopes: 100_000,
  packageScopes: 5000,
  carsPerLevel: 3,
  runs: 5,
  single: 2000,
};

/** Milliseconds and megabytes. */
export interface SetUp {
  readonly milliseconds: number;
  readonly megabytes: number;
}

export interface Level {
  readonly known: string;
  /** Medians over all cars and runs, in milliseconds. */
  readonly ours: number;
  readonly loop: number;
  /** Of ours by loop, run by run. */
  readonly ratio: { readonly median: number; readonly least: number; readonly most: number };
  readonly verdicts: { readonly yes: number; readonly no: number; readonly open: number };
}

export interface ScopesResult {
  readonly sizes: Sizes;
  readonly setUp: Readonly<Record<"sets" | "sweep" | "loop" | "package", SetUp>>;
  readonly levels: readonly Level[];
  /** Over the levels that leave something open. */
  readonly toLoop: number;
  readonly packageMilliseconds: number;
  readonly toPackage: number;
  /** Verdicts that were compared, and those that differed. */
  readonly compared: number;
  readonly differed: number;
  readonly single: Readonly<Record<string, Times>>;
}

const YES = 0;
const NO = 1;
const OPEN = 2;

export async function benchScopes(sizes: Sizes, note: (line: string) => void): Promise<ScopesResult> {
  const chance = random(7);
  const question = makeQuestion(sizes.rows, sizes.scopes);
  const { space, built } = question;
  note(`${sizes.rows} rows, ${sizes.scopes} scopes made`);
  const sets = make(() => question.texts.map((text) => read(space, text)));
  const sweep = make(() => new Sweep(space, sets.made));
  const loop = make(() => new TypedLoop(space, sets.made));
  const rules = make(() => new RulePackage(space, sets.made.slice(0, sizes.packageScopes)));
  note("set up");
  let compared = 0;
  let differed = 0;
  const compare = (one: ArrayLike<number>, other: ArrayLike<number>): void => {
    compared += other.length;
    for (let i = 0; i < other.length; i++) if (one[i] !== other[i]) differed++;
  };
  const packageTimes: number[] = [];
  const levels: Level[] = [];
  const asked: CarSet[] = [];
  for (const [known, traits] of levelsOf(question, chance)) {
    const cars = Array.from({ length: sizes.carsPerLevel }, () => someCar(question, chance));
    const partly = cars.map((car) => carsWith(space, built, factsOf(space, car, traits())));
    // A car of which less is known has too many neighbours: the sets of thousands of questions about it fill the memory.
    if (traits().length >= 2 && known !== ALL_KNOWN) asked.push(...partly);
    const timed = timeLevel(sweep.made, loop.made, cars, partly, sizes.runs);
    for (const [i, car] of cars.entries()) {
      const ours = sweep.made.verdictNumbers(partly[i] as CarSet);
      const byLoop = loop.made.verdicts(car);
      // What is open for a car known in part says nothing of the whole car.
      compare(
        ours.map((verdict, s) =>
          verdict === OPEN && known !== ALL_KNOWN ? (byLoop[s] as number) : verdict === YES ? 1 : 0,
        ),
        byLoop,
      );
      if (known !== ALL_KNOWN) continue;
      const start = performance.now();
      const byRules = await rules.made.verdicts(car);
      packageTimes.push(((performance.now() - start) * sizes.scopes) / byRules.length);
      compare(
        ours.map((verdict) => (verdict === YES ? 1 : 0)),
        byRules,
      );
    }
    const verdicts = sweep.made.verdictNumbers(partly[0] as CarSet);
    const number = (wanted: number): number => verdicts.reduce((sum, verdict) => sum + (verdict === wanted ? 1 : 0), 0);
    levels.push({ known, ...timed, verdicts: { yes: number(YES), no: number(NO), open: number(OPEN) } });
    note(`${known}: ${timed.ours.toFixed(1)} ms, loop ${timed.loop.toFixed(1)} ms`);
  }
  const partial = levels.filter(({ known }) => known !== ALL_KNOWN);
  const packageMilliseconds = median(packageTimes);
  const scaled = sizes.scopes / Math.min(sizes.scopes, sizes.packageScopes);
  return {
    sizes,
    setUp: {
      sets: { milliseconds: sets.milliseconds, megabytes: sets.megabytes },
      sweep: { milliseconds: sweep.milliseconds, megabytes: sweep.megabytes },
      loop: { milliseconds: loop.milliseconds, megabytes: loop.megabytes },
      package: { milliseconds: rules.milliseconds * scaled, megabytes: rules.megabytes * scaled },
    },
    levels,
    toLoop: median(partial.map(({ ratio }) => ratio.median)),
    packageMilliseconds,
    toPackage: packageMilliseconds / median(partial.map(({ ours }) => ours)),
    compared,
    differed,
    single: singleQuestions(space, sets.made, asked, sizes.single),
  };
}

const ALL_KNOWN = "everything";

/** From a car known by its line to one known whole: what is known, and a choice of such traits for one car. */
function levelsOf({ space }: Question, chance: Random): [known: string, traits: () => number[]][] {
  const all = space.declared.map((_, trait) => trait);
  const [line, year] = [space.role("line") as number, space.role("year") as number];
  const rest = all.filter((trait) => trait !== line && trait !== year);
  return [
    ["nothing", () => []],
    ["line", () => [line]],
    ["line and year", () => [line, year]],
    ["line, year, 4 more", () => [line, year, ...chance.some(rest, 4)]],
    ["line, year, 8 more", () => [line, year, ...chance.some(rest, 8)]],
    ["all but 3", () => [line, year, ...chance.some(rest, rest.length - 3)]],
    [ALL_KNOWN, () => all],
  ];
}

/** In turn, so that whatever else the machine does falls on both; a first round is not counted. */
function timeLevel(sweep: Sweep, loop: TypedLoop, cars: readonly Car[], partly: readonly CarSet[], runs: number) {
  const [ours, byLoop, ratios]: [number[], number[], number[]] = [[], [], []];
  for (let run = 0; run <= runs; run++)
    cars.forEach((car, i) => {
      const start = performance.now();
      sweep.verdictNumbers(partly[i] as CarSet);
      const middle = performance.now();
      loop.verdicts(car);
      const end = performance.now();
      if (run === 0) return;
      ours.push(middle - start);
      byLoop.push(end - middle);
      ratios.push((middle - start) / (end - middle));
    });
  return {
    ours: median(ours),
    loop: median(byLoop),
    ratio: { median: median(ratios), least: Math.min(...ratios), most: Math.max(...ratios) },
  };
}
