import { expect, test } from "vitest";
import { readCar } from "../../../src/engine/answers/car.ts";
import { sayConflict } from "../../../src/engine/answers/say-conflict.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

test("the facts that do not go together, and the others", () => {
  const knowledge = tinyKnowledge();
  const car = readCar(knowledge, { facts: { plant: "K", line: "H", my: 1957 } });
  const said = sayConflict(knowledge.catalog, car);
  expect(said.conflict.map((it) => it.text)).toEqual(["line=H", "my=1957"]);
  expect(said.facts).toEqual(said.conflict);
  expect(said.notNeeded.map((it) => it.text)).toEqual(["plant=K"]);
});
