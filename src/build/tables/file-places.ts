/**
 * Where a new file belongs: records in the folder of their model year, as learnt from the records that lie there already; files of
 * every other kind have one place. The place of every file is asked for many times, so each day of a year is looked up once.
 */
import type { DataFile, FileKindName } from "../../engine/records/file-kinds.ts";
import { modelYear } from "../write/model-year.ts";
import { isFields } from "../write/without-defaults.ts";

export type FilePlaces = (kind: FileKindName, id: string, issued: unknown) => string;

export function filePlaces(files: Iterable<DataFile>): FilePlaces {
  const records = [...files].flatMap(({ path, kind, value }) => {
    const year = /^changes\/(\d{4})\//.exec(path)?.[1];
    const issued = isFields(value) ? value.issued : undefined;
    return kind === "change" && year && isDay(issued) ? [{ issued, year: Number(year) }] : [];
  });
  const later = new Map<string, number>();
  const yearsOn = (day: string): number => {
    const known = later.get(day.slice(5));
    if (known !== undefined) return known;
    const found = modelYear(records, day) - Number(day.slice(0, 4));
    later.set(day.slice(5), found);
    return found;
  };
  return (kind, id, issued) => {
    switch (kind) {
      case "change":
        return `changes/${isDay(issued) ? Number(issued.slice(0, 4)) + yearsOn(issued) : "undated"}/${id}.md`;
      case "parts":
        return `parts/${id}.yaml`;
      case "system":
        return `components/${id}.yaml`;
      case "bulletin":
        return `bulletins/${id}.md`;
      default:
        return `${kind}.yaml`;
    }
  };
}

function isDay(value: unknown): value is string {
  return typeof value === "string" && /^\d{4}-\d{2}-\d{2}$/.test(value);
}
