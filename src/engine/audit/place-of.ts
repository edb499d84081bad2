import type { Catalog, ChangeRecord, Part } from "../records/catalog.ts";
import type { Path, Place } from "../records/complaint.ts";
import type { Statement } from "../records/statement.ts";

/** The field of a record's file that holds the statements of a type. */
const FIELD: Record<Statement["type"], string> = {
  built: "built",
  mixed: "mixed",
  supersedes: "supersedes",
  "stands-in": "stands-in",
  kit: "kits",
  "service-only": "service-only",
  setting: "settings",
  interval: "intervals",
  procedure: "procedures",
  tool: "tools",
  "left-alone": "left-alone",
  cancels: "cancels",
};

/** A statement, or a field of it. */
export function placeOf(catalog: Catalog, { record, type, index }: Statement, ...field: Path): Place {
  return inRecord(catalog.records.get(record) as ChangeRecord, FIELD[type], index, ...field);
}

export function inRecord({ file }: Pick<ChangeRecord, "file">, ...path: Path): Place {
  return { file, path };
}

/** A field of a part in the file of its component. */
export function inPart(catalog: Catalog, { number, component }: Part, ...field: Path): Place {
  const numbers = numbersIn.get(catalog) ?? numberParts(catalog);
  numbersIn.set(catalog, numbers);
  return { file: `parts/${component}.yaml`, path: ["parts", numbers.get(number) ?? 0, ...field] };
}

/** By part, which one it is in its file. Counted once for each catalog. */
const numbersIn = new WeakMap<Catalog, ReadonlyMap<string, number>>();

function numberParts({ parts }: Catalog): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  return new Map(
    [...parts.values()].map(({ number, component }): [string, number] => {
      const at = counts.get(component) ?? 0;
      counts.set(component, at + 1);
      return [number, at];
    }),
  );
}
