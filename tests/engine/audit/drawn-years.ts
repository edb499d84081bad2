/** Random records that say things of some years, as files, and tractor by tractor what plain loops find left out, without sets. */
import fc from "fast-check";
import { carsOf } from "../../helpers/random-records.ts";
import type { Folder } from "../../helpers/tiny-folder.ts";

const LINES = ["B", "H"];
const YEARS = [1957, 1958, 1959, 1960];
const PLANTS = ["K", "D"];
const PTO = [true, false];

export interface Tractor {
  readonly line: string;
  readonly my: number;
  readonly plant: string;
  readonly pto: boolean;
}
/** With those that were never built. */
const THINKABLE: readonly Tractor[] = LINES.flatMap((line) =>
  // The traits go on to a year of which no tractor was built.
  [...YEARS, 1961].flatMap((my) => PLANTS.flatMap((plant) => PTO.map((pto) => ({ line, my, plant, pto })))),
);
/** As the tiny folder has them: Dunmoor opened in 1959, the Badger got the power take-off by and by. */
export const TRACTORS = THINKABLE.filter(
  ({ line, my, plant, pto }) =>
    my <= 1960 && (plant === "K" || my >= 1959) && (line === "B" ? (pto ? my >= 1958 : my <= 1959) : my >= 1959 && pto),
);

interface About {
  readonly lines: readonly string[];
  readonly years: readonly number[];
  readonly plants: readonly string[];
  readonly ptos: readonly boolean[];
}
interface Stated {
  readonly record: string;
  /** A place, or what a figure is called. */
  readonly name: string;
  readonly part: string | undefined;
  readonly about: About;
}
export interface DrawnYears {
  readonly built: readonly Stated[];
  readonly settings: readonly Stated[];
  /** Record by record. */
  readonly records: readonly {
    readonly id: string;
    readonly running: boolean;
    readonly withdrawn: boolean;
    readonly component: string;
    readonly about: About;
  }[];
  /** R-3 ends R-1 for these. */
  readonly ended: About | undefined;
}

const RECORDS = ["R-1", "R-2", "R-3", "R-4"];
const often = <T>(usual: T, other: fc.Arbitrary<T>): fc.Arbitrary<T> =>
  fc.oneof({ weight: 3, arbitrary: fc.constant(usual) }, { weight: 1, arbitrary: other });
const about: fc.Arbitrary<About> = fc.record({
  lines: often(LINES, fc.subarray(LINES, { minLength: 1 })),
  years: fc.subarray(YEARS, { minLength: 1 }),
  plants: often(PLANTS, fc.subarray(PLANTS, { minLength: 1 })),
  ptos: often(PTO, fc.subarray(PTO, { minLength: 1 })),
});
// The last record states nothing.
const record = fc.constantFrom(...RECORDS.slice(0, 3));

export const drawnYears: fc.Arbitrary<DrawnYears> = fc.record({
  built: fc.array(
    fc.record({
      record,
      name: often("front", fc.constant("rear")),
      part: fc.constantFrom("HW-1", "HW-2", undefined),
      about,
    }),
    { minLength: 1, maxLength: 4 },
  ),
  settings: fc.array(
    fc.record({ record, name: often("gap", fc.constant("play")), part: fc.constant(undefined), about }),
    { maxLength: 3 },
  ),
  records: fc.tuple(
    ...RECORDS.map((id) =>
      fc.record({
        id: fc.constant(id),
        running: often(false, fc.constant(true)),
        withdrawn: id === "R-2" ? fc.boolean() : fc.constant(false),
        component: id === "R-4" ? fc.constantFrom("wheel", "hub") : fc.constant("wheel"),
        about: often({ lines: LINES, years: YEARS, plants: PLANTS, ptos: PTO }, about),
      }),
    ),
  ),
  ended: fc.option(about, { nil: undefined }),
});

export function filesOfYears(drawn: DrawnYears, tiny: Folder): Folder {
  const scope = ({ lines, years, plants, ptos }: About): string =>
    [
      `line=${lines.join(",")}`,
      `my=${years.join(",")}`,
      `plant=${plants.join(",")}`,
      ...(ptos.length === 2 ? [] : [ptos[0] ? "eq=PT" : "no=PT"]),
    ].join("; ");
  const front = ({ id, running, withdrawn, component, about: its }: DrawnYears["records"][number]): object => ({
    id,
    title: `Record ${id}`,
    issued: "1957-01-01",
    ...(withdrawn ? { withdrawn: "It was never done." } : {}),
    kinds: [running ? "running" : "part"],
    components: [component],
    starts: "at once",
    scope: scope(its),
    built: drawn.built
      .filter((it) => it.record === id)
      .map((it) => ({ place: it.name, part: it.part ?? "none", scope: scope(it.about) })),
    settings: drawn.settings
      .filter((it) => it.record === id)
      .map((it) => ({ name: it.name, window: "..1", unit: "mm", scope: scope(it.about) })),
    cancels: id === "R-3" && drawn.ended ? [{ record: "R-1", scope: scope(drawn.ended) }] : [],
  });
  return {
    ...carsOf(tiny),
    "components/chassis.yaml":
      "id: chassis\nname: Chassis\norder: 1\ncomponents:\n  - { id: wheel, name: wheel, places: [front, rear] }\n  - { id: hub, name: hub }\n",
    "parts/wheel.yaml":
      "component: wheel\nparts: [{ number: HW-1, name: small wheel }, { number: HW-2, name: large wheel }]\n",
    // JSON is YAML.
    ...Object.fromEntries(
      drawn.records.map((it) => [`changes/1957/${it.id}.md`, `---\n${JSON.stringify(front(it))}\n---\nA story.\n`]),
    ),
  };
}

