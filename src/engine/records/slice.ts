/**
 * What a page needs to answer for a car of one model line: the records with such cars in their scope and what was built,
 * without stories and marks, which stand on the records' own pages. The page opens it to a catalog and asks the same answers.
 */
import { NONE } from "../scope/diagram.ts";
import { type PackedSet, packSet, unpackSet } from "../scope/pack.ts";
import { readScope } from "../scope/read-scope.ts";
import type { Scope } from "../scope/scope.ts";
import { Space } from "../scope/space.ts";
import type { Trait } from "../scope/trait.ts";
import type { Catalog, ChangeRecord, Component, Line, Part, Plate, System } from "./catalog.ts";
import { readStatements } from "./resolve/statements.ts";
import type { ChangeFile } from "./shapes/change.ts";
import { statementsOf } from "./statement.ts";

export interface Slice {
  readonly format: "yearmark-line/1";
  readonly traits: readonly Trait[];
  readonly plates: readonly Plate[];
  readonly years: readonly number[];
  readonly line: Omit<Line, "cars"> & { readonly cars: PackedSet };
  readonly systems: readonly (Omit<System, "components" | "aliases"> & { readonly components: readonly Component[] })[];
  readonly records: readonly ChangeFile[];
  /** Part number to its name and component. */
  readonly parts: Readonly<Record<string, readonly [name: string, component: string]>>;
}

export function sliceOf(catalog: Catalog, line: Line): Slice {
  const { space } = catalog;
  const records = [...catalog.records.values()].filter(
    (record) => space.sets.and(line.cars, record.scope.cars) !== NONE || statesFor(catalog, record, line),
  );
  const components = new Set(records.flatMap((record) => record.components.map((component) => component.id)));
  const fitted = records.flatMap((record) => [
    ...statementsOf(record.statements, "built").flatMap((it) => it.part ?? []),
    ...statementsOf(record.statements, "mixed").flatMap((it) => it.parts),
  ]);
  return {
    format: "yearmark-line/1",
    traits: space.declared,
    plates: catalog.plates,
    years: catalog.years,
    line: { id: line.id, name: line.name, class: line.class, about: line.about, cars: packSet(line.cars) },
    systems: catalog.systems.map(({ id, name, order, components: own }) => ({
      id,
      name,
      order,
      components: own
        .filter((component) => components.has(component.id))
        .map((component) => ({ ...component, aliases: [] })),
    })),
    records: records.map(({ facts }) => ({ ...facts, story: "", words: [] })),
    parts: Object.fromEntries(
      [...new Set(fitted)].flatMap((number) => {
        const part = catalog.parts.get(number);
        return part ? [[part.number, [part.name, part.component] as const]] : [];
      }),
    ),
  };
}

/** A record may state a figure or part for cars that its own scope leaves out: the ones before the change. */
function statesFor(catalog: Catalog, record: ChangeRecord, line: Line): boolean {
  return record.statements.some(
    (it) => "scope" in it && it.scope !== undefined && catalog.space.sets.and(line.cars, it.scope.cars) !== NONE,
  );
}

export function openSlice(slice: Slice): Catalog {
  const space = new Space(slice.traits);
  const cars = unpackSet(space, slice.line.cars);
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
    const own = facts.components.flatMap((id) => components.get(id) ?? []);
    return [
      facts.id,
      {
        id: facts.id,
        file: "",
        facts,
        scope: scopeAt(facts.scope),
        components: own,
        systems: [...new Set(own.map((component) => component.system))],
        statements: readStatements(facts, scopeAt),
      },
    ];
  });
  const parts = Object.entries(slice.parts).map(([number, [name, component]]): [string, Part] => [
    number,
    { number, name, component, aliases: [], castings: [], marks: {}, features: [] },
  ]);
  return {
    maker: { name: "", title: "", about: "", site: "", language: "en", units: "us" },
    space,
    buildable: cars,
    lines: [{ ...slice.line, cars }],
    years: slice.years,
    systems,
    components,
    places: new Map(
      [...components.values()].flatMap((component) => component.places.map((place) => [place, component] as const)),
    ),
    parts: new Map(parts),
    records: new Map(records),
    bulletins: new Map(),
    cautions: [],
    plates: slice.plates,
    moved: [],
    words: { ignore: [], mean: [] },
  };
}
