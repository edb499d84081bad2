import type { ChangeRecord } from "../../records/catalog.ts";
import { groupBy } from "../../records/group-by.ts";
import type { Built, Interval, Mixed, Setting, Statement } from "../../records/statement.ts";
import { ALL, type CarSet, type CarSets, NONE } from "../../scope/diagram.ts";
import { placeOf } from "../place-of.ts";
import type { Rule, World } from "../rule.ts";
import { runningNumbers } from "../running-numbers.ts";

/**
 * Where the records say what sits in a place of a kind of car, or which figure it has, in the year before and in the year after, they
 * say it of some car of that kind in the year between, if such cars were built in it. Cars are of one kind when they are alike in
 *   everything but their year, running numbers and what may be changed on them today, or
 *   their line, and whatever else the statements about this place or figure ask for;
 * and of all cars of the kind it is said before and after.
 *   Nothing is left out where another place of the component, or a figure of another name, begins in that year;
 *   where a record about the component begins in that year and says nothing of this: its words may say why;
 *   nor where a record that was ended or withdrawn says it, for that is told by other rules, as are gaps in a running change.
 *   Of a figure it is asked only where the year has the component: where no record says what sits in its places, or where some place
 *   holds the same part as in the year before or after.
 */
export const yearLeftOut: Rule = {
  id: "year-left-out",
  gravity: "warning",
  about: "What is on record for the year before and the year after is on record for the year between.",
  why: "One scope ends a year too early, or the next begins a year too late: cars of that year are told 'not on record'.",
  mend: "Widen the scope; say 'none' where the place held nothing; or accept the finding, where nobody knows.",
  example: {
    wrong: {
      "changes/1958/FR58-01.md": [
        "scope: my>=1958\n",
        "components: [lift]\nscope: my>=1958\nbuilt:\n  - { place: lift arms, part: HT-290, scope: line=B; my<=1958 }\n  - { place: lift arms, part: none, scope: line=B; my>=1960 }\n",
      ],
    },
    right: {
      "changes/1958/FR58-01.md": [
        "scope: my>=1958\n",
        "components: [lift]\nscope: my>=1958\nbuilt:\n  - { place: lift arms, part: HT-290, scope: line=B; my<=1958 }\n  - { place: lift arms, part: none, scope: line=B; my>=1959 }\n",
      ],
    },
  },
  *find(world) {
    const { sets } = world.catalog.space;
    const fleet = openFleet(world);
    if (!fleet) return;
    const matters = mattersOf(world, fleet);
    const siblings = groupBy(matters, (it) => [`${it.type} ${it.component}`]);
    for (const matter of matters)
      for (const year of yearsToAsk(world, matter)) {
        const others = siblings.get(`${matter.type} ${matter.component}`) ?? [];
        const left = leftOut(world, fleet, matter, year, others);
        if (left === NONE) continue;
        const [before, after] = [year - 1, year + 1].map((near) => nearestTold(fleet, sets, matter, left, near));
        if (!before || !after) continue;
        yield {
          at: placeOf(world.catalog, after, "scope"),
          message: `of ${matter.type === "place" ? "" : "the figure "}'${matter.name}' nothing is said for ${year}, and for ${year - 1} and ${year + 1} it is, on cars that are otherwise alike`,
          hint: `let one scope take ${year} in, ${matter.type === "place" ? "or say that the place held 'none'" : "or accept this, where there was no such figure"}`,
          records: [after.record, before.record],
          names: [matter.name],
          also: [{ ...placeOf(world.catalog, before, "scope"), message: `what is said for ${year - 1}` }],
          cars: left,
        };
      }
  },
};

/** The statement of the year before or after about cars like those left out, as much like them as there is one. */
function nearestTold(
  fleet: Fleet,
  sets: CarSets,
  { told, asked }: Matter,
  left: CarSet,
  near: number,
): Said | undefined {
  for (const kind of [fleet.alike, asked]) {
    const alike = sets.and(fleet.built(near), sets.forget(left, kind));
    const found = told.find(({ cars }) => sets.meet(cars, alike));
    if (found) return found.it;
  }
  return undefined;
}

