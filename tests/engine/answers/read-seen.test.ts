import Fraction from "fraction.js";
import { describe, expect, test } from "vitest";
import { QuestionError } from "../../../src/engine/answers/question-error.ts";
import { findFeature, readSeen } from "../../../src/engine/answers/read-seen.ts";
import type { Feature, Part } from "../../../src/engine/records/catalog.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const { catalog } = tinyKnowledge({
  "parts/pump.yaml": `component: pump
features:
  - { id: ribs, name: number of ribs on the body, made: counted, where: on the car, effort: 2, record: HY59-01 }
  - { id: dots, name: raised dots on the nose, made: cast, where: on the car, effort: 2, record: HY59-01 }
  - { id: mark, name: mark on the end face, made: cast, where: on the car, effort: 2, record: HY59-01 }
  - { id: core, name: core at the cut edge, made: coloured, where: on the car, effort: 2, record: HY59-01 }
  - { id: nipple, name: colour of the nipple, made: painted, absent: plain metal, where: on the car, effort: 2, record: HY59-01 }
  - { id: bore, name: bore of the inlet, made: measured, unit: in, tolerance: 0.002, where: in the hand, effort: 4, record: HY59-01 }
  - { id: bore-mark, name: bore figure, made: stamped, where: in the hand, effort: 4, record: HY59-01 }
parts:
  - { number: HT-101, name: pump, marks: { ribs: 0, dots: none, mark: none, core: red, nipple: green, bore: 0.75, bore-mark: 1-1/8 } }
  - { number: HT-102, name: pump, marks: { ribs: 2, dots: three, mark: one bar, core: not red, nipple: plain metal, bore: none, bore-mark: 1-1/16 } }
  - { number: HT-103, name: pump, marks: { ribs: 12, mark: bar and U } }
`,
});
const parts = [...catalog.parts.values()].filter((part) => part.component === "pump");
const { features } = parts[0] as Part;
const feature = (id: string): Feature => features.find((it) => it.id === id) as Feature;

/** What was understood, in short. */
function read(id: string, typed: string | number): string {
  const seen = readSeen(feature(id), parts, typed);
  if (seen.is === "value") return `= ${seen.value}`;
  if (seen.is !== "measured") return seen.is;
  return [seen.low, seen.high, ...(seen.error ? [seen.error] : [])]
    .map((it) => new Fraction(it).toFraction())
    .join(" ");
}

describe("what was seen, as the records write it", () => {
  // mark, what is typed, what is understood
  test.each<[string, string | number, string]>([
    ["ribs", "2", "= 2"],
    ["ribs", 2, "= 2"],
    ["ribs", "two", "= 2"],
    ["ribs", " Two ribs ", "= 2"],
    ["ribs", "12 of them", "= 12"],
    ["ribs", "twelve", "= 12"],
    ["ribs", "0", "absent"],
    ["ribs", "none", "absent"],
    ["ribs", "no ribs", "absent"],
    ["ribs", "No rib", "absent"],
    ["ribs", "can't see", "not seen"],
    ["ribs", "Cannot see it", "not seen"],
    ["ribs", "?", "not seen"],
    ["ribs", "something else", "something else"],
    ["dots", "3", "= three"],
    ["dots", "THREE", "= three"],
    ["dots", "3 dots", "= three"],
    ["dots", "yes", "= three"],
    ["dots", "none", "absent"],
    ["dots", "no dots", "absent"],
    ["dots", "nothing there", "absent"],
    ["mark", "1 bar", "= one bar"],
    ["mark", "one", "= one bar"],
    ["mark", "U", "= bar and U"],
    ["mark", "a bar and U", "= bar and U"],
    ["mark", "the bar and U, cast", "= bar and U"],
    ["core", "red", "= red"],
    ["core", "not red", "= not red"],
    ["core", "a red core", "= red"],
    ["core", "Not", "= not red"],
    ["nipple", "Green", "= green"],
    ["nipple", "green paint", "= green"],
    ["nipple", "plain metal", "absent"],
    ["nipple", "plain", "absent"],
    ["nipple", "no paint", "absent"],
    ["nipple", "none", "absent"],
    ["nipple", "yes", "= green"],
    ["bore", "0.75 in", "3/4 3/4"],
    ["bore", "0.75", "3/4 3/4"],
    ["bore", "19.05 mm", "3/4 3/4"],
    ["bore", "0.75 in ± 0.001 in", "3/4 3/4 1/1000"],
    ["bore", "0.75 in +/- 0.001", "3/4 3/4 1/1000"],
    ["bore", "none", "absent"],
    ["bore", "hidden", "not seen"],
    ["bore-mark", "1-1/16", "= 1-1/16"],
    ["bore-mark", "figure 1-1/8", "= 1-1/8"],
  ])("%s, '%s': %s", (id, typed, understood) => {
    expect(read(id, typed)).toBe(understood);
  });

  // mark, what is typed, what is said
  test.each<[string, string, RegExp]>([
    ["ribs", "3", /'3' is not one of the values on record; .* On record: 0, 2, 12\.$/],
    ["ribs", "not 2", /not one of the values/],
    ["ribs", "2 or 12", /not one of the values/],
    ["ribs", "1/2", /not one of the values/],
    ["dots", "two", /On record: none, three\.$/],
    ["dots", "yellow", /not one of the values/],
    ["mark", "bar", /'bar' may be one bar or bar and U\./],
    ["mark", "one bar and U", /may be one bar or bar and U/],
    ["mark", "two bars", /not one of the values/],
    ["mark", "yes", /not one of the values/],
    ["core", "no red core", /not one of the values/],
    ["nipple", "not green", /not one of the values/],
    ["bore", "35 psi", /^bore of the inlet: .* On record: 0\.75 in, none\.$/],
    ["bore", "wide", /On record: 0\.75 in, none\.$/],
    ["bore", "0.75 ± 0.1 ± 0.2", /no measure with one error/],
    ["ribs", "", /missing, or far too long/],
    ["ribs", "2".repeat(500), /missing, or far too long/],
  ])("%s, '%s' is refused: %s", (id, typed, said) => {
    expect(() => readSeen(feature(id), parts, typed)).toThrow(QuestionError);
    expect(() => readSeen(feature(id), parts, typed)).toThrow(said);
  });
});

describe("a mark by its id, its name, or a beginning that only one has", () => {
  test.each([
    ["ribs", "ribs"],
    ["Number of ribs on the body", "ribs"],
    ["RI", "ribs"],
    ["colour", "nipple"],
    // One whole id is meant, though another one begins so.
    ["bore", "bore"],
    ["bore-", "bore-mark"],
    ["bore f", "bore-mark"],
  ])("%s is %s", (typed, id) => {
    expect(findFeature(features, typed).id).toBe(id);
  });

  test.each([
    ["", /^No mark of these parts is called ''\. There are 'ribs' \(number of ribs on the body\), /],
    ["ribz", /Did you mean 'ribs'\?$/],
    ["bor", /^'bor' may be any of these marks: 'bore' \(bore of the inlet\), 'bore-mark' \(bore figure\)\.$/],
  ])("'%s' is refused: %s", (typed, said) => {
    expect(() => findFeature(features, typed)).toThrow(said);
  });
});
