/**
 * Which cars were built. A car was built if it is in a row of its line's file, keeps every rule, and has no
 * equipment that was not made for it and all that was standard.
 */
import { ALL, type CarSet, NONE } from "../../scope/diagram.ts";
import type { Space } from "../../scope/space.ts";
import { span, type Trait } from "../../scope/trait.ts";
import type { Catalog, Line } from "../catalog.ts";
import type { Shaped } from "../read-catalog.ts";
import { resolveScope } from "./scope.ts";

type File = Shaped<"vehicles">;

export function resolveVehicles(files: readonly File[], space: Space): Pick<Catalog, "buildable" | "lines" | "years"> {
  const lineTrait = space.role("line");
  const yearTrait = space.role("year");
  if (lineTrait === undefined || yearTrait === undefined) return { buildable: ALL, lines: [], years: [] };
  const [firstYear, lastYear] = span(space.trait(yearTrait));
  const years = Array.from({ length: lastYear - firstYear + 1 }, (_, i) => firstYear + i);
  const forAll = files.filter((file) => file.value.line === undefined);
  const againstAll = space.any(forAll.map((file) => againstRules(file, space)));
  const byLine = filesByLine(files, space.trait(lineTrait));
  const domain = space.trait(lineTrait);
  const values = domain.kind === "list" ? domain.values : [];
  const lines: Line[] = values.map((value, number) => {
    const file = byLine.get(value.id);
    let cars = space.where(lineTrait, [[number, number]]);
    if (file) cars = builtCars(file, cars, space);
    cars = space.sets.minus(cars, againstAll);
    return { id: value.id, name: value.label, class: file?.value.class, about: file?.value.about, cars };
  });
  for (const file of forAll) {
    if (file.value.built.length > 0 || Object.keys(file.value.equipment).length > 0)
      file.complaints.error([], "rows and equipment need a line", "name the line, or move them to the line's own file");
  }
  return { buildable: space.any(lines.map((line) => line.cars)), lines, years };
}

function filesByLine(files: readonly File[], trait: Trait): Map<string, File> {
  const byLine = new Map<string, File>();
  for (const file of files) {
    const id = file.value.line;
    if (id === undefined) continue;
    if (trait.kind === "list" && !trait.values.some((value) => value.id === id))
      file.complaints.error(
        ["line"],
        `no model line is called '${id}'`,
        `lines are ${trait.values.map((value) => value.id).join(", ")}`,
      );
    if (byLine.has(id)) file.complaints.error(["line"], `two files are about line '${id}'`, "put them into one file");
    byLine.set(id, file);
  }
  return byLine;
}

function builtCars(file: File, line: CarSet, space: Space): CarSet {
  const { complaints, value } = file;
  const rows = value.built.map((text, i) => resolveScope(space, text, ["built", i], complaints).cars);
  let cars = rows.length > 0 ? space.sets.and(line, space.any(rows)) : line;
  cars = space.sets.minus(cars, againstRules(file, space));
  for (const id of Object.keys(value.equipment)) {
    const index = space.find(id);
    if (index === undefined || space.trait(index).kind !== "flag")
      complaints.error(
        ["equipment", id],
        `no equipment is called '${id}'`,
        "declare it in vehicles/traits.yaml as a trait of kind flag",
        { key: true },
      );
  }
  space.declared.forEach((trait, index) => {
    if (trait.kind === "flag" && !trait.today) cars = space.sets.and(cars, equipped(file, trait.id, index, space));
  });
  return cars;
}

/** Standard cars have it, cars that could be ordered with it either way, all others have it not. */
function equipped(file: File, id: string, index: number, space: Space): CarSet {
  const rule = file.value.equipment[id];
  const where = (text: string | undefined, field: string): CarSet =>
    text === undefined ? NONE : resolveScope(space, text, ["equipment", id, field], file.complaints).cars;
  const standard = where(rule?.standard, "standard");
  const offered = space.sets.or(standard, where(rule?.optional, "optional"));
  const has = space.where(index, [[1, 1]]);
  return space.sets.or(space.sets.and(has, offered), space.sets.minus(space.sets.not(has), standard));
}

/** The cars that a rule of the file is about, but that do not keep it. */
function againstRules({ value, complaints }: File, space: Space): CarSet {
  return space.any(
    value.rules.map((rule, i) => {
      const when = resolveScope(space, rule.if, ["rules", i, "if"], complaints).cars;
      const then = resolveScope(space, rule.must, ["rules", i, "must"], complaints).cars;
      return space.sets.minus(when, then);
    }),
  );
}
