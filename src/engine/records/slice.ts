/**
 * What a page needs to answer for a car of one model line, beside the index of lines: the records with such cars in their
 * scope, without stories, which stand on the records' own pages. The page opens it to a catalog and asks the same
 * answers as the command line.
 */
import { NONE } from "../scope/diagram.ts";
import { readScope } from "../scope/read-scope.ts";
import type { Scope } from "../scope/scope.ts";
import type { Catalog, Caution, ChangeRecord, Component, Feature, Line, Move, Part, System } from "./catalog.ts";
import type { Lines } from "./lines-index.ts";
import { readStatements } from "./resolve/statements.ts";
import type { ChangeFile } from "./shapes/change.ts";
import type { SumJob } from "./shapes/sums.ts";
import { partsNamed, statementsOf } from "./statement.ts";

export interface Slice {
  readonly format: "yearmark-line/1";
  readonly line: string;
  readonly systems: readonly (Omit<System, "components" | "aliases"> & { readonly components: readonly Component[] })[];
  readonly cautions: readonly Caution[];
  readonly records: readonly ChangeFile[];
  /** Part numbers that were renamed or withdrawn. */
  readonly moved?: readonly Move[];
  /** Shop sums whose record is among these. */
  readonly sums?: readonly SumJob[];
  /** By part number. */
  readonly parts: Readonly<Record<string, PackedPart>>;
  /** Parts of the same components that only records of other lines name: they may be taken for one of these. */
  readonly relatives?: Readonly<Record<string, PackedPart>>;
  /** The marks by which the parts of a component are told apart, by its id. */
  readonly features?: Readonly<Record<string, readonly Feature[]>>;
}

type PackedPart = Pick<Part, "name" | "component" | "hand"> & {
  readonly castings?: readonly string[];
  readonly marks?: Part["marks"];
};

export function sliceOf(catalog: Catalog, line: Line): Slice {
  const { space } = catalog;
  const concerned = new Set(
    [...catalog.records.values()]
      .filter((record) => space.sets.and(line.cars, record.scope.cars) !== NONE || statesFor(catalog, record, line))
      .map((record) => record.id),
  );
  for (const record of speakOfParts(catalog, line)) concerned.add(record);
  // Whoever ends one of them goes along, whatever it is about itself.
  const records = [...catalog.records.values()].filter(
    (record) =>
      concerned.has(record.id) || statementsOf(record.statements, "cancels").some((it) => concerned.has(it.target)),
  );
  const components = new Set(records.flatMap((record) => record.components.map((component) => component.id)));
  const named = new Set(records.flatMap((record) => record.statements.flatMap(partsNamed)));
  const parts = [...named].flatMap((number) => catalog.parts.get(number) ?? []);
  const families = new Set(parts.map((part) => part.component));
  const relatives = [...catalog.parts.values()].filter((it) => families.has(it.component) && !named.has(it.number));
  const sums = catalog.sums.filter((job) => records.some((record) => record.id === job.record));
  return {
    format: "yearmark-line/1",
    line: line.id,
    systems: catalog.systems.map(({ id, name, order, components: own }) => ({
      id,
      name,
      order,
      components: own
        .filter((component) => components.has(component.id))
        .map((component) => ({ ...component, aliases: [] })),
    })),
    cautions: catalog.cautions,
    moved: catalog.moved.filter((move) => move.kind === "part"),
    sums,
    records: records.map(({ facts }) => ({ ...facts, story: "", words: [] })),
    parts: Object.fromEntries(parts.map((part) => [part.number, packPart(part)])),
    relatives: Object.fromEntries(relatives.map((part) => [part.number, packPart(part)])),
    features: Object.fromEntries(
      parts.filter((part) => part.features.length > 0).map((part) => [part.component, part.features]),
    ),
  };
}

function packPart({ name, component, hand, castings, marks }: Part): PackedPart {
  return {
    name,
    component,
    ...(hand ? { hand } : {}),
    ...(castings.length > 0 ? { castings } : {}),
    ...(Object.keys(marks).length > 0 ? { marks } : {}),
  };
}

