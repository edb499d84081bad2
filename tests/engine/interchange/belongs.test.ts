import fc from "fast-check";
import { expect, test } from "vitest";
import { belongsAt } from "../../../src/engine/interchange/belongs.ts";
import { NONE } from "../../../src/engine/scope/diagram.ts";
import { openWorld, PLACES, slowBelongs, world } from "../../helpers/random-parts.ts";
import { SEED } from "../../helpers/seed.ts";

test("what belongs in a place, as listed kind by kind", () => {
  fc.assert(
    fc.property(world, fc.constantFrom(...PLACES), (drawn, place) => {
      const { index, cars } = openWorld(drawn);
      const found = belongsAt(index, place, index.space.any(cars));
      cars.forEach((car, kind) => {
        const here = found
          .filter((it) => index.space.sets.meet(it.cars, car))
          .map(({ belonging }) => (belonging.what === "part" ? belonging.part : belonging.what));
        expect(here.sort()).toEqual(slowBelongs(drawn, place, kind).sort());
      });
      for (const { belonging, because } of found) expect(because.length > 0).toBe(belonging.what !== "not on record");
    }),
    { seed: SEED, numRuns: 1000 },
  );
}, 60_000);

test("a place that no record names, and no cars", () => {
  const { index, cars } = openWorld({ built: [], standIns: [], ended: [] });
  const all = index.space.any(cars);
  expect(belongsAt(index, "roof", all)).toEqual([{ belonging: { what: "not on record" }, cars: all, because: [] }]);
  expect(belongsAt(index, "roof", NONE)).toEqual([]);
});
