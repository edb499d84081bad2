import { describe, expect, test } from "vitest";
import { viewMarks } from "../../../src/engine/answers/view-marks.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const knowledge = tinyKnowledge();

describe("the marks of parts", () => {
  test("stand component by component; a feature that none of the parts shows is left out", () => {
    expect(viewMarks(knowledge.catalog, ["HT-201", "HT-102", "no such part"])).toEqual([
      {
        component: "hydraulic pump",
        features: [
          { name: "ribs on the body", where: "on the car", wearsOff: false, values: { "HT-102": "two" } },
          {
            name: "bore of the inlet",
            where: "in the hand",
            wearsOff: false,
            unit: "mm",
            values: { "HT-102": "none" },
          },
        ],
      },
    ]);
    expect(viewMarks(knowledge.catalog, ["HT-201"])).toEqual([]);
  });

  // how a mark is made, whether its absence proves nothing
  const MADE: [string, boolean][] = [
    ["cast", false],
    ["machined", false],
    ["stamped", false],
    ["coloured", false],
    ["painted", true],
    ["printed", true],
  ];
  test.each(MADE)("a mark that is %s wears off: %s", (made, wearsOff) => {
    const { catalog } = tinyKnowledge({ "parts/pump.yaml": ["made: cast", `made: ${made}`] });
    expect(viewMarks(catalog, ["HT-101"])[0]?.features[0]?.wearsOff).toBe(wearsOff);
  });
});
