import { expect, test } from "vitest";
import { firstLookAlike, nameOfSign, withPlainSigns } from "../../../src/engine/records/signs.ts";

// text, where a sign stands that only looks like a plain one, its name, the text with plain signs
test.each([
  ["97\u20115109", 2, "'\u2011' (a non-breaking hyphen)", "97-5109"],
  ["97–5109", 2, "'–' (an en dash)", "97-5109"],
  ["a\u00A0b", 1, "a no-break space", "a b"],
  ["🚜 “x”", 3, "'“' (a curly quote)", '🚜 "x"'],
  ["a\u200Bb", 1, "an invisible sign", "ab"],
])("%j", (text, at, name, plain) => {
  const found = firstLookAlike(text);
  expect(found?.at).toBe(at);
  expect(nameOfSign(found?.sign ?? "")).toBe(name);
  expect(withPlainSigns(text)).toBe(plain);
});

test("plain signs are what they are", () => {
  expect(firstLookAlike("a-b 'c' \"d\"")).toBeUndefined();
  expect([" ", "\t", "/"].map(nameOfSign)).toEqual(["a space", "a tab", "'/'"]);
});
