import { describe, expect, test } from "vitest";
import type { Plate } from "../../../src/engine/records/catalog.ts";
import { type ReadPlate, readPlate } from "../../../src/engine/records/read-plate.ts";
import { ALL } from "../../../src/engine/scope/diagram.ts";
import { Space } from "../../../src/engine/scope/space.ts";
import type { Trait } from "../../../src/engine/scope/trait.ts";
import { catalogOf } from "../../helpers/tiny-folder.ts";
import { tractorTrait } from "../../helpers/tractor-space.ts";

/** In one line: how it was read, the facts, then each slip as "place character what it holds: what it could be". */
function inShort(read: ReadPlate): string {
  const facts = "facts" in read ? [read.facts.map((fact) => fact.text).join(" ")] : [];
  const slips =
    "slips" in read
      ? read.slips.map(({ place, character, holds, couldBe }) => `${place} ${character} ${holds}: ${couldBe.join("")}`)
      : [];
  return [read.as, ...facts, ...slips].join(" | ");
}

describe("the frame plate of the tiny folder: line, year, plant, four digits", () => {
  const { space, buildable: built, plates } = catalogOf();

  // typed, how it is read
  test.each([
    ["B9K0412", "read | line=B my=1959 plant=K number=0412"],
    ["H9D9999", "read | line=H my=1959 plant=D number=9999"],
    // Spaces, dashes and case do not count.
    ["b9 k 0412", "read | line=B my=1959 plant=K number=0412"],
    [" B9-K-0412. ", "read | line=B my=1959 plant=K number=0412"],
    // No plate is as long.
    ["", "unknown"],
    ["B9K041", "unknown"],
    ["B9K04123", "unknown"],
    // A character that cannot stand there, with those that can: the ones that look like it first.
    ["89K0412", "misread | 1 8 model line: BH"],
    ["X9K0412", "misread | 1 X model line: BH"],
    ["BPK0412", "misread | 2 P model year: 978"],
    ["BTK0412", "misread | 2 T model year: 789"],
    ["B9X0412", "misread | 3 X plant: KD"],
    ["B9O0412", "misread | 3 O plant: DK"],
    ["B9KO412", "misread | 4 O chassis number: 0123456789"],
    ["B9K041Z", "misread | 7 Z chassis number: 2701345689"],
    ["B9KS4I2", "misread | 4 S chassis number: 5601234789 | 6 I chassis number: 1702345689"],
    ["8PK0412", "misread | 1 8 model line: BH | 2 P model year: 978"],
    // Only characters with which some car was built, given the others that can be read; all where there is no such car.
    ["X8K0412", "misread | 1 X model line: B"],
    ["HPK0412", "misread | 2 P model year: 9"],
    ["BPD0412", "misread | 2 P model year: 9"],
    ["X8XO412", "misread | 1 X model line: B | 3 X plant: K | 4 O chassis number: 0123456789"],
    ["X7D0412", "misread | 1 X model line: BH"],
    // Every character may stand there, but no such car was built: single changes that make it one that was.
    ["B8D0412", "not built | line=B my=1958 plant=D number=0412 | 2 8 model year: 9 | 3 D plant: K"],
    ["B7D0412", "not built | line=B my=1957 plant=D number=0412 | 2 7 model year: 9 | 3 D plant: K"],
    ["H8K0001", "not built | line=H my=1958 plant=K number=0001 | 1 H model line: B | 2 8 model year: 9"],
    // Two characters are wrong, so no single one helps.
    ["H7D0412", "not built | line=H my=1957 plant=D number=0412 | 2 7 model year: 9"],
  ])("'%s' is %s", (typed, expected) => {
    expect(inShort(readPlate(space, built, plates, typed))).toBe(expected);
  });

  test("facts say that they come from the plate", () => {
    const read = readPlate(space, built, plates, "B9K0412");
    expect("facts" in read && read.facts.map(({ source }) => source)).toEqual(["plate", "plate", "plate", "plate"]);
  });

  test("the number comes back as it was read", () => {
    expect(readPlate(space, built, plates, " b9-k 0412").number).toBe("B9K0412");
    expect(readPlate(space, built, plates, "*").number).toBe("");
    // A sign that stands on no plate is not passed over.
    expect(readPlate(space, built, plates, "B9Ø0412")).toMatchObject({ as: "misread", number: "B9Ø0412" });
  });
});