/** A record may state a figure or part for cars that its own scope leaves out: the ones before the change. */
function statesFor(catalog: Catalog, record: ChangeRecord, line: Line): boolean {
  return record.statements.some(
    (it) => "scope" in it && it.scope !== undefined && catalog.space.sets.and(line.cars, it.scope.cars) !== NONE,
  );
}

/**
 * The records that say of some part whether it may go on cars of a line, or what is delivered for it, be they about that line or
 * not: in place of a part of these cars, of one that may stand in for it, that is delivered for it, or that must go along.
 */
function speakOfParts({ space, records }: Catalog, line: Line): Set<string> {
  const isForLine = (it: { readonly scope: Scope | undefined }): boolean =>
    it.scope === undefined || space.sets.and(line.cars, it.scope.cars) !== NONE;
  const all = [...records.values()]
    .flatMap((record) => record.statements)
    .filter((it) => !("scope" in it) || isForLine(it));
  const built = [...statementsOf(all, "built"), ...statementsOf(all, "mixed")];
  const parts = new Set(built.flatMap(partsNamed));
  const found = new Set<string>();
  const standIns = statementsOf(all, "stands-in");
  const orders = statementsOf(all, "supersedes");
  for (let before = -1; before !== parts.size + found.size; ) {
    before = parts.size + found.size;
    for (const it of standIns) {
      if (it.for !== undefined ? !parts.has(it.for) : it.scope === undefined && !parts.has(it.part)) continue;
      found.add(it.record);
      for (const part of [it.part, ...it.with]) parts.add(part);
    }
    for (const it of orders) {
      if (!parts.has(it.old)) continue;
      found.add(it.record);
      for (const part of [it.new, ...it.with]) parts.add(part);
    }
  }
  return found;
}

export function openSlice({ space, lines, years, plates }: Lines, slice: Slice): Catalog {
  const own = lines.filter((line) => line.id === slice.line);
  const systems = slice.systems.map((system): System => ({ ...system, aliases: [] }));
  const components = new Map(
    systems.flatMap((system) => system.components).map((component) => [component.id, component]),
  );
  const scopeAt = (text: string): Scope => {
    const read = readScope(space, text);
    // The build has read every scope before; one that cannot be read here would be a fault of the build, and holds for no car.
    return "scope" in read ? read.scope : { text, alternatives: [], cars: NONE };
  };
  const records = slice.records.map((facts): [string, ChangeRecord] => {
    const stated = readStatements(facts, scopeAt);
    const changed = facts.components.flatMap((id) => components.get(id) ?? []);
    return [
      facts.id,
      {
        id: facts.id,
        file: "",
        facts,
        scope: scopeAt(facts.scope),
        components: changed,
        systems: [...new Set(changed.map((component) => component.system))],
        statements: facts.withdrawn === undefined ? stated : [],
        stated,
      },
    ];
  });
  const opened = (packed: Slice["parts"]): Map<string, Part> =>
    new Map(
      Object.entries(packed).map(([number, { castings = [], marks = {}, ...part }]): [string, Part] => {
        const features = slice.features?.[part.component] ?? [];
        return [number, { number, ...part, castings: [...castings], aliases: [], marks, features }];
      }),
    );
  return {
    maker: { name: "", title: "", about: "", site: "", language: "en", units: "us" },
    space,
    buildable: space.any(own.map((line) => line.cars)),
    lines: own,
    years,
    systems,
    components,
    places: new Map(
      [...components.values()].flatMap((component) => component.places.map((place) => [place, component] as const)),
    ),
    parts: opened(slice.parts),
    relatives: opened(slice.relatives ?? {}),
    records: new Map(records),
    bulletins: new Map(),
    cautions: slice.cautions,
    plates,
    moved: slice.moved ?? [],
    sums: slice.sums ?? [],
    words: { ignore: [], plain: [], mean: [] },
  };
}
