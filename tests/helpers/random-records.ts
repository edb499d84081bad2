/**
 * Random records about a small fleet of tractors, as files for the reader, and the slow twin of the audit: kind by kind and pair by
 * pair, by plain loops over what was drawn, without sets.
 */
import fc from "fast-check";
import type { Folder } from "./tiny-folder.ts";

const LINES = ["B", "H"];
const YEARS = [1957, 1958, 1959, 1960];
const PLANTS = ["K", "D"];
export interface Kind {
  readonly line: string;
  readonly my: number;
  readonly plant: string;
}
/** Those that were built: the Heron from 1959, and Dunmoor opened in that year. */
export const KINDS: readonly Kind[] = LINES.flatMap((line) =>
  YEARS.flatMap((my) => PLANTS.map((plant) => ({ line, my, plant }))),
).filter(({ line, my, plant }) => (line === "B" || my >= 1959) && (plant === "K" || my >= 1959));

const PARTS = ["HT-1", "HT-2", "HT-3"];
const RECORDS = ["R-1", "R-2", "R-3"];

interface About {
  readonly lines: readonly string[];
  readonly from: number;
  readonly to: number;
  readonly plants: readonly string[];
}
export interface DrawnRecords {
  readonly built: readonly {
    readonly record: string;
    readonly place: string;
    readonly part: string;
    readonly about: About;
  }[];
  readonly orders: readonly {
    readonly record: string;
    readonly old: string;
    readonly new: string;
    readonly about: About;
  }[];
  readonly uses: readonly {
    readonly record: string;
    readonly part: string;
    readonly for: string;
    readonly yes: boolean;
    readonly about: About;
  }[];
  readonly settings: readonly {
    readonly record: string;
    readonly name: string;
    readonly high: number;
    readonly about: About;
  }[];
  /** R-3 ends the first record for these. */
  readonly ended: About | undefined;
}

const about: fc.Arbitrary<About> = fc
  .tuple(
    fc.subarray(LINES, { minLength: 1 }),
    fc.constantFrom(...YEARS),
    fc.constantFrom(...YEARS),
    fc.subarray(PLANTS, { minLength: 1 }),
  )
  .map(([lines, a, b, plants]) => ({ lines, from: Math.min(a, b), to: Math.max(a, b), plants }));
const part = fc.constantFrom(...PARTS);
const record = fc.constantFrom(...RECORDS);

export const drawnRecords: fc.Arbitrary<DrawnRecords> = fc.record({
  built: fc.array(fc.record({ record, place: fc.constantFrom("front", "rear"), part, about }), {
    minLength: 1,
    maxLength: 4,
  }),
  orders: fc.array(fc.record({ record, old: part, new: part, about }), { minLength: 1, maxLength: 5 }),
  uses: fc.array(fc.record({ record, part, for: part, yes: fc.boolean(), about }), { minLength: 1, maxLength: 5 }),
  settings: fc.array(fc.record({ record, name: fc.constantFrom("gap", "play"), high: fc.constantFrom(1, 2), about }), {
    maxLength: 4,
  }),
  ended: fc.option(about, { nil: undefined }),
});

const OF_CARS = [
  "maker.yaml",
  "vehicles/traits.yaml",
  "vehicles/all.yaml",
  "vehicles/badger.yaml",
  "vehicles/heron.yaml",
];

/** Of the tiny folder the files that say which cars there are. */
export function carsOf(tiny: Folder): Folder {
  return Object.fromEntries(OF_CARS.map((path) => [path, tiny[path] as string]));
}

