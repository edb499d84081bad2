import { describe, expect, test } from "vitest";
import { clearWord, findUnits } from "../../../src/engine/settings/find-unit.ts";
import { unitNamed } from "../../../src/engine/settings/unit-named.ts";
import { UNITS } from "../../../src/engine/settings/unit-table.ts";

const ids = (text: string, expected?: string): string[] =>
  findUnits(text, expected === undefined ? undefined : unitNamed(expected)).map((unit) => unit.id);

// what is typed, the units that it may be
const ALONE: [string, string[]][] = [
  ...[
    "ft-lb",
    "ft lb",
    "ftlb",
    "lb-ft",
    "lbs ft",
    "foot pounds",
    "ft.lbs",
    "FT-LBS",
    "Foot-Pound",
    "lbf·ft",
    "ft/lbs",
  ].map((text): [string, string[]] => [text, ["ft-lb"]]),
  ...["in-lb", "in lbs", "inch pounds", "lb. in."].map((text): [string, string[]] => [text, ["in-lb"]]),
  ...["N·m", "Nm", "N-m", "N m", "n.m", "newton metres", "Newton meters"].map((text): [string, string[]] => [
    text,
    ["N·m"],
  ]),
  ...['"', "''", "″", "in.", "inches", "Inch"].map((text): [string, string[]] => [text, ["in"]]),
  ["r.p.m.", ["rpm"]],
  ["p.s.i.", ["psi"]],
  ["lb/in²", ["psi"]],
  ["kg/cm2", ["kgf/cm²"]],
  ['" Hg', ["inHg"]],
  ["in. Hg", ["inHg"]],
  ["B.T.D.C.", ["deg BTDC"]],
  ["degrees BTDC", ["deg BTDC"]],
  ["°F", ["deg F"]],
  ["ºC", ["°C"]],
  ["F°", ["F° difference"]],
  ["Ω", ["ohm"]],
  ["mile", ["mile"]],
  ["miles", ["miles"]],
  ["mv", ["mV"]],
  ["MPA", ["MPa"]],
  ["U.S. qt", ["US qt"]],
  // Several units have the word.
  ["qt", ["US qt", "imp qt"]],
  ["gallons", ["US gal", "imp gal"]],
  ["oz", ["oz", "fl oz", "imp fl oz"]],
  ["lbs", ["ft-lb", "in-lb", "lbf", "lb", "psi"]],
  ["deg", ["deg F", "°C", "deg", "deg BTDC"]],
  // One country's thousandth is another's millimetre.
  ["mil", ["thou", "mm"]],
  // Small letters would make these a thousand times larger or smaller.
  ["mPa", []],
  ["MV", []],
  ["", []],
  ["constructor", []],
];
test.each(ALONE)("'%s' is %j", (text, expected) => {
  expect(ids(text).toSorted()).toEqual(expected.toSorted());
});

describe("what is expected decides", () => {
  // what is typed, the unit that is expected, the units that it may be
  const CASES: [string, string, string[]][] = [
    ["deg", "deg BTDC", ["deg BTDC", "deg ATDC"]],
    ["deg", "deg", ["deg"]],
    ["°", "deg F", ["deg F", "°C"]],
    ["F", "F° difference", ["F° difference"]],
    ["F", "deg F", ["deg F"]],
    ["lb", "psi", ["psi"]],
    ["lb", "N", ["lbf"]],
    ["min", "deg", ["arcmin"]],
    ["min", "s", ["min"]],
    ["in", "inHg", ["inHg"]],
    ["in", "psi", ["inHg"]],
    ["in", "mm", ["in"]],
    ["k", "ohm", ["kohm"]],
    ["psi", "in", ["psi"]],
    ["peg", "pegs", ["pegs"]],
    ["pegs", "kites", []],
  ];
  test.each(CASES)("'%s' where %s is expected: %j", (text, expected, units) => {
    expect(ids(text, expected)).toEqual(units);
  });
});

test("every unit has a word that means it alone, and its id finds it", () => {
  for (const unit of UNITS) {
    expect(ids(clearWord(unit))).toEqual([unit.id]);
    expect(ids(clearWord(unit), unit.id)).toEqual([unit.id]);
    expect(ids(unit.id)).toContain(unit.id);
  }
});
