/** The words of a made-up maker of tractors, years 1957 to 1962, as a question is read with them, and its numbers. */
import { type Numbered, type Numbers, plainNumber } from "../../src/engine/ask/numbers.ts";
import type { Name, Vocabulary } from "../../src/engine/ask/vocabulary-shape.ts";

const name = (kind: Name["kind"], id: string, label: string, ...also: string[]): Name => ({
  kind,
  id,
  label,
  say: [label, ...also],
});

export const TRACTOR_WORDS: Vocabulary = {
  names: [
    name("system", "hydraulics", "Hydraulics", "lift system"),
    name("system", "brakes", "Brakes"),
    name("system", "torque-drive", "Torque drive"),
    name("component", "pump", "hydraulic pump", "pump"),
    name("component", "pump-seal", "pump seal", "oil seal"),
    name("component", "hub-seal", "hub seal", "oil seal"),
    name("component", "brake", "brake"),
    name("component", "three-point-arm", "three-point arm", "lift arm", "link of the lift"),
    name("component", "gears", "gearbox", "box of gears"),
    name("component", "glass", "glass"),
    name("component", "clutch", "clutch", "clutch of a big old thing"),
    name("component", "dynamo", "dynamo", "30 V dynamo"),
    name("component", "winch", "winch"),
    name("component", "caliper", "caliper"),
    name("component", "thermostat", "thermostat"),
    name("line", "B", "Badger", "Brock"),
    name("line", "H", "Heron"),
    ...["1957", "1958", "1959", "1960", "1961", "1962"].map((year) => name("year", year, year)),
    name("trait", "PT=yes", "power take-off", "pto"),
    name("trait", "WN=yes", "winch"),
    name("trait", "fuel=diesel", "diesel oil", "diesel", "oil burner"),
    name("trait", "fuel=tvo", "vaporising oil", "oil burner"),
    name("trait", "drive=torque", "torque drive"),
    name("kind", "retrofit", "retrofit", "later fitting"),
    name("kind", "caution", "caution"),
    name("kind", "setting", "setting", "adjustment figure"),
  ],
  ignore: ["what", "changed", "on", "the", "of", "a", "is", "it's"],
  plain: ["thermostatic"],
  mean: [
    ["breaks", "brakes"],
    ["oil pipe", "hydraulic pipe"],
    ["pump", "hydraulic pump"],
    ["slick pump", "pump"],
    ["a very very long saying", "brakes"],
    ["croûte", "glass"],
    ["shaftless", "without power take-off"],
  ],
  serials: [
    {
      trait: "number",
      label: "chassis number",
      prefixes: ["K", "D"],
      letter: "plant",
      digits: 4,
      from: 1,
      to: 8999,
      called: ["chassi", "number"],
    },
    {
      trait: "axle",
      label: "axle number",
      prefixes: ["A"],
      digits: 6,
      from: 0,
      to: 999_999,
      called: ["axle", "number"],
    },
    {
      trait: "box",
      label: "gearbox serial",
      prefixes: [],
      digits: 5,
      from: 10_001,
      to: 59_950,
      called: ["gearbox", "serial"],
    },
  ],
  units: ["psi", "bar", "mm", "ft-lb", "V"],
  shelves: ["31", "44", "HT", "HY", "TB"],
  records: 40,
  components: {
    pump: { system: "hydraulics", records: 12 },
    "pump-seal": { system: "hydraulics", under: "pump", records: 3 },
    "three-point-arm": { system: "hydraulics", records: 2 },
    gears: { system: "torque-drive", records: 4 },
    clutch: { system: "torque-drive", records: 1 },
    "hub-seal": { system: "brakes", under: "brake", records: 2 },
    brake: { system: "brakes", records: 9 },
    caliper: { system: "brakes", under: "brake", records: 1 },
    glass: { system: "hydraulics", records: 40 },
    dynamo: { system: "hydraulics", records: 1 },
    winch: { system: "hydraulics", records: 2 },
    thermostat: { system: "hydraulics", records: 1 },
  },
  called: { arm: ["hydraulics"], spring: ["brakes", "hydraulics"], adjuster: ["brakes"] },
  words: { leak: 7, tighten: 3, adjuster: 5, spring: 11, noise: 2, grease: 1, chatter: 1, bled: 2, model: 30 },
};

const number = (kind: Numbered["kind"], id: string, component: string, system: string, as?: Numbered["as"]) =>
  ({ kind, id, components: [component], systems: [system], ...(as ? { as } : {}) }) satisfies Numbered;

/** Numbers of the tractors' parts and papers, by what is written. */
export const TRACTOR_NUMBERS: Numbers = new Map<string, Numbered[]>(
  (
    [
      ["HY59-01", number("record", "HY59-01", "pump", "hydraulics")],
      ["HT-101", number("part", "HT-101", "pump", "hydraulics")],
      ["HT-10O", number("part", "HT-10O", "pump", "hydraulics")],
      ["3110 552 L", number("part", "3110 552 L", "caliper", "brakes")],
      ["3110 552 R", number("part", "3110 552 R", "caliper", "brakes")],
      ["4411", number("part", "HT-102", "pump", "hydraulics", "casting number")],
      ["TB-17", { kind: "bulletin", id: "TB-17", components: [], systems: [] }],
    ] as const
  ).map(([written, one]) => [plainNumber(written), [one]]),
);
