/** The space of tractors: a made-up maker's traits, one of every kind at least, for tests of scopes. */
import { Space } from "../../src/engine/scope/space.ts";
import type { Trait } from "../../src/engine/scope/trait.ts";

const base = { aliases: [], find: "look", effort: 1, phrase: "with {}", otherwise: "without {}", today: false };
const value = (id: string, label: string, aliases: string[] = []) => ({ id, label, aliases });

export const TRACTOR_TRAITS: readonly Trait[] = [
  {
    ...base,
    kind: "list",
    id: "line",
    label: "model line",
    role: "line",
    values: [value("B", "Badger", ["brock"]), value("H", "Heron"), value("M", "Marten")],
  },
  { ...base, kind: "whole", id: "my", label: "model year", aliases: ["year"], role: "year", from: 1957, to: 1962 },
  {
    ...base,
    kind: "list",
    id: "plant",
    label: "plant",
    role: "plant",
    values: [value("K", "Kelby"), value("D2", "Dunmoor")],
  },
  { ...base, kind: "serial", id: "number", label: "chassis number", role: "sequence", prefixes: [""], digits: 4 },
  { ...base, kind: "date", id: "built", label: "build date", role: "date", from: "1956-08-01", to: "1962-07-31" },
  {
    ...base,
    kind: "list",
    id: "fuel",
    label: "fuel",
    values: [value("petrol", "petrol", ["gasoline"]), value("diesel", "diesel oil"), value("tvo", "vaporising oil")],
  },
  { ...base, kind: "whole", id: "tilt", label: "seat tilt", from: -3, to: 3 },
  { ...base, kind: "serial", id: "axle", label: "axle number", prefixes: ["A", "B", "C"], digits: 3 },
  { ...base, kind: "flag", id: "PT", label: "power take-off", aliases: ["pto"] },
  { ...base, kind: "flag", id: "WN", label: "winch" },
  { ...base, kind: "flag", id: "repainted", label: "repainted", today: true },
];

export function tractorSpace(): Space {
  return new Space(TRACTOR_TRAITS);
}

export function tractorTrait(id: string): Trait {
  const trait = TRACTOR_TRAITS.find((one) => one.id === id);
  if (!trait) throw new RangeError(`no tractor has the trait ${id}`);
  return trait;
}
