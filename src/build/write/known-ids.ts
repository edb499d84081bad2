/** The ids that are in use, and what they tell about the next one. */
import type { Catalog } from "../../engine/records/catalog.ts";
import type { Answers } from "./field.ts";
import { modelYear } from "./model-year.ts";
import { type Neighbour, nextId } from "./next-id.ts";

export function nextRecordId(catalog: Catalog, answers: Answers): string | undefined {
  return nextId(neighboursOf(catalog, answers), usedIds(catalog), Number(answers.year));
}

export function nextBulletinId(catalog: Catalog, issued: string): string | undefined {
  const others = [...catalog.bulletins.values()].map(({ id, facts }) => ({ id, year: yearFor(catalog, facts.issued) }));
  return nextId(others, usedIds(catalog), yearFor(catalog, issued));
}

/** The model year of something issued on a day. */
export function yearFor(catalog: Catalog, issued: string): number {
  const records = [...catalog.records.values()].flatMap(({ file, facts }) => {
    const year = yearOf(file);
    return year === undefined ? [] : [{ issued: facts.issued, year }];
  });
  return modelYear(records, issued);
}

/** Records, parts and components are cited alike, and pages out there may still name what moved: no id is given twice. */
export function takenFault(id: string, catalog: Catalog): string | undefined {
  const taken = [...usedIds(catalog)].find((other) => other.toLowerCase() === id.toLowerCase());
  return taken === undefined ? undefined : `'${taken}' is or was the id of something else`;
}

function usedIds({ records, parts, components, bulletins, moved }: Catalog): Set<string> {
  const ids = [records, parts, components, bulletins].flatMap((all) => [...all.keys()]);
  return new Set([...ids, ...moved.map((move) => move.from)]);
}

/** The records of the same system; without a component those that have none either. */
function neighboursOf(catalog: Catalog, { components }: Answers): Neighbour[] {
  const system = catalog.components.get(String([components].flat()[0] ?? ""))?.system;
  return [...catalog.records.values()]
    .filter((record) => record.systems[0] === system)
    .map(({ id, file, facts }) => ({ id, year: yearOf(file) ?? yearFor(catalog, facts.issued) }));
}

/** The year of the folder that a record lies in. */
function yearOf(file: string): number | undefined {
  const year = /(?:^|\/)(\d{4})\/[^/]+$/.exec(file)?.[1];
  return year === undefined ? undefined : Number(year);
}
