/** Faults of workbooks; what an independent writer makes of them stands in tests/outside/xlsx.test.ts. */
import { utils, type WorkBook, write } from "@e965/xlsx";
import { strToU8, unzipSync, zipSync } from "fflate";
import { expect, test } from "vitest";
import { MOST_UNPACKED } from "../../../src/build/tables/limits.ts";
import { readXlsx } from "../../../src/build/tables/read-xlsx.ts";
import { Percentage } from "../../../src/build/tables/sheet.ts";
import { writeXlsx } from "../../../src/build/tables/write-xlsx.ts";

const book = await writeXlsx("book.xlsx", [
  {
    name: "built",
    rows: [
      ["place", "n"],
      ["pump", 7],
    ],
  },
  { name: "second", rows: [["a"], [], ["b"]] },
]);

/** The same workbook with other XML in one of its files. */
function changed(file: string, change: (xml: string) => string): Uint8Array {
  const files = unzipSync(book);
  return zipSync({ ...files, [file]: strToU8(change(Buffer.from(files[file] ?? []).toString())) });
}

test("every sheet is read, rows numbered as the program shows them", async () => {
  const { grids, form } = await readXlsx("book.xlsx", book);
  expect(form).toEqual({ format: "xlsx" });
  expect(grids.map(({ name, rows }) => [name, rows.map(({ number, cells }) => [number, ...cells])])).toEqual([
    [
      "built",
      [
        [1, "place", "n"],
        [2, "pump", 7],
      ],
    ],
    [
      "second",
      [
        [1, "a"],
        [2, null],
        [3, "b"],
      ],
    ],
  ]);
});

test("an error in a cell rejects its row and no other", async () => {
  const bytes = changed("xl/worksheets/sheet1.xml", (xml) =>
    xml.replace(/<c r="B2"[^>]*>.*?<\/c>/, '<c r="B2" t="e"><v>#N/A</v></c>'),
  );
  const { grids } = await readXlsx("book.xlsx", bytes);
  expect(grids[0]?.rows.map(({ fault }) => fault)).toEqual([undefined, "cell B2 shows the error #N/A"]);
});

test.each<[string, () => Uint8Array, RegExp]>([
  [
    "no archive",
    () => Buffer.from("PK\u0003\u0004 and nothing"),
    /^b\.xlsx: the workbook is damaged: it cannot be unpacked; /,
  ],
  [
    "half an archive",
    () => book.subarray(0, book.length / 2),
    /^b\.xlsx: the workbook is damaged: it cannot be unpacked; /,
  ],
  ["another archive", () => zipSync({ "content.xml": strToU8("<a/>") }), /^b\.xlsx: it is no XLSX workbook \(/],
  [
    "XML cut off",
    () => changed("xl/worksheets/sheet1.xml", (xml) => xml.slice(0, -30)),
    /^b\.xlsx: the workbook is damaged/,
  ],
  [
    "a text that is nowhere",
    () => changed("xl/worksheets/sheet1.xml", (xml) => xml.replace(/(<c r="A2"[^>]*>)<v>\d+/, "$1<v>99")),
    /^b\.xlsx, row 2: the workbook is damaged \(/,
  ],
  [
    "a cell far out",
    () =>
      changed("xl/worksheets/sheet1.xml", (xml) => xml.replaceAll("B2", "XFD1048576").replaceAll('"2"', '"1048576"')),
    /^b\.xlsx: its cell XFD1048576 lies beyond every sheet that can be read; split the sheet$/,
  ],
])("%s: one message with the file", async (_, bytes, said) => {
  await expect(readXlsx("b.xlsx", bytes())).rejects.toThrow(said);
});

test("an archive that promises too much is not unpacked", async () => {
  const bomb = Buffer.from(zipSync({ "xl/workbook.xml": new Uint8Array(1000) }));
  // The size stands 24 bytes into the entry of the archive's directory (APPNOTE.TXT 4.3.12).
  bomb.writeUInt32LE(MOST_UNPACKED + 1, bomb.indexOf("PK\u0001\u0002", 0, "latin1") + 24);
  await expect(readXlsx("b.xlsx", bomb)).rejects.toThrow(
    `b.xlsx: unpacked it would be larger than ${MOST_UNPACKED} bytes; split it`,
  );
});

/** Two sheets of an independent writer, the first hidden, with percentages, hidden rows and a hidden column in the second. */
function officeBook(): WorkBook {
  const book = utils.book_new();
  utils.book_append_sheet(book, utils.aoa_to_sheet([["a"], [1]]), "old");
  const sheet = utils.aoa_to_sheet([
    ["a", "b", "c"],
    [1, 2, 3],
    [0.5, 0.125, 0.5],
    [7, 8, 9],
  ]);
  sheet.A3 = { t: "n", v: 0.5, z: "0%" };
  sheet.B3 = { t: "n", v: 0.125, z: "0.0%" };
  sheet.C3 = { t: "n", v: 0.5, z: '0.0" %"' };
  sheet["!rows"] = [{}, { hidden: true }];
  sheet["!cols"] = [{}, {}, { hidden: true }];
  sheet["!autofilter"] = { ref: "A1:C4" };
  utils.book_append_sheet(book, sheet, "new");
  book.Workbook = { Sheets: [{ name: "old", Hidden: 1 }, { name: "new" }] };
  return book;
}

test("of a percentage the number shown is read, and what is hidden is said, at the sheet that it is about", async () => {
  const { grids } = await readXlsx("o.xlsx", write(officeBook(), { type: "buffer", bookType: "xlsx" }));
  expect(grids.map(({ name, hidden }) => [name, hidden])).toEqual([
    ["old", true],
    ["new", undefined],
  ]);
  expect(grids[1]?.rows[2]?.cells).toEqual([new Percentage(50), new Percentage(12.5), 0.5]);
  expect(grids.map(({ notes }) => notes)).toEqual([
    [],
    [
      "2 percentages, read as the number shown (A3, B3)",
      "1 hidden row, read like all others (2)",
      "1 hidden column, read like all others (C)",
    ],
  ]);
});