/** The files that say it, beside the traits and lines of the tiny folder. */
export function filesOf(drawn: DrawnRecords, tiny: Folder): Folder {
  const scope = ({ lines, from, to, plants }: About): string =>
    `line=${lines.join(",")}; my=${from}-${to}; plant=${plants.join(",")}`;
  const front = (id: string): object => ({
    id,
    title: `Record ${id}`,
    issued: "1957-01-01",
    kinds: ["part"],
    components: ["wheel"],
    starts: "at once",
    scope: "all",
    built: drawn.built
      .filter((it) => it.record === id)
      .map(({ place, part, about: its }) => ({ place, part, scope: scope(its) })),
    supersedes: drawn.orders
      .filter((it) => it.record === id)
      .map((it) => ({ old: it.old, new: it.new, scope: scope(it.about) })),
    "stands-in": drawn.uses
      .filter((it) => it.record === id)
      .map((it) => ({
        part: it.part,
        for: it.for,
        verdict: it.yes ? "yes" : "does-not-go-on",
        why: "so",
        scope: scope(it.about),
      })),
    settings: drawn.settings
      .filter((it) => it.record === id)
      .map((it) => ({ name: it.name, window: `..${it.high}`, unit: "mm", scope: scope(it.about) })),
    cancels: id === "R-3" && drawn.ended ? [{ record: "R-1", scope: scope(drawn.ended) }] : [],
  });
  return {
    ...carsOf(tiny),
    "components/chassis.yaml":
      "id: chassis\nname: Chassis\norder: 1\ncomponents:\n  - { id: wheel, name: wheel, places: [front, rear] }\n",
    "parts/wheel.yaml": `component: wheel\nparts: ${JSON.stringify(PARTS.map((number) => ({ number, name: "wheel" })))}\n`,
    // JSON is YAML.
    ...Object.fromEntries(
      RECORDS.map((id) => [`changes/1957/${id}.md`, `---\n${JSON.stringify(front(id))}\n---\nA story.\n`]),
    ),
  };
}

/** By rule the kinds of tractors that show a fault. */
export function slowAudit(drawn: DrawnRecords): Map<string, Kind[]> {
  const isAbout = ({ lines, from, to, plants }: About, kind: Kind): boolean =>
    lines.includes(kind.line) && kind.my >= from && kind.my <= to && plants.includes(kind.plant);
  const holds = (it: { record: string; about: About }, kind: Kind): boolean =>
    isAbout(it.about, kind) && !(it.record === "R-1" && drawn.ended !== undefined && isAbout(drawn.ended, kind));
  const anyTwo = <T>(list: readonly T[], so: (a: T, b: T) => boolean): boolean =>
    list.some((a, i) => list.some((b, j) => i < j && so(a, b)));
  const wasBuilt = (one: string, kind: Kind): boolean =>
    drawn.built.some((it) => it.part === one && isAbout(it.about, kind));
  const sentFor = (start: string, kind: Kind): string[] => {
    const reached = drawn.orders.filter((it) => it.old === start && holds(it, kind)).map((it) => it.new);
    for (const at of reached)
      for (const it of drawn.orders)
        if (it.old === at && holds(it, kind) && !reached.includes(it.new)) reached.push(it.new);
    return reached;
  };
  // What no plant fitted may be on any tractor.
  const mayHave = (one: string, kind: Kind): boolean =>
    wasBuilt(one, kind) || !KINDS.some((other) => wasBuilt(one, other));
  const isSplit = (old: string): boolean =>
    new Set(drawn.orders.filter((it) => it.old === old).map((it) => it.new)).size > 1;
  const found: Record<string, (kind: Kind) => boolean> = {
    "two-parts-in-one-place": (kind) =>
      anyTwo(
        drawn.built.filter((it) => isAbout(it.about, kind)),
        (a, b) => a.place === b.place && a.part !== b.part,
      ),
    "two-figures-in-force": (kind) =>
      anyTwo(
        drawn.settings.filter((it) => holds(it, kind)),
        (a, b) => a.name === b.name && a.high !== b.high,
      ),
    "permitted-and-refused": (kind) =>
      anyTwo(
        drawn.uses.filter((it) => holds(it, kind)),
        (a, b) => a.part === b.part && a.for === b.for && a.yes !== b.yes,
      ),
    "two-deliveries": (kind) =>
      anyTwo(
        drawn.orders.filter((it) => holds(it, kind)),
        (a, b) => a.old === b.old && a.new !== b.new,
      ),
    "delivered-but-refused": (kind) =>
      PARTS.some(
        (old) =>
          mayHave(old, kind) &&
          drawn.uses.some(
            (use) => !use.yes && use.for === old && sentFor(old, kind).includes(use.part) && holds(use, kind),
          ),
      ),
    "split-leaves-cars-out": (kind) =>
      PARTS.some(
        (old) => isSplit(old) && wasBuilt(old, kind) && !drawn.orders.some((it) => it.old === old && holds(it, kind)),
      ),
    "delivery-circle": (kind) => PARTS.some((one) => sentFor(one, kind).includes(one)),
  };
  return new Map(Object.entries(found).map(([rule, isFaulty]) => [rule, KINDS.filter(isFaulty)]));
}
