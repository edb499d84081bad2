/**
 * Model lines that no file says the buildable cars of: then every combination of them counts as built, which is seldom meant, and is what
 * is left when such a file was deleted or lies elsewhere.
 */
import type { Complaint } from "./complaint.ts";
import { type DataFile, FILE_KINDS } from "./file-kinds.ts";
import { fieldOf, listOf } from "./unshaped.ts";

/** Nothing while a file about cars cannot be read: it may be the one. */
export function linesWithoutFile(files: readonly DataFile[]): Complaint[] {
  const vehicles = files.filter(({ kind }) => kind === "vehicles");
  if (vehicles.some(({ broken }) => broken)) return [];
  const written = new Set(vehicles.map(({ value }) => textOf(value, "line")));
  return files
    .filter(({ kind, broken }) => kind === "traits" && !broken)
    .flatMap(({ path: file, value }) =>
      listOf(value, "traits").flatMap((trait, i) =>
        (textOf(trait, "role") === "line" ? listOf(trait, "values") : []).flatMap((line, j): Complaint[] => {
          const id = textOf(line, "id");
          if (id === undefined || written.has(id)) return [];
          return [
            {
              ...{ file, path: ["traits", i, "values", j, "id"], severity: "warning", rule: "line-without-file" },
              message: `no file says which cars of line '${id}' were built, so every combination counts as built`,
              hint: `write ${FILE_KINDS.vehicles.home.replace(/<[^>]*>/, (textOf(line, "label") ?? id).toLowerCase().replaceAll(/\W+/g, "-"))} with 'line: ${id}' and 'built:', the combinations that were; 'built: [all]' if all were`,
            },
          ];
        }),
      ),
    );
}

function textOf(value: unknown, name: string): string | undefined {
  const field = fieldOf(value, name);
  return typeof field === "string" ? field : undefined;
}
