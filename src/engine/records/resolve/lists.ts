import type { Space } from "../../scope/space.ts";
import { numberOf } from "../../scope/trait.ts";
import type { Caution, Move, Plate } from "../catalog.ts";
import type { Shaped } from "../read-catalog.ts";
import { placeFor, type Systems } from "./components.ts";
import { mustKnow } from "./names.ts";

export function checkCautions(file: Shaped<"cautions"> | undefined, systems: Systems): Caution[] {
  if (!file) return [];
  file.value.cautions.forEach((caution, i) => {
    caution.systems.forEach((id, j) => {
      mustKnow(systems.systemsById, id, "system", ["cautions", i, "systems", j], file.complaints, "components/");
    });
    caution.components.forEach((id, j) => {
      mustKnow(systems.components, id, "component", ["cautions", i, "components", j], file.complaints, placeFor(id));
    });
  });
  return file.value.cautions;
}

/** A plate reads traits that exist, and its codes stand for values that they have. Without traits nothing can be said. */
export function checkPlates(file: Shaped<"plates"> | undefined, space: Space): Plate[] {
  if (!file || space.declared.length === 0) return [];
  file.value.plates.forEach((plate, i) => {
    plate.positions.forEach((position, j) => {
      if (position.trait === undefined) return;
      const path = ["plates", i, "positions", j];
      const index = space.find(position.trait);
      if (index === undefined) {
        const known = new Map(space.declared.map((trait) => [trait.id, trait]));
        mustKnow(known, position.trait, "trait", [...path, "trait"], file.complaints, "vehicles/traits.yaml");
        return;
      }
      for (const [code, value] of Object.entries(position.codes ?? {})) {
        if (numberOf(space.trait(index), String(value)) === undefined)
          file.complaints.error(
            [...path, "codes", code],
            `${space.trait(index).label} has no value '${value}'`,
            "name a value of the trait",
          );
        if (code.length !== position.length)
          file.complaints.error(
            [...path, "codes", code],
            `code '${code}' has ${code.length} characters, not ${position.length}`,
            "mend the code or the length",
            { key: true },
          );
      }
    });
  });
  return file.value.plates;
}

type Known = Record<Move["kind"], ReadonlyMap<string, unknown>>;

/** What moved must be gone, and what it moved to must be there: an old address never hides a living page. */
export function checkMoved(file: Shaped<"moved"> | undefined, known: Known): Move[] {
  if (!file) return [];
  const { moved } = file.value;
  moved.forEach((move, i) => {
    if (known[move.kind].has(move.from))
      file.complaints.error(
        ["moved", i, "from"],
        `${move.kind} '${move.from}' still exists`,
        "an id that moved is no longer used",
      );
    if (moved.findIndex((other) => other.kind === move.kind && other.from === move.from) < i)
      file.complaints.error(
        ["moved", i, "from"],
        `${move.kind} '${move.from}' stands above already`,
        "an id leads to one place: keep one of the two lines",
      );
    const next = moved.find((other) => other.kind === move.kind && other.from === move.to);
    if (move.to !== undefined && next === undefined)
      mustKnow(
        known[move.kind],
        move.to,
        move.kind,
        ["moved", i, "to"],
        file.complaints,
        "the data, or leave 'to' out",
      );
    if (move.to !== undefined && endsNowhere(move, moved))
      file.complaints.error(
        ["moved", i, "to"],
        `the moves from '${move.from}' run in a circle`,
        "end them at an id that exists",
      );
  });
  return moved;
}

function endsNowhere(start: Move, moved: readonly Move[]): boolean {
  const seen = new Set<string>();
  let at: Move | undefined = start;
  while (at?.to !== undefined) {
    if (seen.has(at.from)) return true;
    seen.add(at.from);
    const to: string = at.to;
    at = moved.find((other) => other.kind === start.kind && other.from === to);
  }
  return false;
}
