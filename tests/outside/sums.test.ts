/** Worked examples that others printed. Each row names who. */
import { expect, test } from "vitest";
import type { SumId } from "../../src/engine/records/shapes/sums.ts";
import { SUMS } from "../../src/engine/settings/sums/all.ts";
import { workOut } from "../../src/engine/settings/sums/work-out.ts";

// source, sum, what goes in, which result, what was printed
const PRINTED: [source: string, id: SumId, inputs: Record<string, string>, result: string, printed: number][] = [
  [
    "US Army TM 1-1500-204-23-9",
    "torque-adapter",
    { torque: "300 in-lb", wrench: "10 in", adapter: "4 in" },
    "setting",
    214,
  ],
  ["US Army TM 9-254", "torque-adapter", { setting: "60 ft-lb", wrench: "12 in", adapter: "2 in" }, "torque", 70],
  [
    "the formula of both manuals, by hand: 72 x 9 / 12",
    "torque-adapter",
    { torque: "72 in-lb", wrench: "9 in", adapter: "3 in" },
    "setting",
    54,
  ],
  [
    "both manuals: square to the wrench nothing changes",
    "torque-adapter",
    { torque: "60 ft-lb", wrench: "12 in", adapter: "2 in", angle: "90 deg" },
    "setting",
    60,
  ],
  [
    "printed example of belt drives, its book not named",
    "pulley",
    { engine: "1460 rpm", crank: "80 mm", driven: "160 mm" },
    "drivenSpeed",
    730,
  ],
  [
    "printed example of belt drives, its book not named",
    "pulley",
    { engine: "100 rpm", crank: "40 mm", driven: "120 mm" },
    "drivenSpeed",
    33.3,
  ],
  [
    "printed example of belt drives, its book not named, first stage 2:4 from 600 rpm",
    "pulley",
    { engine: "600 rpm", crank: "2 in", driven: "4 in" },
    "drivenSpeed",
    300,
  ],
  [
    "printed example of belt drives, its book not named, second stage 1:5",
    "pulley",
    { engine: "300 rpm", crank: "1 in", driven: "5 in" },
    "drivenSpeed",
    60,
  ],
  [
    "printed example of hydraulics, its book not named: bores of 4 and 50 cm",
    "brake-hydraulics",
    { master: "4 cm", wheel: "50 cm" },
    "multiplied",
    156.25,
  ],
  [
    "printed brake example, its book not named: 100 lb, lever 6:1, bore 0.875 in",
    "brake-hydraulics",
    { force: "100 lbf", lever: "6:1", master: "0.875 in" },
    "pressure",
    998,
  ],
  [
    "63360 inches in a mile: 63360 / (pi x 26), by hand",
    "speedometer",
    { driveTeeth: "8", ratio: "3", diameter: "26 in" },
    "turns",
    775.7,
  ],
  [
    "63360 inches in a mile: radius is half of it",
    "speedometer",
    { driveTeeth: "8", ratio: "3", radius: "13 in" },
    "turns",
    775.7,
  ],
  ["common practice, no source", "adjuster-notches", { teeth: "24", turn: "1/2" }, "count", 12],
  ["common practice, no source", "adjuster-notches", { teeth: "30", turn: "1/2" }, "count", 15],
  [
    "the piston maker Wiseco, printed examples",
    "displacement",
    { bore: "4 in", stroke: "4 in", cylinders: "6" },
    "total",
    301.6,
  ],
  [
    "the piston maker Wiseco, printed examples (4942.2142 cc)",
    "displacement",
    { bore: "4 in", stroke: "4 in", cylinders: "6" },
    "totalMetric",
    4942,
  ],
  [
    "a parts house's printed example: 87 by 69 mm, four cylinders, 1641 cc",
    "displacement",
    { bore: "87 mm", stroke: "69 mm", cylinders: "4" },
    "totalMetric",
    1641,
  ],
];
test.each(PRINTED)("%s: %s %o", (_, id, inputs, result, printed) => {
  const shown = resultOf(id, inputs, result);
  const places = /\.(\d+)$/.exec(String(printed))?.[1]?.length ?? 0;
  expect(Number(shown.toFixed(places))).toBe(printed);
});

test("US Navy NAVEDTRA 14264: 3-1/2 by 4 in, eight cylinders, printed 307.44 with pi as 3.14 and 3.06 for 1.75 squared", () => {
  const ours = resultOf("displacement", { bore: "3 1/2 in", stroke: "4 in", cylinders: "8" }, "total");
  expect(Math.abs(ours / 307.44 - 1)).toBeLessThan(0.0016);
  // The manual's own figures with the full ones put back: what is left of the difference is its rounding.
  expect(ours).toBeCloseTo((307.44 / 3.14 / 3.06) * Math.PI * 1.75 ** 2, 1);
});

test("a parts house's printed example: 50 cc, deck 0.06 in over 87 mm (9.06 cc), swept 410.25 cc: 7.95", () => {
  const inputs = {
    swept: "410.25 cc",
    bore: "87 mm",
    chamber: "50 cc",
    gasketBore: "87 mm",
    gasket: "0 mm",
    deck: "0.06 in",
  };
  expect(resultOf("compression-ratio", inputs, "clearance")).toBeCloseTo(59.06, 1);
  expect(Number(resultOf("compression-ratio", inputs, "ratio").toFixed(2))).toBe(7.95);
});

test("the piston maker Wiseco's printed example: (100.00 + 823.70) / 100.00 = 9.237", () => {
  const inputs = { swept: "823.70 cc", chamber: "100 cc", gasketBore: "4 in", gasket: "0 in" };
  expect(Number(resultOf("compression-ratio", inputs, "ratio").toFixed(3))).toBe(9.237);
});

function resultOf(id: SumId, inputs: Record<string, string>, result: string): number {
  const out = workOut(SUMS[id], inputs);
  if (out.as !== "worked out") throw new Error(JSON.stringify(out));
  return out.results.find((it) => it.id === result)?.value ?? Number.NaN;
}
