/**
 * From the bytes of a text file to its text, and back. In this order: a byte order mark says it; else it is UTF-8 if it can be;
 * else UTF-16 if every other byte is nothing; else what chardet thinks likely, and Windows-1252 where it thinks nothing.
 */
import { analyse } from "chardet";

export interface Decoded {
  readonly text: string;
  readonly encoding: string;
  readonly mark: boolean;
  /** It was guessed from the bytes, and may be another one. */
  readonly guessed: boolean;
}

const MARKS: readonly [encoding: string, bytes: readonly number[]][] = [
  ["utf-8", [0xef, 0xbb, 0xbf]],
  ["utf-16le", [0xff, 0xfe]],
  ["utf-16be", [0xfe, 0xff]],
];
/** Less sure than this, and an office in the west is likelier than anything else. */
const SURE = 40;
const WINDOWS = "windows-1252";

/** Throws a TypeError when the bytes are no text of the encoding, a RangeError when there is no such encoding. */
export function decodeText(bytes: Uint8Array, wanted?: string): Decoded {
  for (const [encoding, mark] of MARKS) {
    if (!mark.every((byte, i) => bytes[i] === byte) || (wanted !== undefined && wanted.toLowerCase() !== encoding))
      continue;
    return { text: decode(bytes.subarray(mark.length), encoding), encoding, mark: true, guessed: false };
  }
  if (wanted !== undefined) {
    const { encoding } = new TextDecoder(wanted);
    return { text: decode(bytes, encoding), encoding, mark: false, guessed: false };
  }
  try {
    const text = decode(bytes, "utf-8");
    const wide = wideOf(bytes);
    if (!wide) return { text, encoding: "utf-8", mark: false, guessed: false };
    return { text: decode(bytes, wide), encoding: wide, mark: false, guessed: true };
  } catch {
    const wide = wideOf(bytes);
    for (const encoding of [wide, likely(bytes), WINDOWS]) {
      if (encoding === undefined) continue;
      try {
        return { text: decode(bytes, encoding), encoding, mark: false, guessed: true };
      } catch {}
    }
    throw new TypeError("no encoding fits");
  }
}

/** Signs that the encoding lacks become question marks; encodings that cannot be written are written as UTF-8 with a mark. */
export function encodeText(text: string, encoding: string, mark: boolean): Uint8Array {
  if (encoding === "utf-16le" || encoding === "utf-16be") {
    const bytes = Buffer.from((mark ? "\uFEFF" : "") + text, "utf16le");
    return encoding === "utf-16le" ? bytes : bytes.swap16();
  }
  const table = singleBytes(encoding);
  if (!table) return Buffer.from((mark || encoding !== "utf-8" ? "\uFEFF" : "") + text, "utf8");
  return Uint8Array.from([...text], (sign) => table.get(sign) ?? 0x3f);
}

function decode(bytes: Uint8Array, encoding: string): string {
  return new TextDecoder(encoding, { fatal: true, ignoreBOM: true }).decode(bytes);
}

/** Western text in UTF-16 has a zero in every second byte. */
function wideOf(bytes: Uint8Array): string | undefined {
  const seen = bytes.subarray(0, 4096);
  if (seen.length < 4 || bytes.length % 2 === 1) return undefined;
  const zeros = [0, 1].map((from) => seen.filter((byte, i) => i % 2 === from && byte === 0).length);
  const most = seen.length / 2;
  const [even = 0, odd = 0] = zeros;
  if (odd > most * 0.7 && even < most * 0.1) return "utf-16le";
  return even > most * 0.7 && odd < most * 0.1 ? "utf-16be" : undefined;
}

function likely(bytes: Uint8Array): string | undefined {
  const best = analyse(bytes.subarray(0, 65_536)).find(({ name }) => !/^(utf|ascii)/i.test(name));
  if (!best || best.confidence < SURE) return undefined;
  try {
    return new TextDecoder(best.name).encoding;
  } catch {
    return undefined; // an encoding that Node cannot read
  }
}

/** The byte for each sign of an encoding with one byte a sign, read off the decoder that Node brings along. */
function singleBytes(encoding: string): ReadonlyMap<string, number> | undefined {
  if (!/^(windows-125\d|windows-874|iso-8859-\d+|koi8-[ru]|macintosh|ibm866)$/.test(encoding)) return undefined;
  const known = byteTables.get(encoding);
  if (known) return known;
  const decoder = new TextDecoder(encoding);
  const table = new Map(Array.from({ length: 256 }, (_, byte) => [decoder.decode(Uint8Array.of(byte)), byte] as const));
  byteTables.set(encoding, table);
  return table;
}

const byteTables = new Map<string, ReadonlyMap<string, number>>();