describe("a plate of 17 characters", () => {
  const list = (id: string, label: string, values: string[]): Trait => ({
    ...tractorTrait("PT"),
    kind: "list",
    id,
    label,
    values: values.map((value) => ({ id: value, label: value, aliases: [] })),
  });
  const space = new Space([
    list("maker", "maker", ["APU", "APV"]),
    list("make", "make", ["1H59H", "1H58H"]),
    { ...tractorTrait("my"), kind: "whole", from: 0, to: 9 } as Trait,
    tractorTrait("number"),
  ]);
  // The check digit stands in the ninth place, which belongs to no trait; so does a filling of three.
  const plate = (checked: Plate["check-digit"]): Plate => ({
    name: "dash plate",
    where: "on the dash",
    example: "APU1H59H45G118341",
    positions: [
      { trait: "maker", length: 3 },
      { trait: "make", length: 5 },
      { length: 1 },
      { trait: "my", length: 1 },
      { length: 3 },
      { trait: "number", length: 4 },
    ],
    "check-digit": checked,
    notes: [],
  });
  const facts = (my: number, number = "8341", maker = "APU"): string =>
    `maker=${maker} make=1H59H my=${my} number=${number}`;

  // typed, is there a check digit, how it is read
  test.each<[string, Plate["check-digit"], string]>([
    ["APU1H59H45G118341", "49-CFR-565", `read | ${facts(5)}`],
    ["apu 1h59h 4 5 g11 8341", "49-CFR-565", `read | ${facts(5)}`],
    ["APU1H59H45G118341", "none", `read | ${facts(5)}`],
    // Something is misread: what looks like what was read and makes the digit right, or the digit itself.
    ["APU1H59H46G118341", "49-CFR-565", "misread | 10 6 model year: 5 | 9 4 check digit: 2"],
    ["APU1H59H46G118341", "none", `read | ${facts(6)}`],
    ["APU1H59H55G118341", "49-CFR-565", "misread | 17 1 chassis number: 7 | 9 5 check digit: 4"],
    // A V in the third place makes 417, which leaves 10: an X.
    ["APV1H59HX5G118341", "49-CFR-565", `read | ${facts(5, "8341", "APV")}`],
    ["APV1H59H45G118341", "49-CFR-565", "misread | 3 V maker: U | 9 4 check digit: X"],
    // A character that is in no such number has no check digit: only the misreading is said.
    ["APU1H59H45G11834I", "49-CFR-565", "misread | 17 I chassis number: 1702345689"],
    // The check digit says which of the digits it must have been.
    ["APU1H59H4PG118341", "49-CFR-565", "misread | 10 P model year: 5"],
    // Half of each of two codes: either half may be wrong, and the check digit does not say which.
    ["APU1H5XH45G118341", "49-CFR-565", "misread | 7 X make: 9"],
  ])("%s, check digit %s, is %s", (typed, checked, expected) => {
    expect(inShort(readPlate(space, ALL, [plate(checked)], typed))).toBe(expected);
  });

  test("that was not built is helped only by changes that the check digit allows", () => {
    const built = space.where(space.find("number") as number, [[8341, 8341]]);
    const read = (checked: Plate["check-digit"], typed: string): string =>
      inShort(readPlate(space, built, [plate(checked)], typed));
    const changed = `not built | ${facts(5, "8342")}`;
    expect(read("none", "APU1H59H65G118342")).toBe(`${changed} | 17 2 chassis number: 1`);
    // The 6 is right for the 2 at the end; with a 1 there it would be wrong.
    expect(read("49-CFR-565", "APU1H59H65G118342")).toBe(changed);
  });

  test("of two plates of one length the one counts by which the number reads", () => {
    const as = (plates: Plate[]): string => readPlate(space, ALL, plates, "APU1H59H46G118341").as;
    expect([as([plate("none"), plate("49-CFR-565")]), as([plate("49-CFR-565"), plate("none")])]).toEqual([
      "read",
      "read",
    ]);
  });
});

describe("characters that could stand there, but not together", () => {
  const space = new Space([
    { ...tractorTrait("my"), kind: "whole", from: 1950, to: 1961 } as Trait,
    { ...tractorTrait("number"), kind: "whole", from: 120, to: 999 } as Trait,
  ]);
  const plates: Plate[] = [
    {
      name: "plate",
      where: "left",
      example: "AB120",
      positions: [
        { trait: "my", length: 2, codes: { AB: 1957, CD: 1958 } },
        { trait: "number", length: 3 },
      ],
      "check-digit": "none",
      notes: [],
    },
  ];
  // typed, how it is read
  test.each([
    ["AB120", "read | my=1957 number=120"],
    ["AD120", "misread | 1 A model year: C | 2 D model year: B"], // half of each code
    ["CD119", "misread | 3 1 chassis number: 72345689 | 4 1 chassis number: 72345689"], // below the first number
    ["CD001", "misread | 3 0 chassis number: 23456789"],
  ])("'%s' is %s", (typed, expected) => {
    expect(inShort(readPlate(space, ALL, plates, typed))).toBe(expected);
  });
});
