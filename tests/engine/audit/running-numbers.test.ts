import { expect, test } from "vitest";
import { runningNumbers } from "../../../src/engine/audit/running-numbers.ts";
import { catalogOf, spoiled } from "../../helpers/tiny-folder.ts";

const idsOf = (more: string): string[] => {
  const { space } = catalogOf(spoiled({ "vehicles/traits.yaml": ["  - { id: PT,", `${more}  - { id: PT,`] }));
  return [...runningNumbers(space)].map((trait) => space.trait(trait).id);
};

test("the sequence of the car, and the numbers of its components; not its year", () => {
  expect(idsOf("")).toEqual(["number"]);
  const says = 'label: a number, find: the flange, effort: 3, phrase: "with {}", otherwise: "not with {}"';
  expect(
    idsOf(
      `  - { id: pumpno, kind: whole, of: line, from: 1, to: 9999, ${says} }\n  - { id: rings, kind: whole, from: 1, to: 9, ${says.replace("a number", "rings")} }\n`,
    ),
  ).toEqual(["number", "pumpno"]);
});
