import fc from "fast-check";
import { expect, test } from "vitest";
import { answerCar } from "../../../src/engine/answers/answer-car.ts";
import { readCar } from "../../../src/engine/answers/car.ts";
import { CarList } from "../../../src/engine/answers/car-list.ts";
import { demoKnowledge } from "../../helpers/demo-data.ts";
import { randomCar } from "../../helpers/random-cars.ts";
import { SEED } from "../../helpers/seed.ts";

test("verdicts and the next question are those of the question about the whole car", async () => {
  const knowledge = await demoKnowledge();
  const list = new CarList(knowledge);
  const { space } = knowledge.catalog;
  fc.assert(
    fc.property(randomCar(knowledge.catalog, { conflicts: true }), (car) => {
      const { records, ask } = answerCar(knowledge, { car });
      const { cars } = readCar(knowledge, car);
      const verdicts = list.verdicts(cars);
      expect(verdicts).toEqual(records.map((record) => record.verdict));
      const open = list.records.filter((_, i) => verdicts[i] === "look first");
      const [next] = list.questions(cars, open);
      expect(next && space.trait(next.trait).id).toBe(ask?.trait);
    }),
    { seed: SEED, numRuns: 4, endOnFailure: true },
  );
});
