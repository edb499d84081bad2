import { expect, test } from "vitest";
import { differingMarks } from "../../../src/engine/answers/differing-marks.ts";

const feature = (name: string, values: Record<string, string | number>) => ({
  name,
  where: "on the car" as const,
  wearsOff: false,
  values,
});
const MARKS = [
  {
    component: "pump",
    features: [feature("ribs", { A: "none", B: "two", C: "two" }), feature("bore", { A: 18, C: 20 })],
  },
];

// parts, the marks that tell them apart
test.each<[string[], string[]]>([
  [["A", "B"], ["ribs A=none B=two"]],
  [["B", "C"], []],
  [
    ["A", "C"],
    ["ribs A=none C=two", "bore A=18 C=20"],
  ],
  [["A"], []],
])("%j: %j", (parts, expected) => {
  const found = differingMarks(MARKS, parts).flatMap((group) => group.features);
  expect(found.map((it) => [it.name, ...Object.entries(it.values).map((pair) => pair.join("="))].join(" "))).toEqual(
    expected,
  );
});
