import { expect, test } from "vitest";
import { decodeText, encodeText } from "../../../src/build/tables/encoding.ts";

const TEXT = "part;size\nMüller 3/8″;é\n";

test.each([
  // encoding, mark
  ["utf-8", false],
  ["utf-8", true],
  ["utf-16le", true],
  ["utf-16be", true],
])("%s (mark: %s) is read and written back, byte for byte", (encoding, mark) => {
  const bytes = encodeText(TEXT, encoding, mark);
  expect(decodeText(bytes)).toEqual({ text: TEXT, encoding, mark, guessed: false });
});

test("UTF-16 without a mark is found by its zeros", () => {
  for (const encoding of ["utf-16le", "utf-16be"])
    expect(decodeText(encodeText("number;name\n7;pump\n", encoding, false))).toMatchObject({ encoding, guessed: true });
});

test("a western text that is no UTF-8 is Windows-1252, and goes back so", () => {
  const bytes = Uint8Array.from([0x4d, 0xfc, 0x6c, 0x6c, 0x65, 0x72, 0x20, 0x80, 0x0a]); // Müller €
  const decoded = decodeText(bytes);
  expect(decoded).toEqual({ text: "Müller €\n", encoding: "windows-1252", mark: false, guessed: true });
  expect([...encodeText(decoded.text, decoded.encoding, false)]).toEqual([...bytes]);
});

test("a sign that the encoding lacks becomes a question mark", () => {
  expect([...encodeText("a→b", "windows-1252", false)]).toEqual([0x61, 0x3f, 0x62]);
});

test("what cannot be written as it was is written as UTF-8 with a mark", () => {
  expect([...encodeText("é", "shift_jis", false)]).toEqual([0xef, 0xbb, 0xbf, 0xc3, 0xa9]);
});

test("a named encoding is taken as it is said, and refused where it does not fit or does not exist", () => {
  expect(decodeText(Uint8Array.of(0xa4), "iso-8859-15").text).toBe("€");
  expect(() => decodeText(Uint8Array.of(0xff, 0x41), "utf-8")).toThrow(TypeError);
  expect(() => decodeText(Uint8Array.of(0x41), "utf-99")).toThrow(RangeError);
});
