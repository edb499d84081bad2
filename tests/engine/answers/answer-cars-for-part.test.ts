import fc from "fast-check";
import { expect, test } from "vitest";
import { answerCarsForPart } from "../../../src/engine/answers/answer-cars-for-part.ts";
import { answerMayFit } from "../../../src/engine/answers/answer-may-fit.ts";
import { carsForPartAnswer } from "../../../src/engine/answers/shapes/cars-for-part.ts";
import { pick, sayCar } from "../../../src/engine/scope/pick.ts";
import { readScope } from "../../../src/engine/scope/read-scope.ts";
import { demoKnowledge } from "../../helpers/demo-data.ts";
import { SEED } from "../../helpers/seed.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const demo = await demoKnowledge();
const { space, buildable, parts } = demo.catalog;

/** A car that was built, near to one drawn at random. */
const car = fc
  .tuple(...space.declared.map((_, trait) => fc.integer({ min: space.span(trait)[0], max: space.span(trait)[1] })))
  .map((values) => {
    const like = new Map(values.map((value, trait) => [trait, value]));
    return new Map([...like, ...(pick(buildable, like) ?? [])]);
  });

test("what is said of cars in scopes is what is said of each of them", () => {
  let told = 0;
  fc.assert(
    fc.property(fc.constantFrom(...parts.keys()), fc.array(car, { minLength: 12, maxLength: 12 }), (part, cars) => {
      const answer = carsForPartAnswer.parse(answerCarsForPart(demo, { part }));
      for (const one of cars) {
        const facts = sayCar(space, new Map([...one].filter(([trait]) => trait < space.declared.length)));
        for (const { place, fits } of answer.places) {
          const { places } = answerMayFit(demo, { part, ...(place ? { place } : {}), car: { facts } });
          const said = fits.filter(({ scope }) => {
            const read = readScope(space, scope?.text ?? "");
            if ("slips" in read) throw new Error(`${part}: ${read.slips[0]?.message}`);
            return space.sets.meet(read.scope.cars, space.any([single(one)]));
          });
          const expected = [...new Set(said.map((it) => it.verdict))].sort();
          const found = [...new Set((places[0]?.fits ?? []).map((it) => it.verdict))]
            .filter((it) => it !== "not on record")
            .sort();
          expect(found).toEqual(expected);
          told += expected.length;
        }
      }
    }),
    { seed: SEED, numRuns: 30 },
  );
  console.log(`cars for parts: seed ${SEED}, ${told} verdicts compared`);
  expect(told).toBeGreaterThan(80);
}, 120_000);

function single(one: ReadonlyMap<number, number>) {
  return [...one].reduce((set, [trait, value]) => space.sets.and(set, space.where(trait, [[value, value]])), buildable);
}

test("which parts it stands in for, and which for it", () => {
  const tiny = tinyKnowledge({ "changes/1959/HY59-01.md": [", scope: fitted=HT-201 }", " }"] });
  const answer = answerCarsForPart(tiny, { part: "HT-102" });
  expect(answer.verdict).toBe("on record");
  expect(answer.standsInFor).toEqual(["HT-101"]);
  expect(answer.replacedBy).toEqual([]);
  expect(answerCarsForPart(tiny, { part: "HT-101" }).replacedBy).toEqual(["HT-102"]);
});

test("a part of which nothing is on record", () => {
  expect(answerCarsForPart(tinyKnowledge(), { part: "HT-290" })).toMatchObject({
    verdict: "not on record",
    places: [],
    because: [],
  });
});
