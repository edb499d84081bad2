/** What was seen, in the address and back. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { type Pair, readSeenText, withoutSeen, withSeen, writeSeen } from "../../../src/browser/apart/seen.ts";

// text of the address, what was seen of which mark
test.each<[string | undefined, Pair[]]>([
  [undefined, []],
  ["", []],
  ["grooves=2", [["grooves", "2"]]],
  [
    " grooves = 2 ;letter=not seen",
    [
      ["grooves", "2"],
      ["letter", "not seen"],
    ],
  ],
  ["dab=red; or what is left of it", [["dab", "red; or what is left of it"]]],
  [
    "dab=red; white; letter=a=b",
    [
      ["dab", "red; white"],
      ["letter", "a=b"],
    ],
  ],
  ["grooves", [["grooves", ""]]],
])("%j", (text, pairs) => {
  expect(readSeenText(text)).toEqual(pairs);
});

const word = fc.stringMatching(/^[a-z][a-z-]{0,8}$/);
const value = fc.stringMatching(/^[a-z0-9.][a-z0-9 .;/]{0,12}[a-z0-9]$/);
const pairs = fc.uniqueArray(fc.tuple(word, value), { selector: ([mark]) => mark, maxLength: 4 });

test("what is written reads back as it was", () => {
  fc.assert(
    fc.property(pairs, (seen) => {
      expect(readSeenText(writeSeen(seen).seen)).toEqual(seen);
    }),
  );
});

test("a mark looked at again counts anew, in its place; taken back, it is gone", () => {
  fc.assert(
    fc.property(pairs, fc.nat(3), value, (seen, at, anew) => {
      const mark = seen[at % Math.max(seen.length, 1)]?.[0] ?? "new";
      const changed = withSeen(seen, [mark, anew]);
      expect(new Map(changed).get(mark)).toBe(anew);
      expect(changed.slice(0, seen.length).map((pair) => pair[0])).toEqual(seen.map((pair) => pair[0]));
      expect(withoutSeen(changed, mark)).toEqual(seen.filter((pair) => pair[0] !== mark));
    }),
  );
});
