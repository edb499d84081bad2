import { carsBuiltWith, isPermission, whereHolds } from "../../interchange/part-index.ts";
import type { Setting, StandsIn } from "../../records/statement.ts";
import { type CarSet, NONE } from "../../scope/diagram.ts";
import { inForce } from "../in-force.ts";
import { placeOf } from "../place-of.ts";
import type { Rule, World } from "../rule.ts";

/**
 * Where a permission says in words which figure then holds ("the limit is then 0.003 in"), and its words name a setting, that setting
 * has the figure in force on the car with the part. Of other parts' settings the engine cannot know it: their scope must say fitted=.
 */
export const figurePromised: Rule = {
  id: "figure-promised",
  gravity: "error",
  about: "A figure that a permission promises is in force once the part is on the car.",
  why: "The car is judged by its old figure, and passes with a part that asks for a finer one.",
  mend: "Add the cars with the part to the scope of the figure: … || fitted=<part>; <the cars of the permission>.",
  example: {
    wrong: {
      "changes/1959/HY59-01.md": [
        "do: Bleed the lift., scope",
        "do: Bleed the lift; the oil pressure is then 140 bar., scope",
      ],
    },
    right: {
      "changes/1959/HY59-01.md": [
        "do: Bleed the lift., scope: fitted=HT-201 }",
        "do: Bleed the lift; the oil pressure is then 130 bar., scope: line=B; fitted=HT-201 }",
      ],
    },
  },
  *find(world) {
    const { catalog, index } = world;
    const { sets } = catalog.space;
    for (const [part, statements] of index.standInsOf)
      for (const it of statements) {
        if (!isPermission(it) || it.do === undefined) continue;
        for (const { figure, unit, meant } of promisesIn(it.do, index.settings)) {
          const cars = fittedCars(world, it);
          const having = meant.filter((setting) =>
            [setting.low, setting.high, setting.nominal].some(
              (value) => value !== undefined && Number(value) === figure,
            ),
          );
          const left = sets.minus(
            cars,
            index.space.any(having.map((setting) => inForce(world, setting, setting.scope.cars))),
          );
          if (cars === NONE || left === NONE) continue;
          const [name] = new Set(meant.map((setting) => setting.name));
          yield {
            at: placeOf(catalog, it, "do"),
            message: `'${name}' is to be ${figure} ${unit} with ${part}, and no record puts that figure in force on such a car`,
            hint: `add '|| fitted=${part}' with the cars of this permission to the scope of the figure`,
            records: [it.record, ...new Set((having.length > 0 ? having : meant).map((setting) => setting.record))],
            names: [part, ...(name === undefined ? [] : [name])],
            also: (having.length > 0 ? having : meant).map((setting) => ({
              ...placeOf(catalog, setting, "scope"),
              message: `'${setting.name}'`,
            })),
            cars: left,
          };
        }
      }
  },
};

interface Promise {
  readonly figure: number;
  readonly unit: string;
  /** The settings that the words name. */
  readonly meant: readonly Setting[];
}

/** A number before the unit of a setting whose name shares two words with the sentence. */
function* promisesIn(text: string, settings: readonly Setting[]): Generator<Promise> {
  for (const sentence of text.split(/[;]|\.(?=\s|$)/)) {
    for (const [, number, unit] of sentence.matchAll(
      /(?<![\d.-])(\d+(?:\.\d+)?)\s*(\p{L}[\p{L}·/-]*(?:\s\p{L}+)?)/gu,
    )) {
      const words = new Set(wordsOf(sentence));
      const meant = settings.filter(
        (it) =>
          (unit === it.unit || unit?.split(" ")[0] === it.unit) &&
          wordsOf(it.name).filter((word) => words.has(word)).length >= 2,
      );
      if (meant[0]) yield { figure: Number(number), unit: meant[0].unit, meant };
    }
  }
}

function wordsOf(text: string): string[] {
  return (
    text
      .toLowerCase()
      .match(/[\p{L}\d][\p{L}\d-]*/gu)
      ?.filter((word) => word.length > 2 && word !== "the") ?? []
  );
}

/** Cars of the permission that have the part, and what goes along with it. */
function fittedCars({ catalog, index }: World, it: StandsIn): CarSet {
  const { space } = catalog;
  const belongs = it.for === undefined ? catalog.buildable : carsBuiltWith(index, it.for);
  const cars = space.sets.and(whereHolds(index, it, catalog.buildable, it.place), belongs);
  return [it.part, ...it.with].reduce((set, part) => {
    const trait = space.askedFitted(part);
    return trait === undefined ? set : space.sets.and(set, space.where(trait, [[1, 1]]));
  }, cars);
}
