/** Faults of workbooks; what an independent writer makes of them stands in tests/outside/xlsx.test.ts. */
import { strToU8, unzipSync, zipSync } from "fflate";
import { expect, test } from "vitest";
import { MOST_UNPACKED } from "../../../src/build/tables/limits.ts";
import { readXlsx } from "../../../src/build/tables/read-xlsx.ts";
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
