import fc from "fast-check";
import { expect, test } from "vitest";
import { readScope } from "../../../src/engine/scope/read-scope.ts";
import { shorter } from "../../../src/engine/scope/shorter.ts";
import { writeScope } from "../../../src/engine/scope/write-scope.ts";
import { askedScope, written } from "../../helpers/random-scopes.ts";
import { SEED } from "../../helpers/seed.ts";
import { tractorSpace } from "../../helpers/tractor-space.ts";

function read(space: ReturnType<typeof tractorSpace>, text: string) {
  const result = readScope(space, text);
  if ("slips" in result) throw new Error(result.slips[0]?.message);
  return result.scope.cars;
}

test("the same ones of the built cars, with no more traits than before", () => {
  fc.assert(
    fc.property(askedScope, askedScope, (one, other) => {
      const space = tractorSpace();
      const { sets } = space;
      const built = read(space, written(one));
      const cars = sets.and(built, read(space, written(other)));
      const found = shorter(space, cars, built);
      expect(sets.and(found, built)).toBe(cars);
      expect(sets.traitsOf(found).size).toBeLessThanOrEqual(sets.traitsOf(cars).size);
    }),
    { seed: SEED, numRuns: 300 },
  );
}, 60_000);

// built, of these, in short
test.each([
  ["line=B; my=1958", "line=B; my=1958", "all"],
  ["line=B; my=1958 || line=H; my=1960; PT=yes", "line=H", "line=H"],
  ["line=B; PT=yes || line=H; PT=no", "PT=yes", "line=B"],
])("of '%s' those with '%s' are '%s'", (built, wanted, text) => {
  const space = tractorSpace();
  const all = read(space, built);
  expect(writeScope(space, shorter(space, space.sets.and(all, read(space, wanted)), all), 9)).toBe(text);
});
