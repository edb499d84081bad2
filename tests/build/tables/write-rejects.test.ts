import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { openSheet } from "../../../src/build/tables/import-rows.ts";
import { sheetsIn } from "../../../src/build/tables/read-sheets.ts";
import { Percentage } from "../../../src/build/tables/sheet.ts";
import { rejectsFile, rejectsPath } from "../../../src/build/tables/write-rejects.ts";
import { writeXlsx } from "../../../src/build/tables/write-xlsx.ts";
import { onDisk } from "../../helpers/tiny-folder.ts";

/** The file of rejected rows of a sheet, all rows but the second rejected. */
async function rejects(path: string, bytes: Uint8Array): Promise<Uint8Array> {
  const { form, grids } = await sheetsIn(path, bytes);
  const sheets = grids.flatMap((grid) => openSheet(path, form, grid) ?? []);
  return rejectsFile(
    path,
    sheets.map((sheet) => ({
      sheet,
      reasons: new Map(sheet.rows.filter((_, i) => i !== 1).map(({ number }) => [number, ["=wrong", `row ${number}`]])),
    })),
  );
}

test("CSV: same dialect, same cells, the reasons in front and guarded", async () => {
  const bytes = Buffer.from('sep=;\r\nname;size\r\nM\xfcller;"3;5"\r\nwell;1\r\nshort\r\n', "latin1");
  expect(Buffer.from(await rejects("a.csv", bytes)).toString("latin1")).toBe(
    "sep=;\r\nrejected because;name;size\r\n'=wrong; row 2;M\xfcller;\"3;5\"\r\n'=wrong; row 4;short\r\n".replace(
      /'=wrong; row (\d)/g,
      '"\'=wrong; row $1"',
    ),
  );
});

test("rejected a second time, there is still one column of reasons", async () => {
  const once = await rejects("a.csv", Buffer.from("a,b\n1,2\n3,4\n5,6\n"));
  expect(Buffer.from(await rejects("a.csv", once)).toString()).toBe("rejected because,a,b\n'=wrong; row 2,1,2\n");
});

test("XLSX: numbers, days and what stands above the headers stay what they are", async () => {
  const day = new Date(Date.UTC(1959, 1, 1));
  const rows = [["A title"], [], ["a", "b", "c"], ["0012", 12.5, day], ["well", null, null], ["x", true, null]];
  const { grids } = await sheetsIn("a.xlsx", await rejects("a.xlsx", await writeXlsx("a.xlsx", [{ name: "s", rows }])));
  expect(grids.map(({ name, rows: it }) => [name, ...it.map((row) => row.cells)])).toEqual([
    [
      "s",
      [null, "A title", null, null],
      [null, null, null, null],
      ["rejected because", "a", "b", "c"],
      ["'=wrong; row 4", "0012", 12.5, day],
      ["'=wrong; row 6", "x", true, null],
    ],
  ]);
});

test("XLSX: a percentage goes back as one, and is read as the same number again", async () => {
  const rows = [["a"], [new Percentage(12.5)], [new Percentage(50)], [new Percentage(50)]];
  const { grids } = await sheetsIn("a.xlsx", await rejects("a.xlsx", await writeXlsx("a.xlsx", [{ name: "s", rows }])));
  expect(grids[0]?.rows.map(({ cells }) => cells[1])).toEqual(["a", new Percentage(12.5), new Percentage(50)]);
});

test("a place that was named is used as it was named, unless another file lies there", async () => {
  const folder = await onDisk({ "mine.csv": "mended" });
  const at = (name: string): string =>
    rejectsPath(join(folder, "a.csv"), Buffer.from("new"), join(folder, name)).slice(folder.length + 1);
  expect(at("out.csv")).toBe("out.csv");
  expect(at("out")).toBe("out");
  expect(at("mine.csv")).toBe("mine.rejected.csv");
});

test("a file that somebody may be mending is never written over", async () => {
  const folder = await onDisk({ "a.rejected.csv": "mended", "b.rejected.csv": "same" });
  const at = (name: string, text: string): string =>
    rejectsPath(join(folder, name), Buffer.from(text)).slice(folder.length + 1);
  expect(at("a.csv", "new")).toBe("a.rejected-2.csv");
  expect(at("a.rejected.csv", "new")).toBe("a.rejected-2.csv");
  expect(at("b.csv", "same")).toBe("b.rejected.csv");
  writeFileSync(join(folder, "a.rejected-2.csv"), "more");
  expect(at("a.rejected-2.csv", "new")).toBe("a.rejected-3.csv");
  expect(at("c", "new")).toBe("c.rejected");
});
