/**
 * Opens every sheet of every file; when one cannot be read, all faults are said and none is brought in. A sheet that the workbook
 * hides is only read where the mapping names it: whoever looks at the workbook does not know of it. Both is said.
 */
import { openSheet, type Sheet } from "./import-rows.ts";
import type { Mappings } from "./mapping.ts";
import type { CsvManner } from "./read-csv.ts";
import { readSheets } from "./read-sheets.ts";
import { SheetError } from "./sheet.ts";
import { counted } from "./show-plan.ts";

export async function openSheets(
  paths: readonly string[],
  mappings: Mappings,
  manner: CsvManner,
  say: (line: string) => void,
): Promise<Sheet[] | undefined> {
  const sheets: Sheet[] = [];
  let faults = 0;
  const trying = async (job: () => Promise<void> | void): Promise<void> => {
    try {
      await job();
    } catch (error) {
      if (!(error instanceof SheetError)) throw error;
      faults++;
      say(error.message);
    }
  };
  const there = new Set<string>();
  for (const path of paths)
    await trying(async () => {
      const { form, grids } = await readSheets(path, manner);
      const how = form.format === "csv" ? ` (${form.encoding}, ${signName(form.delimiter)})` : "";
      for (const { name } of grids) there.add(name);
      for (const grid of grids.filter(({ name }) => !mappings.leaveOut.includes(name)))
        await trying(() => {
          const name = form.format === "xlsx" ? `${path}, sheet '${grid.name}'` : path;
          if (grid.hidden && !mappings.sheets.some((one) => one.sheet === grid.name)) {
            say(`${name}: hidden, so it is not read; show it in the workbook, or name it in a mapping file`);
            return;
          }
          const sheet = openSheet(path, form, grid, mappings.sheets.find((one) => one.sheet === grid.name)?.header);
          say(
            `${name}${how}: ${sheet ? counted(sheet.rows.length, "row") : "empty"}${sheet && sheet.headerRow > 1 ? `, headers in row ${sheet.headerRow}` : ""}`,
          );
          for (const note of grid.notes) say(`  ${note}`);
          if (sheet) sheets.push(sheet);
        });
    });
  const named = [...mappings.sheets.map(({ sheet }) => sheet), ...mappings.leaveOut];
  for (const name of named.filter((one) => !there.has(one)))
    say(`The mapping speaks of a sheet '${name}', which is in none of these files.`);
  if (faults === 0) return sheets;
  say("Nothing was done.");
  return undefined;
}

function signName(sign: string): string {
  return { ",": "comma", ";": "semicolon", "\t": "tab", "|": "bar" }[sign] ?? `'${sign}'`;
}
