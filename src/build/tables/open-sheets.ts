/** Opens every sheet of every file; when one cannot be read, all faults are said and none is brought in. */
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
  for (const path of paths)
    await trying(async () => {
      const { form, grids } = await readSheets(path, manner);
      const how = form.format === "csv" ? ` (${form.encoding}, ${signName(form.delimiter)})` : "";
      for (const grid of grids.filter(({ name }) => !mappings.leaveOut.includes(name)))
        await trying(() => {
          const name = form.format === "xlsx" ? `${path}, sheet '${grid.name}'` : path;
          const sheet = openSheet(path, form, grid, mappings.sheets.find((one) => one.sheet === grid.name)?.header);
          say(
            `${name}${how}: ${sheet ? counted(sheet.rows.length, "row") : "empty"}${sheet && sheet.headerRow > 1 ? `, headers in row ${sheet.headerRow}` : ""}`,
          );
          for (const note of grid.notes) say(`  ${note}`);
          if (sheet) sheets.push(sheet);
        });
    });
  if (faults === 0) return sheets;
  say("Nothing was done.");
  return undefined;
}

function signName(sign: string): string {
  return { ",": "comma", ";": "semicolon", "\t": "tab", "|": "bar" }[sign] ?? `'${sign}'`;
}
