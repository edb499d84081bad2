/**
 * A data folder of an invented maker with as many change records as wanted, the same every time: 20 systems of 150
 * components, six lines, ten years. At each place of each family of lines one part follows another (or one setting),
 * so no two records contradict each other.
 */
import { stringify } from "yaml";
import { makeRecord, type NewPart } from "./make-record.ts";
import { type Random, random } from "./random.ts";
import type { Point } from "./stretches.ts";
import { builtLines, traits } from "./vehicles.ts";
import { FAMILIES, FEATURES, PIECES, PLANTS, SYSTEMS, YEARS } from "./words.ts";

export interface Component {
  readonly id: string;
  readonly name: string;
  readonly system: string;
  readonly aliases: readonly string[];
  /** Groups of places that always change together, such as inner and outer. */
  readonly places: readonly (readonly string[])[];
  /** Its parts look alike and are told apart by marks. */
  readonly marked: boolean;
}

/** What happens at one group of places of one family of lines, in the order of the years. */
export interface Thread {
  readonly component: Component;
  readonly places: readonly string[];
  readonly lines: readonly string[];
  /** The plant that can change over within a year. */
  readonly plant: string;
  readonly points: readonly Point[];
}

const COMPONENTS = 150;
const YEARS_WITH_CHANGES = YEARS.last - YEARS.first;

/** Path inside the folder, and text. */
export function makeFolder(records: number): Map<string, string> {
  const chance = random(records);
  const components = makeComponents(Math.ceil(records / (COMPONENTS * FAMILIES.length * YEARS_WITH_CHANGES * 0.65)));
  const parts: NewPart[] = [];
  const files = new Map<string, string>();
  const ids: string[] = [];
  const first = new Map<string, string>();
  for (const thread of makeThreads(components, records, chance)) {
    for (const { id, year, front, story } of makeRecord(thread, parts, ids, chance)) {
      files.set(`changes/${year}/${id}.md`, `---\n${text(front)}---\n\n${story}\n`);
      if (!first.has(thread.component.id)) first.set(thread.component.id, id);
    }
  }
  const yaml = (path: string, value: object): Map<string, string> => files.set(path, text(value));
  yaml("maker.yaml", {
    name: "Harrowmere Motor Works",
    title: "Harrowmere model changes",
    about: "Generated records, for measuring how long a build takes.",
    site: "https://harrowmere.example/changes/",
  });
  yaml("vehicles/traits.yaml", { traits: traits() });
  for (const { line, file } of builtLines()) yaml(`vehicles/${line}.yaml`, file);
  SYSTEMS.forEach(([id, name], i) => {
    const own = components.filter((component) => component.system === id);
    yaml(`components/${id}.yaml`, {
      id,
      name,
      order: i + 1,
      components: own.map((one) => ({ id: one.id, name: one.name, aliases: one.aliases, places: one.places.flat() })),
    });
  });
  for (const component of components) {
    const own = parts.filter((part) => part.component === component);
    const record = first.get(component.id);
    if (own.length === 0 || record === undefined) continue;
    yaml(`parts/${component.id}.yaml`, {
      component: component.id,
      features: component.marked ? FEATURES.map((feature) => ({ ...feature, record })) : [],
      parts: own.map(({ number, name, marks }) => ({ number, name, ...(component.marked ? { marks } : {}) })),
    });
  }
  yaml("cautions.yaml", { cautions: makeCautions() });
  yaml("words.yaml", {
    ignore: ["what", "changed", "on", "the", "of"],
    mean: [{ say: ["breaks", "brake"], mean: "brakes" }],
  });
  yaml("moved.yaml", {
    moved: ids.slice(0, 5).map((to, i) => ({ kind: "record", from: `OLD-${i + 1}`, to, why: "renamed" })),
  });
  for (const [path, bulletin] of makeBulletins(ids, chance)) files.set(path, bulletin);
  return files;
}

/** The reader of a data folder knows no anchors, so the same list twice is written twice. */
function text(value: object): string {
  return stringify(value, { aliasDuplicateObjects: false });
}

function makeComponents(groups: number): Component[] {
  return PIECES.flatMap(([piece, alias], row) =>
    SYSTEMS.map(([system, , word], column): Component => {
      const name = `${word} ${piece}`;
      return {
        id: name.replaceAll(" ", "-"),
        name,
        system,
        aliases: [`${word} ${alias}`],
        places: Array.from({ length: groups }, (_, i) => {
          const place = i === 0 ? name : `${name}, position ${i + 1}`;
          return (row + column + i) % 2 === 0 ? [`${place}, inner`, `${place}, outer`] : [place];
        }),
        marked: (row + column) % 4 === 0,
      };
    }),
  ).slice(0, COMPONENTS);
}

/** As many points as there shall be records, spread by chance over all threads and years. */
function makeThreads(components: readonly Component[], records: number, chance: Random): Thread[] {
  const threads = components.flatMap((component) =>
    component.places.flatMap((places) =>
      FAMILIES.map((lines) => ({ component, places, lines, plant: chance.pick(PLANTS) })),
    ),
  );
  const slots = threads.flatMap((thread) =>
    Array.from({ length: YEARS_WITH_CHANGES }, (_, i) => ({ thread, year: YEARS.first + 1 + i })),
  );
  const taken = Map.groupBy(chance.some(slots, records), (slot) => slot.thread);
  return [...taken].map(([thread, own]) => ({
    ...thread,
    points: own.map(({ year }) => ({
      year,
      // In the last year there would be no next one for the other plant to follow in.
      sequence: year < YEARS.last && chance.percent(25) ? chance.whole(12_000, 60_000) : undefined,
    })),
  }));
}

function makeCautions(): object[] {
  return SYSTEMS.filter((_, i) => i % 4 === 0).map(([id, name]) => ({
    id: `${id}-work`,
    title: `Working on the ${name.toLowerCase()}`,
    text: "Support the car on stands, take the lead off the battery, and keep to the local rules for waste.",
    systems: [id],
    source: "common practice, no source",
  }));
}

function makeBulletins(ids: readonly string[], chance: Random): [path: string, text: string][] {
  return Array.from({ length: Math.ceil(ids.length / 25) }, (_, i) => {
    const id = `S${String(i + 1).padStart(3, "0")}`;
    const year = chance.whole(YEARS.first + 1, YEARS.last);
    const rows = Array.from(
      { length: chance.whole(3, 12) },
      () => `| [[${chance.pick(ids)}]] | ask for the plate first |`,
    );
    const front = {
      id,
      title: `What came up in the workshops, part ${i + 1}`,
      issued: `${year}-${String(chance.whole(1, 12)).padStart(2, "0")}-15`,
      about: "Records that were asked about most, with a word on each.",
    };
    return [
      `bulletins/${id}.md`,
      `---\n${text(front)}---\n\nThese records were asked about most. Read [[${chance.pick(ids)}]] first.\n\n| Record | What to do |\n| --- | --- |\n${rows.join("\n")}\n`,
    ];
  });
}
