/** What the records say of parts, by part and by place, for asking about many parts and cars. Made once, never changed. */
import type { Catalog } from "../records/catalog.ts";
import type { Built, Kit, Mixed, Setting, StandsIn, Statement, StatementOf, Supersedes } from "../records/statement.ts";
import { ALL, type CarSet, NONE } from "../scope/diagram.ts";
import type { Space } from "../scope/space.ts";

export interface PartIndex {
  readonly space: Space;
  readonly catalog: Catalog;
  readonly builtAt: ReadonlyMap<string, readonly (Built | Mixed)[]>;
  readonly builtWith: ReadonlyMap<string, readonly (Built | Mixed)[]>;
  /** What is said of a part where another belongs. */
  readonly standInsOf: ReadonlyMap<string, readonly StandsIn[]>;
  readonly ordersOf: ReadonlyMap<string, readonly Supersedes[]>;
  /** What is in a kit. */
  readonly contentsOf: ReadonlyMap<string, Kit["contents"]>;
  readonly settings: readonly Setting[];
  /** By record the cars for which another record has ended its instructions. */
  readonly ended: ReadonlyMap<string, CarSet>;
  /** Of these the cars for which that other record was not ended itself. */
  readonly endedForGood: ReadonlyMap<string, CarSet>;
}

export function openPartIndex(catalog: Catalog): PartIndex {
  const { space } = catalog;
  const builtAt = new Map<string, (Built | Mixed)[]>();
  const builtWith = new Map<string, (Built | Mixed)[]>();
  const standInsOf = new Map<string, StandsIn[]>();
  const ordersOf = new Map<string, Supersedes[]>();
  const contentsOf = new Map<string, Kit["contents"][number][]>();
  const settings: Setting[] = [];
  const cancels: StatementOf<"cancels">[] = [];
  const read = (statement: Statement): void => {
    if (statement.type === "built" || statement.type === "mixed") {
      add(builtAt, statement.place, statement);
      const parts = statement.type === "mixed" ? statement.parts : [statement.part];
      for (const part of parts) if (part !== undefined) add(builtWith, part, statement);
    } else if (statement.type === "stands-in") add(standInsOf, statement.part, statement);
    else if (statement.type === "supersedes") add(ordersOf, statement.old, statement);
    else if (statement.type === "setting") settings.push(statement);
    else if (statement.type === "kit")
      for (const content of statement.contents) add(contentsOf, statement.kit, content);
    else if (statement.type === "cancels") cancels.push(statement);
  };
  for (const record of catalog.records.values()) record.statements.forEach(read);
  const ended = endedBy(space, cancels, () => NONE);
  const endedForGood = endedBy(space, cancels, ({ record }) => ended.get(record) ?? NONE);
  return { space, catalog, builtAt, builtWith, standInsOf, ordersOf, contentsOf, settings, ended, endedForGood };
}

/** By record the cars of the cancellations that name it, but for those left out of each. */
function endedBy(
  { sets }: Space,
  cancels: readonly StatementOf<"cancels">[],
  leftOut: (cancel: StatementOf<"cancels">) => CarSet,
): Map<string, CarSet> {
  const ended = new Map<string, CarSet>();
  for (const cancel of cancels) {
    const cars = sets.minus(cancel.scope?.cars ?? ALL, leftOut(cancel));
    ended.set(cancel.target, sets.or(ended.get(cancel.target) ?? NONE, cars));
  }
  return ended;
}

/** The cars that the plant fitted a part to, or in a mixed stretch may have. */
export function carsBuiltWith({ builtWith, space }: Pick<PartIndex, "builtWith" | "space">, part: string): CarSet {
  return space.any((builtWith.get(part) ?? []).map((statement) => statement.scope.cars));
}

/**
 * Those of the cars for which a statement holds: within its scope, in its place, and not ended by another record. Where nobody
 * says which place is meant, a permission for one place permits nothing, and a refusal for one place refuses. Where the record that
 * ended it was ended itself, nobody says that a permission holds again, nor that a refusal does not.
 */
export function whereHolds(
  index: PartIndex,
  statement: StandsIn | Supersedes,
  cars: CarSet,
  place?: string | undefined,
): CarSet {
  const { scope, record } = statement;
  const { sets } = index.space;
  if (statement.type === "stands-in" && statement.place !== undefined && statement.place !== place)
    if (place !== undefined || isPermission(statement)) return NONE;
  const within = scope ? sets.and(cars, scope.cars) : cars;
  const refuses = statement.type === "stands-in" && !isPermission(statement);
  const ended = (refuses ? index.endedForGood : index.ended).get(record);
  return ended === undefined ? within : sets.minus(within, ended);
}

/** Whether a statement permits; every other one refuses. */
export function isPermission({ verdict }: StandsIn): boolean {
  return verdict === "yes" || verdict === "on-conditions";
}

function add<T>(map: Map<string, T[]>, key: string, item: T): void {
  const list = map.get(key);
  if (list) list.push(item);
  else map.set(key, [item]);
}
