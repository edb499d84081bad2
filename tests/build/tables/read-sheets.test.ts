import { join } from "node:path";
import { expect, test } from "vitest";
import { readSheets, sheetsIn } from "../../../src/build/tables/read-sheets.ts";
import { writeXlsx } from "../../../src/build/tables/write-xlsx.ts";
import { onDisk } from "../../helpers/tiny-folder.ts";

test("a workbook is known by its first bytes, whatever it is called", async () => {
  const folder = await onDisk({ "a.csv": await writeXlsx("a", [{ name: "s", rows: [["x"]] }]), "b.xlsx": "a;b\n" });
  expect((await readSheets(join(folder, "a.csv"))).form.format).toBe("xlsx");
  expect((await readSheets(join(folder, "b.xlsx"))).form).toMatchObject({ format: "csv", delimiter: ";" });
});

test("a workbook of the old kind is refused with what to do", async () => {
  const old = Uint8Array.of(0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1);
  await expect(sheetsIn("a.xls", old)).rejects.toThrow(
    "a.xls: a workbook of the old kind, or one with a password; save it as XLSX or CSV",
  );
});