/** The tractors of which something is left out. */
export function slowYears(drawn: DrawnYears): Tractor[] {
  const isAbout = ({ lines, years, plants, ptos }: About, { line, my, plant, pto }: Tractor): boolean =>
    lines.includes(line) && years.includes(my) && plants.includes(plant) && ptos.includes(pto);
  const isWithdrawn = (id: string): boolean => drawn.records.some((it) => it.id === id && it.withdrawn);
  const isEnded = (it: Stated, tractor: Tractor): boolean =>
    it.record === "R-1" && drawn.ended !== undefined && isAbout(drawn.ended, tractor);
  const built = drawn.built.filter((it) => !isWithdrawn(it.record));

  const matters = [
    ...["front", "rear"].map((name) => ({ name, isPlace: true, all: drawn.built.filter((it) => it.name === name) })),
    ...["gap", "play"].map((name) => ({ name, isPlace: false, all: drawn.settings.filter((it) => it.name === name) })),
  ].map((it) => ({
    ...it,
    said: (tractor: Tractor) => it.all.some((one) => isAbout(one.about, tractor)),
    counts: (tractor: Tractor) =>
      it.all.some(
        (one) => !isWithdrawn(one.record) && isAbout(one.about, tractor) && (it.isPlace || !isEnded(one, tractor)),
      ),
  }));

  const inYear = (year: number): Tractor[] => TRACTORS.filter(({ my }) => my === year);
  type Key = (tractor: Tractor) => string;
  const alike: Key = ({ line, plant, pto }) => JSON.stringify({ line, plant, pto });
  /** The line, and what else it depends on whether a tractor is meant. */
  const asked = (isMeant: (tractor: Tractor) => boolean): Key => {
    const matters = (other: (tractor: Tractor) => Tractor): boolean =>
      THINKABLE.some((tractor) => isMeant(tractor) !== isMeant(other(tractor)));
    const plant = matters((it) => ({ ...it, plant: it.plant === "K" ? "D" : "K" }));
    const pto = matters((it) => ({ ...it, pto: !it.pto }));
    return (it) =>
      JSON.stringify({ line: it.line, ...(plant ? { plant: it.plant } : {}), ...(pto ? { pto: it.pto } : {}) });
  };

  const left = new Set<Tractor>();
  for (const matter of matters)
    for (const year of YEARS) {
      const begins = (isSo: (tractor: Tractor) => boolean, tractor: Tractor): boolean =>
        isSo(tractor) && !inYear(year - 1).some((it) => alike(it) === alike(tractor) && isSo(it));
      const isTold = (tractor: Tractor): boolean =>
        matters.some((it) => it !== matter && it.isPlace === matter.isPlace && begins(it.said, tractor)) ||
        drawn.records.some((it) => {
          const inScope = (one: Tractor): boolean => isAbout(it.about, one);
          if (!matter.all.some((one) => one.record === it.id))
            return it.component === "wheel" && begins(inScope, tractor);
          const places = built.filter((one) => one.record === it.id).map((one) => one.name);
          const isSaid = built.some((one) => places.includes(one.name) && isAbout(one.about, tractor));
          return matter.isPlace && it.running && inScope(tractor) && !isSaid;
        });
      for (const key of [alike, asked(matter.counts)]) {
        const keysOf = (tractors: readonly Tractor[]): Set<string> => new Set(tractors.map(key));
        const saidOfAll = (one: number): Set<string> => {
          const silent = keysOf(inYear(one).filter((it) => !matter.counts(it)));
          return new Set([...keysOf(inYear(one))].filter((it) => !silent.has(it)));
        };
        const [before, after] = [saidOfAll(year - 1), saidOfAll(year + 1)];
        const said = keysOf(inYear(year).filter(matter.said));
        const told = keysOf(inYear(year).filter(isTold));
        const having = (part: string | undefined, one: number): Set<string> =>
          keysOf(inYear(one).filter((tractor) => built.some((it) => it.part === part && isAbout(it.about, tractor))));
        const hasPart = (one: string): boolean =>
          built.length === 0 ||
          ["HW-1", "HW-2"].some(
            (part) =>
              having(part, year).has(one) && (having(part, year - 1).has(one) || having(part, year + 1).has(one)),
          );
        for (const tractor of inYear(year)) {
          const its = key(tractor);
          if (before.has(its) && after.has(its) && !said.has(its) && !told.has(its) && (matter.isPlace || hasPart(its)))
            left.add(tractor);
        }
      }
    }
  return [...left];
}
