import fc from "fast-check";
import { expect, test } from "vitest";
import { ALL, type CarSet, NONE } from "../../../src/engine/scope/diagram.ts";
import { readScope } from "../../../src/engine/scope/read-scope.ts";
import type { Space } from "../../../src/engine/scope/space.ts";
import { writeScope } from "../../../src/engine/scope/write-scope.ts";
import { askedScope, written } from "../../helpers/random-scopes.ts";
import { SEED } from "../../helpers/seed.ts";
import { tractorSpace } from "../../helpers/tractor-space.ts";

function read(space: Space, text: string): CarSet {
  const result = readScope(space, text);
  if ("slips" in result) throw new Error(`${text}: ${result.slips[0]?.message}`);
  return result.scope.cars;
}

test("a scope written down and read again is the same set, also joined with another and taken from it", () => {
  let texts = 0;
  fc.assert(
    fc.property(askedScope, askedScope, (a, b) => {
      const space = tractorSpace();
      const [one, other] = [read(space, written(a)), read(space, written(b))];
      for (const set of [one, space.sets.and(one, other), space.sets.minus(one, other), space.sets.not(one)]) {
        const text = writeScope(space, set, 200);
        if (text === undefined) continue;
        texts++;
        expect(read(space, text)).toBe(set);
      }
    }),
    { seed: SEED, numRuns: 600 },
  );
  expect(texts).toBeGreaterThan(1500);
}, 60_000);

// a scope as somebody wrote it, as it is written from its set
test.each([
  ["all", "all"],
  ["line=B,H,M", "all"],
  ["my>=1958; line=H || my>=1960; line=H", "line=H; my=1958-1962"],
  ["eq=PT; no=WN", "PT=yes; WN=no"],
  ["fitted!=HT-101", "fitted!=HT-101"],
  ["my>1962", "line!=B,H,M"], // no car
])("'%s' is written '%s'", (text, expected) => {
  const space = tractorSpace();
  expect(writeScope(space, read(space, text), 10)).toBe(expected);
});

test("a text that would be too long is not written", () => {
  const space = tractorSpace();
  expect(writeScope(space, read(space, "line=B || my=1958"), 1)).toBeUndefined();
  expect([writeScope(space, ALL, 0), writeScope(space, NONE, 0)]).toEqual(["all", "line!=B,H,M"]);
});
