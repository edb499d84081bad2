import { describe, expect, test } from "vitest";
import { numberOf } from "../../../../src/engine/scope/trait.ts";
import { holds } from "../../../helpers/listed-fleet.ts";
import { catalogOf, saidOf, spoiled } from "../../../helpers/tiny-folder.ts";
import { VEHICLES_SLIPS } from "./vehicles.cases.ts";

describe("a slip is said once, where it was made", () => {
  test.each(VEHICLES_SLIPS)("%s: %j written as %j", (file, old, replacement, ...said) => {
    expect(saidOf(file, old, replacement)).toEqual(said);
  });
});

test("a rule for all lines is complained about once, not once a line", () => {
  expect(saidOf("vehicles/all.yaml", "plant=D", "plant=Q")).toEqual([
    "vehicles/all.yaml rules.0.if: plant has no value 'Q' → values are K, D",
  ]);
});

describe("a car was built if its line's rows, all rules and the equipment say so", () => {
  /** The tiny folder's files, car by car. */
  function wasBuilt({ line, my, plant, PT, WN }: Record<string, string | number>): boolean {
    if (plant === "D" && Number(my) < 1959) return false;
    if (line === "B") {
      if (Number(my) > 1960 || (my === 1957 && plant !== "K")) return false;
      if (WN === "yes") return false; // Not listed, so never made on this line.
      if (my === 1960) return PT === "yes"; // Standard.
      return PT === "no" || Number(my) >= 1958; // To be ordered from 1958 on.
    }
    if (Number(my) < 1959 || PT === "no") return false;
    return WN === "no" || plant === "D";
  }

  const { space, buildable, lines, years } = catalogOf();
  const cars = ["B", "H"].flatMap((line) =>
    [1957, 1958, 1959, 1960, 1961].flatMap((my) =>
      ["K", "D"].flatMap((plant) =>
        ["yes", "no"].flatMap((PT) => ["yes", "no"].map((WN) => ({ line, my, plant, PT, WN }))),
      ),
    ),
  );
  const numbered = (car: Record<string, string | number>): number[] =>
    space.declared.map((trait) => numberOf(trait, String(car[trait.id] ?? "0412")) as number);

  test.each(cars)("$line $my $plant, power take-off $PT, winch $WN", (car) => {
    expect(holds(buildable, numbered(car))).toBe(wasBuilt(car));
    for (const line of lines) expect(holds(line.cars, numbered(car))).toBe(wasBuilt(car) && car.line === line.id);
  });

  test("lines come with their words, in the order of the traits", () => {
    expect(lines.map(({ id, name, class: kind, about }) => ({ id, name, kind, about }))).toEqual([
      { id: "B", name: "Badger", kind: "orchard tractor", about: "Narrow, for orchards." },
      { id: "H", name: "Heron", kind: undefined, about: undefined },
    ]);
    expect(years).toEqual([1957, 1958, 1959, 1960, 1961]);
  });

  test("of a line without a file every car counts as built", () => {
    const bare = catalogOf(spoiled({ "vehicles/heron.yaml": undefined }));
    expect(holds(bare.buildable, numbered({ line: "H", my: 1957, plant: "K", PT: "no", WN: "yes" }))).toBe(true);
    expect(holds(bare.buildable, numbered({ line: "H", my: 1957, plant: "D", PT: "no", WN: "yes" }))).toBe(false);
  });
});
