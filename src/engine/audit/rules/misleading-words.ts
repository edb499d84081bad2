import type { Path, Place } from "../../records/complaint.ts";
import { inPart, inRecord } from "../place-of.ts";
import type { Rule, World } from "../rule.ts";
import { textsOf } from "../texts-of.ts";

/** Which side that is depends on where the wheel stands. */
const BY_SEAT = {
  say: /\b(?:driver|passenger)(?:['’]?s|s['’])?(?:[ -]hand)?[ -]side\b|\bside of the (?:driver|passenger)\b/gi,
  because: "it is the other side where the wheel stands on the right: say left or right, seen facing forward",
};

/**
 * In names, places, marks, titles, conditions and instructions, and in what says where to look, nobody says the driver's or the
 * passenger's side, nor what checks.yaml lists under 'never-say'. Explanations (story, why, otherwise, and what is said to the customer) may:
 * that such words mislead has to be written somewhere.
 */
export const misleadingWords: Rule = {
  id: "misleading-words",
  gravity: "error",
  about: "Names and instructions say left and right as seen facing forward, and no word that the data forbids.",
  why: "In a car with the wheel on the right the driver's side is the other one, and so is the part.",
  mend: "Write left or right, or the word that is meant.",
  example: {
    wrong: { "changes/1959/HY59-01.md": ["do: Bleed the lift.,", "do: Bleed the lift on the driver's side.,"] },
    right: { "changes/1959/HY59-01.md": ["do: Bleed the lift.,", "do: Bleed the lift on the left.,"] },
  },
  *find(world) {
    const own = world.checks["never-say"].map(({ say, because }) => ({
      say: new RegExp(`(?<![\\p{L}\\d])${say.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")}(?![\\p{L}\\d])`, "giu"),
      because,
    }));
    for (const { at, text, record } of namesAndInstructions(world))
      for (const { say, because } of [BY_SEAT, ...own])
        for (const match of text.matchAll(say))
          yield {
            at: { ...at, within: [match.index, match.index + match[0].length] },
            message: `'${match[0]}' misleads`,
            hint: because,
            records: record === undefined ? [] : [record],
            names: [],
          };
  },
};

interface Said {
  readonly at: Place;
  readonly text: string;
  readonly record: string | undefined;
}

function* namesAndInstructions({ catalog }: World): Generator<Said> {
  for (const system of catalog.systems)
    for (const [i, { name, places }] of system.components.entries())
      for (const [path, text] of [[["name"], name], ...places.map((place, j) => [["places", j], place])] as [
        (string | number)[],
        string,
      ][])
        yield {
          at: { file: `components/${system.id}.yaml`, path: ["components", i, ...path] },
          text,
          record: undefined,
        };
  for (const [i, { label, find }] of [...catalog.space.declared.values()].entries())
    for (const [field, text] of Object.entries({ label, find }))
      yield { at: { file: "vehicles/traits.yaml", path: ["traits", i, field] }, text, record: undefined };
  for (const [i, { where }] of catalog.plates.entries())
    yield { at: { file: "vehicles/plates.yaml", path: ["plates", i, "where"] }, text: where, record: undefined };
  const features = new Set<object>();
  for (const part of catalog.parts.values()) {
    yield { at: inPart(catalog, part, "name"), text: part.name, record: undefined };
    for (const [id, mark] of Object.entries(part.marks))
      if (typeof mark === "string") yield { at: inPart(catalog, part, "marks", id), text: mark, record: undefined };
    if (features.has(part.features)) continue;
    features.add(part.features);
    for (const [i, { name, note }] of part.features.entries())
      for (const [field, text] of Object.entries({ name, note }))
        if (text !== undefined)
          yield {
            at: { file: `parts/${part.component}.yaml`, path: ["features", i, field] },
            text,
            record: undefined,
          };
  }
  for (const record of catalog.records.values()) {
    const { facts, id } = record;
    const names = facts.settings.map((it, i) => ({ path: ["settings", i, "name"], text: it.name }));
    const done = facts.intervals.map((it, i) => ({ path: ["intervals", i, "name"], text: it.name }));
    for (const { path, text } of [...textsOf(record), ...names, ...done])
      if (!isExplanation(path)) yield { at: inRecord(record, ...path), text, record: id };
  }
}

function isExplanation(path: Path): boolean {
  return ["story", "why", "otherwise", "customer", "left-alone"].some((field) => path.includes(field));
}
