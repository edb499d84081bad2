import { counted, UNITS, type Unit } from "./unit-table.ts";

const BY_ID = new Map(UNITS.map((unit) => [unit.id, unit]));

/** The unit that a record names; any other word is a counting unit of its own. */
export function unitNamed(id: string): Unit {
  return BY_ID.get(id) ?? counted(id);
}