type Said = Built | Mixed | Setting | Interval;
interface Told {
  readonly it: Said;
  /** The cars for which it counts. */
  readonly cars: CarSet;
}

/** A place, or figures of one name. */
interface Matter {
  readonly type: "place" | "setting" | "interval";
  readonly name: string;
  readonly component: string | undefined;
  readonly told: readonly Told[];
  /** The records that say it. */
  readonly records: ReadonlySet<string>;
  /** The records about its component. */
  readonly about: readonly ChangeRecord[];
  /** All cars of which it is said, or was before that was ended or withdrawn. */
  readonly said: CarSet;
  /** Those of which it still counts. */
  readonly counts: CarSet;
  /** The traits that its kinds of cars leave open: all but the line and those that it asks for. */
  readonly asked: ReadonlySet<number>;
}

function mattersOf(world: World, { alike }: Fleet): Matter[] {
  const { catalog, index } = world;
  const { space } = catalog;
  const about = groupBy([...catalog.records.values()], (record) => record.components.map(({ id }) => id));
  const stated = [...catalog.records.values()].flatMap((record) =>
    record.stated.flatMap((it) => {
      const matter = matterOf(world, it);
      return matter ? [{ ...matter, isWithdrawn: record.facts.withdrawn !== undefined }] : [];
    }),
  );
  const groups = groupBy(stated, ({ type, name, component }) => [
    `${type} ${type === "setting" ? component : ""} ${name}`,
  ]);
  return [...groups.values()].flatMap((group): Matter[] => {
    const [first] = group;
    if (!first) return [];
    const told = group
      .filter(({ isWithdrawn }) => !isWithdrawn)
      .map(({ it }) => {
        const ended = it.type === "setting" || it.type === "interval" ? index.ended.get(it.record) : undefined;
        return { it, cars: space.sets.minus(it.scope.cars, ended ?? NONE) };
      });
    const counts = space.any(told.map(({ cars }) => cars));
    const asks = space.sets.traitsOf(counts);
    const isOpen = (trait: number): boolean => trait !== space.role("line") && (alike.has(trait) || !asks.has(trait));
    return [
      {
        type: first.type,
        name: first.name,
        component: first.component,
        told,
        records: new Set(group.map(({ it }) => it.record)),
        about: about.get(first.component ?? "") ?? [],
        said: space.any(group.map(({ it }) => it.scope.cars)),
        counts,
        asked: new Set([...space.traits.keys()].filter(isOpen)),
      },
    ];
  });
}

function matterOf(
  { catalog }: World,
  it: Statement,
): (Pick<Matter, "type" | "name" | "component"> & { it: Said }) | undefined {
  if (it.type === "built" || it.type === "mixed")
    return { type: "place", name: it.place, component: catalog.places.get(it.place)?.id, it };
  if (it.type === "setting") return { type: "setting", name: it.name, component: it.component, it };
  // An interval is that of what its record is about first.
  if (it.type === "interval")
    return { type: "interval", name: it.name, component: catalog.records.get(it.record)?.components[0]?.id, it };
  return undefined;
}

/** The built cars by year. */
interface Fleet {
  readonly built: (year: number) => CarSet;
  /** The traits in which cars of one kind may differ. */
  readonly alike: ReadonlySet<number>;
}

function openFleet({ catalog }: World): Fleet | undefined {
  const { space, buildable } = catalog;
  const year = space.role("year");
  if (year === undefined) return undefined;
  const today = [...space.traits.entries()].flatMap(([trait, it]) => (it.today ? [trait] : []));
  const built = new Map<number, CarSet>();
  return {
    alike: new Set([year, ...today, ...runningNumbers(space)]),
    built: (one) => {
      const cars = built.get(one) ?? space.sets.and(buildable, space.where(year, [[one, one]]));
      built.set(one, cars);
      return cars;
    },
  };
}

