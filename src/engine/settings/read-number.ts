/** A number as people type it. */
import Fraction from "fraction.js";

const MOST_DIGITS = 15;

/**
 * Whole, decimal, a fraction or a mixed number: "35", ".76", "7/64", "1 1/2", "1-1/2".
 *
 * A comma groups thousands where it stands as it must for that, and is a decimal comma where it can't: "12,345.6" and "0,5".
 * Where it may be both ("1,250"), both values come back, the grouped one first. Nothing comes back for what is no number.
 */
export function readNumber(text: string): readonly Fraction[] {
  if (text.replaceAll(/\D/g, "").length > MOST_DIGITS) return [];
  const [, sign, size = ""] = /^([-+]?)\s*(.*)$/.exec(text.trim()) ?? [];
  const sizes = size.includes("/") ? readFraction(size) : decimalsOf(size).map((decimal) => new Fraction(decimal));
  return sign === "-" ? sizes.map((it) => it.neg()) : sizes;
}

function readFraction(text: string): Fraction[] {
  const [, whole = "0", over, under] = /^(?:(\d+)(?:\s+|\s*-\s*))?(\d+)\s*\/\s*(\d+)$/.exec(text) ?? [];
  if (over === undefined || under === undefined || /^0+$/.test(under)) return [];
  return [new Fraction(BigInt(over), BigInt(under)).add(new Fraction(BigInt(whole)))];
}

function decimalsOf(text: string): string[] {
  const plain = (it: string): string => it.replace(/^(?=\.)/, "0").replace(/\.$/, "");
  if (/^(\d+\.?\d*|\.\d+)$/.test(text)) return [plain(text)];
  if (/^\d{1,3}(\.\d{3})+,\d+$/.test(text)) return [text.replaceAll(".", "").replace(",", ".")];
  const grouped = /^[1-9]\d{0,2}(,\d{3})+(\.\d*)?$/.test(text) ? [plain(text.replaceAll(",", ""))] : [];
  const comma = /^\d*,\d+$/.test(text) ? [plain(text.replace(",", "."))] : [];
  return [...grouped, ...comma];
}
