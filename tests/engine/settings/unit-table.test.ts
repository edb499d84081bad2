import { expect, test } from "vitest";
import { counted, UNITS } from "../../../src/engine/settings/unit-table.ts";

test("every unit is there once, has a size, a definition and a source, and its neighbour measures the same", () => {
  const ids = UNITS.map((unit) => unit.id);
  expect(new Set(ids).size).toBe(ids.length);
  for (const unit of UNITS) {
    expect(unit.size.equals(0), unit.id).toBe(false);
    expect(
      [unit.factor, unit.source].every((text) => text.length > 3),
      unit.id,
    ).toBe(true);
    if (unit.beside === undefined) continue;
    expect(UNITS.find(({ id }) => id === unit.beside)?.dimension, unit.id).toBe(unit.dimension);
  }
});

/** Standards and who keeps them. */
const NAMED = /NIST SP 811 \(2008\), appendix B|SI brochure, 9th edition \(2019\)/;
test("a source is a standard, or the word that there is none", () => {
  const others = UNITS.map((unit) => unit.source).filter((text) => !NAMED.test(text));
  expect([...new Set(others)].sort()).toEqual(["common practice, no source", "counted"]);
});

test("everything that a workshop's records are written in is there", () => {
  const ids = UNITS.map((unit) => unit.id);
  const lengths = ["in", "thou", "ft", "mm", "cm", "m", "km", "mile", "miles"];
  const torques = ["ft-lb", "in-lb", "N·m", "kgf·m", "kgf·cm", "in-oz"];
  const pressures = ["psi", "kPa", "MPa", "bar", "kgf/cm²", "inHg", "mmHg", "cmHg", "inH2O"];
  const volumes = [
    "US gal",
    "US qt",
    "US pt",
    "fl oz",
    "imp gal",
    "imp qt",
    "imp pt",
    "imp fl oz",
    "L",
    "mL",
    "cc",
    "cu in",
  ];
  const angles = ["deg", "arcmin", "turns", "deg BTDC", "deg ATDC", "rpm"];
  const warmth = ["deg F", "°C", "K", "F° difference", "C° difference"];
  const rest = [
    "lb",
    "oz",
    "kg",
    "g",
    "lbf",
    "N",
    "kgf",
    "mph",
    "km/h",
    "V",
    "mV",
    "A",
    "mA",
    "ohm",
    "kohm",
    "W",
    "hp",
  ];
  const wanted = [
    lengths,
    torques,
    pressures,
    volumes,
    angles,
    warmth,
    rest,
    ["s", "min", "h", "notches", "teeth"],
  ].flat();
  expect(wanted.filter((id) => !ids.includes(id))).toEqual([]);
});

test("what is counted is a dimension of its own", () => {
  expect(counted("pegs").dimension).not.toBe(counted("kites").dimension);
});