/** The years in which something is unsaid of a line of which something is said before and after: a quick look that spares most. */
function yearsToAsk({ catalog }: World, { said, counts }: Matter): number[] {
  const { space, buildable, years } = catalog;
  const { sets } = space;
  const [line, year] = [space.role("line"), space.role("year")];
  if (year === undefined) return [];
  const kept = line === undefined ? [year] : [line, year];
  const [unsaid, some] = [sets.minus(buildable, said), sets.and(buildable, counts)].map((it) => sets.keep(it, kept));
  const linesOf = (cars: CarSet | undefined, one: number): CarSet =>
    sets.forget(sets.and(cars ?? NONE, space.where(year, [[one, one]])), new Set([year]));
  return years.filter((one) =>
    sets.meet(sets.and(linesOf(some, one - 1), linesOf(some, one + 1)), linesOf(unsaid, one)),
  );
}

/** The cars of a year of which a matter is left out. */
function leftOut(world: World, fleet: Fleet, matter: Matter, year: number, siblings: readonly Matter[]): CarSet {
  const { sets } = world.catalog.space;
  let left: CarSet = NONE;
  for (const open of [fleet.alike, matter.asked]) {
    const kinds = (cars: CarSet, one: number): CarSet => sets.forget(sets.and(cars, fleet.built(one)), open);
    const saidOfAll = (one: number): CarSet =>
      sets.minus(kinds(matter.counts, one), sets.forget(sets.minus(fleet.built(one), matter.counts), open));
    const [before, after] = [saidOfAll(year - 1), saidOfAll(year + 1)];
    const unsaid = sets.minus(fleet.built(year), sets.or(kinds(matter.said, year), left));
    const between = sets.and(unsaid, sets.and(before, after));
    if (between === NONE) continue;
    const told = sets.forget(toldOtherwise(world, fleet, matter, year, siblings), open);
    const here = sets.minus(between, told);
    left = sets.or(left, matter.type === "place" ? here : sets.and(here, havingOnePart(world, matter, year, kinds)));
  }
  return left;
}

/** The cars of a year for which something else begins that may say why, and those of which another rule tells it. */
function toldOtherwise(world: World, fleet: Fleet, matter: Matter, year: number, siblings: readonly Matter[]): CarSet {
  const { space } = world.catalog;
  const inYear = (cars: CarSet): CarSet => space.sets.and(cars, fleet.built(year));
  const begins = (cars: CarSet): CarSet =>
    space.sets.minus(inYear(cars), space.sets.forget(space.sets.and(cars, fleet.built(year - 1)), fleet.alike));
  const others = siblings.filter((it) => it !== matter).map((it) => begins(it.said));
  const inWords = matter.about.filter(({ id }) => !matter.records.has(id)).map((it) => begins(it.scope.cars));
  const running = [...matter.records].flatMap((id) => {
    const record = world.catalog.records.get(id);
    if (matter.type !== "place" || !record?.facts.kinds.includes("running")) return [];
    return inYear(space.sets.minus(record.scope.cars, saidInPlacesOf(world, record.statements)));
  });
  return space.any([...others, ...inWords, ...running]);
}

/** The cars of which something is said in one of the places that these statements speak of. */
function saidInPlacesOf({ catalog, index }: World, statements: readonly Statement[]): CarSet {
  const places = new Set(statements.flatMap((it) => (it.type === "built" || it.type === "mixed" ? [it.place] : [])));
  return catalog.space.any([...places].flatMap((place) => (index.builtAt.get(place) ?? []).map((it) => it.scope.cars)));
}

/** The kinds of cars that have the same part in a place of the component as in the year before or after; all, where no record says what sits there. */
function havingOnePart(
  { catalog, index }: World,
  { component }: Matter,
  year: number,
  kinds: (cars: CarSet, year: number) => CarSet,
): CarSet {
  const { space } = catalog;
  const places = (component === undefined ? undefined : catalog.components.get(component)?.places) ?? [];
  const statements = places.flatMap((place) => index.builtAt.get(place) ?? []);
  if (statements.length === 0) return ALL;
  const withPart = groupBy(statements, (it) =>
    it.type === "mixed" ? it.parts : it.part === undefined ? [] : [it.part],
  );
  return space.any(
    [...withPart.values()].map((its) => {
      const cars = space.any(its.map((it) => it.scope.cars));
      const near = space.sets.or(kinds(cars, year - 1), kinds(cars, year + 1));
      return space.sets.and(kinds(cars, year), near);
    }),
  );
}
