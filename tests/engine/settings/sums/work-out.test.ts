/** Every sum with what people type: figures in mixed units, figures that are missing, wrong or cannot belong together. */
import { describe, expect, test } from "vitest";
import { SUM_INPUTS, type SumId } from "../../../../src/engine/records/shapes/sums.ts";
import { SUMS } from "../../../../src/engine/settings/sums/all.ts";
import { workOut } from "../../../../src/engine/settings/sums/work-out.ts";

type Typed = Record<string, string>;

/** "teeth=20; threads=16" */
function read(text: string): Typed {
  return Object.fromEntries(
    text
      .split(";")
      .filter((it) => it.trim() !== "")
      .map((it) => it.split("=").map((half) => half.trim()) as [string, string]),
  );
}

/** The results as shown, with their units; or what stands in the way. */
function outcome(id: SumId, typed: Typed): Record<string, string> | string {
  const out = workOut(SUMS[id], typed);
  switch (out.as) {
    case "worked out":
      return Object.fromEntries(out.results.map((it) => [it.id, `${it.shown} ${it.unit}`.trim()]));
    case "missing":
      return `missing: ${out.missing.map((it) => it.what).join(" | ")}`;
    case "refused":
      return `refused: ${out.wrong.map((it) => it.why).join(" | ")}`;
    case "impossible":
      return `impossible: ${out.why}`;
  }
}

// sum, what is typed, results that must be among those shown
const WORKED: [id: SumId, typed: string, shown: Typed][] = [
  [
    "adjuster-notches",
    "teeth=20; threads=16; notches=8; newTeeth=20; newThreads=28",
    {
      travel: "0.0250 in",
      newExact: "14 notches",
      newCount: "14 notches",
      newTravel: "0.0250 in",
      oldCountTravel: "0.0143 in",
    },
  ],
  ["adjuster-notches", "teeth=20; threads=28 tpi; notches=14 clicks", { travel: "0.0250 in" }],
  [
    "adjuster-notches",
    "teeth=24; threads=20; notches=10; newTeeth=30; newThreads=18",
    { newExact: "11.25 notches", newCount: "11 notches" },
  ],
  ["adjuster-notches", "teeth=30 teeth; turn=1 1/2", { count: "45 notches" }],
  ["adjuster-notches", "teeth=20; threads=16; notches=0", { travel: "0.0000 in" }],
  ["torque-adapter", "torque=72 in-lb; wrench=9 in; adapter=3 in", { setting: "54 in-lb" }],
  [
    "torque-adapter",
    "torque=72 in-lb; wrench=228.6 mm; adapter=3 in",
    { setting: "54 in-lb", least: "69 in-lb", most: "75 in-lb" },
  ],
  ["torque-adapter", "torque=100 N·m; wrench=40 cm; adapter=100 mm", { setting: "80 N·m" }],
  ["torque-adapter", "torque=40 ft-lb; wrench=10 in; adapter=4 in; angle=90", { setting: "40 ft-lb" }],
  ["torque-adapter", "torque=40 ft-lb; wrench=10 in; adapter=2 in; angle=180 deg", { setting: "50 ft-lb" }],
  ["torque-adapter", "torque=5 ft-lb; wrench=10 in; adapter=2 in", { setting: "4.2 ft-lb" }],
  [
    "pulley",
    "engine=1250; crank=6.5 in; driven=2.6 in; newDriven=2.9 in",
    { drivenSpeed: "3125 rpm", newEngineExact: "1394.2 rpm", newEngine: "1400 rpm" },
  ],
  ["pulley", "engine=1,250 rpm; driven=66.04 mm; newDriven=2.9 in", { newEngine: "1400 rpm" }],
  [
    "speedometer",
    "driveTeeth=8; ratio=3.08; turns=760; fitted=17",
    { exact: "18.73 teeth", teeth: "19 teeth", fittedError: "10 per cent", at60: "66.1 mph" },
  ],
  [
    "speedometer",
    "driveTeeth=8; ratio=2.85:1; turns=760; fitted=19",
    { teeth: "17 teeth", fittedError: "-8.8 per cent" },
  ],
  [
    "speedometer",
    "driveTeeth=8; ringTeeth=41; pinionTeeth=12; turns=760 per mile",
    { ratio: "3.417", teeth: "21 teeth" },
  ],
  ["speedometer", "driveTeeth=8; ratio=41/12; radius=33 cm", { turns: "776.2 turns per mile" }],
  [
    "brake-hydraulics",
    "wheel=15/16 in; newWheel=7/8 in",
    { newForce: "0.8711", change: "-13 per cent", newTravel: "1.148" },
  ],
  ["brake-hydraulics", "wheel=7/8 in; newWheel=23.8125 mm", { change: "15 per cent" }],
  ["brake-hydraulics", "force=445 N; lever=6; master=0.875 in; wheel=22.225 mm", { wheelForce: "2670 N" }],
  ["brake-hydraulics", "master=1 in; newMaster=7/8 in", { newForce: "1.306", change: "31 per cent" }],
  ["displacement", "bore=101.6 mm; stroke=4 in; cylinders=6", { total: "301.6 cu in", totalMetric: "4942 cc" }],
  [
    "compression-ratio",
    "swept=602.9 cc; bore=3.9 in; chamber=69 cc; gasketBore=4 in; gasket=0.022 in; deck=0.02 in; newChamber=71.5 cc; newGasket=0.040 in",
    { ratio: "8.8", newRatio: "8.2" },
  ],
  [
    "compression-ratio",
    "bore=4 in; stroke=4 in; chamber=5 cu in; gasketBore=101.6 mm; gasket=0.5 mm; dish=-3 cc",
    { ratio: "10.9" },
  ],
  ["gauge-drill", "goes=55; stays=51", { goesSize: "0.0520 in", staysSize: "0.0670 in" }],
  ["gauge-drill", "low=0.052 in; high=0.067 in", { goesDrill: "No. 55", staysDrill: "No. 51" }],
  ["gauge-drill", "low=0.067 in; high=0.0785 in", { goesDrill: "No. 51", staysDrill: "No. 47" }],
  [
    "end-play",
    "play=0.002..0.006 in; was=0.180 in; becomes=0.190 in",
    { newLeast: "-0.008 in", newMost: "-0.004 in", says: "it binds" },
  ],
  ["end-play", "play=0.002..0.006 in; was=0.190 in; becomes=0.180 in", { newLeast: "0.012 in", newMost: "0.016 in" }],
  [
    "end-play",
    "play=0.004..0.012 in; was=0.078 in; becomes=0.062 in; pieces=2",
    { newLeast: "0.036 in", newMost: "0.044 in" },
  ],
  [
    "end-play",
    "groove=3.000..3.004 in; part=2.830..2.832 in; washers=2; washer=0.078..0.080 in",
    { least: "0.008 in", most: "0.018 in", says: "it has play" },
  ],
  ["end-play", "groove=25.40 mm; part=0.9 in; washers=1; washer=2.5 mm", { least: "0.04 mm" }],
  [
    "end-play",
    "play=0.015 in; wanted=0.004..0.012 in",
    { shimLeast: "0.003 in", shimMost: "0.011 in", shimMiddle: "0.007 in" },
  ],
  [
    "end-play",
    "play=0.001..0.020 in; wanted=0.004..0.012 in",
    { says: "no one thickness of shim is right for every play between these limits: measure this one" },
  ],
  // Rounded so that whoever keeps to it gets what is wanted.
  [
    "end-play",
    "play=0.0152 in; wanted=0.0041..0.0118 in",
    { least: "0.015 in", most: "0.016 in", shimLeast: "0.004 in", shimMost: "0.011 in" },
  ],
  [
    "end-play",
    "play=0.0032..0.0038 in; wanted=0.0008..0.0016 in",
    { shimLeast: "0.0022 in", shimMost: "0.0024 in", shimMiddle: "0.0023 in" },
  ],
  ["end-play", "play=0.0032 in; wanted=0.0048..0.0072 in", { shimLeast: "-0.004 in", shimMost: "-0.002 in" }],
  ["end-play", "play=0.002 in; washers=0", { least: "0.002 in" }],
  ["end-play", "play=-0.001..0.002 in", { says: "it may bind" }],
  [
    "dwell-angle",
    "cylinders=6; dwell=42 deg; newDwell=38 deg",
    { share: "60 deg", fraction: "70 per cent", timing: "-4 crank degrees" },
  ],
];

describe("a sum gives", () => {
  test.each(WORKED)("%s: %s", (id, typed, shown) => {
    expect(outcome(id, read(typed))).toMatchObject(shown);
  });
});

// sum, what is typed, what is said: the whole of it, or its beginning
const STOPPED: [id: SumId, typed: string, said: RegExp][] = [
  [
    "adjuster-notches",
    "",
    /^missing: how far the wheel is turned: notches turned; part of a turn \| teeth of the wheel$/,
  ],
  [
    "adjuster-notches",
    "teeth=0; notches=8",
    /^refused: teeth of the wheel: it must be at least 1 teeth; 0 teeth is not\.$/,
  ],
  [
    "adjuster-notches",
    "teeth=20.5; notches=8",
    /^refused: teeth of the wheel: it must be a whole number; 20\.5 is not\.$/,
  ],
  ["adjuster-notches", "teeth=-20; notches=8", /^refused: .*at least 1/],
  [
    "adjuster-notches",
    "teeth=20; notches=8; turn=1/2",
    /^refused: How far the wheel is turned is given more than once: notches turned; part of a turn\./,
  ],
  [
    "adjuster-notches",
    "teeth=20; notches=8; newThreads=28",
    /^missing: threads per inch of the screw \| teeth of the other wheel$/,
  ],
  ["adjuster-notches", "teeth=20; notches=8; threads=0", /^refused: .*above 0 threads per inch/],
  ["adjuster-notches", "teeth=twenty; notches=8", /^refused: teeth of the wheel: 'twenty' is not a number of teeth/],
  ["adjuster-notches", "teeth=20; notches=1/0", /^refused: .*divides by zero/],
  ["adjuster-notches", "teeth=20; notch=8", /^refused: .*takes no 'notch'; did you mean 'notches'\?/],
  [
    "adjuster-notches",
    "teeth=400; threads=100; notches=1; newTeeth=4; newThreads=4",
    /^impossible: One notch of the other wheel moves further/,
  ],
  ["adjuster-notches", `teeth=${"9".repeat(80)}; notches=8`, /^refused: .*longer than 60 characters/],
  ["torque-adapter", "torque=50 ft-lb; wrench=10 in", /^missing: length of the adapter/],
  [
    "torque-adapter",
    "torque=50 ft-lb; setting=40 ft-lb; wrench=10 in; adapter=2 in",
    /^refused: The torque is given more than once/,
  ],
  [
    "torque-adapter",
    "torque=50 ft-lb; wrench=-10 in; adapter=2 in",
    /^refused: length of the wrench.*above 0 in; -10 in is not/,
  ],
  [
    "torque-adapter",
    "torque=50 ft-lb; wrench=4 in; adapter=4 in; angle=180",
    /^impossible: The adapter points back 4 in over a wrench of 4 in/,
  ],
  ["torque-adapter", "torque=50 ft-lb; wrench=4 in; adapter=6 in; angle=150", /^impossible: The adapter points back/],
  ["torque-adapter", "torque=50 ft-lb; wrench=10 in; adapter=2 in; angle=200", /^refused: angle.*at most 180/],
  [
    "torque-adapter",
    "torque=35 psi; wrench=10 in; adapter=2 in",
    /^refused: torque wanted at the fastener: .*pressure/,
  ],
  ["torque-adapter", "torque=50 ft-lb; wrench=300 mil; adapter=2 in", /^refused: length of the wrench/],
  // One mark ends a sentence.
  [
    "torque-adapter",
    "torque=35 lb; wrench=10 in; adapter=2 in",
    /^refused: torque wanted at the fastener: '35 lb' can be read in more than one way\. Which is meant\?$/,
  ],
  [
    "torque-adapter",
    "torque=50 ft-lb; wrench=10 in; adapter=9.1 in; angle=180",
    /^impossible: The adapter points back .*less than a tenth/,
  ],
  ["pulley", "engine=1250; driven=2.6 in", /^missing: what is compared with the driven pulley/],
  ["pulley", "engine=0; driven=2.6 in; crank=6.5 in", /^refused: .*above 0 rpm/],
  ["pulley", "engine=1250; driven=0 in; crank=6.5 in", /^refused: .*above 0 in/],
  [
    "speedometer",
    "driveTeeth=8; ratio=3.08",
    /^missing: the tyre: turns of the tyre in a mile; loaded radius, ground to the middle of the wheel; diameter of the free tyre$/,
  ],
  ["speedometer", "driveTeeth=8; ratio=3.08; turns=760; radius=13 in", /^refused: The tyre is given more than once/],
  ["speedometer", "driveTeeth=8; ringTeeth=41; turns=760", /^missing: the axle ratio/],
  ["speedometer", "driveTeeth=1; ratio=1; turns=100", /^impossible: .*less than one/],
  ["speedometer", "driveTeeth=8; ratio=0.1; turns=760", /^impossible: An axle ratio of 0\.1 is below one/],
  [
    "speedometer",
    "driveTeeth=8; ringTeeth=12; pinionTeeth=41; turns=760",
    /^impossible: The ring gear \(12 teeth\) has fewer teeth than the axle pinion \(41\)/,
  ],
  [
    "speedometer",
    "driveTeeth=8; ratio=3.08; pinionTeeth=12; turns=760",
    /^refused: The axle ratio is given by axle ratio, so 'teeth of the axle pinion' has no use/,
  ],
  ["brake-hydraulics", "master=1 in", /^missing: two things to compare/],
  ["brake-hydraulics", "force=100 lbf; master=1 in; wheel=1 in", /^missing: lever of the pedal/],
  ["brake-hydraulics", "wheel=1 in; newWheel=-1 in", /^refused: .*above 0 in/],
  ["displacement", "bore=4 in; stroke=0 in; cylinders=8", /^refused: stroke: it must be above 0 in/],
  [
    "compression-ratio",
    "swept=600 cc; chamber=10 cc; gasketBore=4 in; gasket=0 in; dish=-10 cc",
    /^impossible: Nothing is left above the piston/,
  ],
  ["compression-ratio", "swept=600 cc; chamber=10 cc; gasketBore=4 in; gasket=0 in; dish=-12 cc", /^impossible: /],
  [
    "compression-ratio",
    "swept=600 cc; bore=4 in; stroke=3 in; chamber=60 cc; gasketBore=4 in; gasket=0 in",
    /^refused: The swept volume is given more than once/,
  ],
  [
    "compression-ratio",
    "swept=600 cc; stroke=3 in; chamber=60 cc; gasketBore=4 in; gasket=0 in",
    /^refused: The swept volume is given by swept volume of one cylinder, so 'stroke' has no use\. Give swept volume of one cylinder, or bore .* and stroke\.$/,
  ],
  [
    "compression-ratio",
    "bore=4 in; stroke=3 in; chamber=60 cc; gasketBore=3.9 in; gasket=0 in",
    /^impossible: The gasket's bore \(3\.9 in\) is smaller than the cylinder's \(4 in\)/,
  ],
  [
    "compression-ratio",
    "swept=4800 cc; chamber=60 cc; gasketBore=4 in; gasket=0 in",
    /^impossible: That is 81 to one, .* whole engine\?/,
  ],
  [
    "compression-ratio",
    "swept=600 cc; chamber=60 cc; gasketBore=4 in; gasket=0 in; newChamber=6 cc",
    /^impossible: That is 101 to one, .*another unit\?$/,
  ],
  ["gauge-drill", "goes=-0.05 in; stays=0.06 in", /^refused: .*above 0 in/],
  ["gauge-drill", "goes=51; stays=55", /^impossible: The drill that goes \(0\.067 in\) is not smaller/],
  ["gauge-drill", "low=0.0521 in; high=0.0522 in", /^impossible: No two of these drills/],
  ["gauge-drill", "low=0.06 in; high=0.05 in", /^impossible: The lower limit/],
  ["gauge-drill", "goes=55", /^missing: /],
  ["gauge-drill", "goes=55; stays=51; series=wooden", /^refused: .*is not one of inch sizes, number drills/],
  ["end-play", "play=0.006..0.002 in", /^refused: .*begins above its end/],
  [
    "end-play",
    "groove=1 in; part=0.9 in; washers=2",
    /^impossible: There are washers, but their thickness is not given/,
  ],
  ["end-play", "groove=1 in; part=0.9 in; washer=0.03 in", /^missing: number of washers$/],
  ["end-play", "groove=1 in; part=0.9 in; washer=0.03 in; washers=0", /^impossible: .*the number of washers is 0/],
  ["end-play", "play=0.002 in; groove=1 in", /^refused: The play now is given by .*, so 'width of the groove or case'/],
  ["end-play", "play=0.002 in; was=0.18 in", /^missing: thickness of the piece that goes in$/],
  ["end-play", "groove=-1 in; part=0.9 in", /^refused: .*above 0 in/],
  ["dwell-angle", "cylinders=8; dwell=45 deg", /^impossible: With 8 cylinders each has 45 degrees/],
];

describe("a sum is not done", () => {
  test.each(STOPPED)("%s: %s", (id, typed, said) => {
    expect(outcome(id, read(typed))).toMatch(said);
  });
});

describe("the worked example of", () => {
  test.each(Object.values(SUMS).map((sum) => [sum.id, sum] as const))("%s comes out as printed", (id, sum) => {
    const out = workOut(sum, { ...sum.example.inputs });
    const shown = out.as === "worked out" ? Object.fromEntries(out.results.map((it) => [it.id, it.shown])) : out;
    expect(shown).toMatchObject({ ...sum.example.results });
    expect(sum.example.source).not.toBe("");
    expect(sum.id).toBe(id);
  });
});

/** Standards, public handbooks and laws of nature may be named as a source; makers may not. */
const NAMED = /\b(Pascal|ASME B94\.11M|SAE J678|ISO 6789|US Army|US Navy|NAVEDTRA 14264|TM [\d-]+)/g;
/** How a text was come by. */
const COME_BY = /\b(printed by|not named|searche?[sd]?|stored|pages?|website|internet|copied|found)\b/i;

test.each(Object.values(SUMS))("what $id rests on names no maker, and not how it was come by", (sum) => {
  for (const text of [sum.source, sum.example.source, ...sum.notes]) {
    expect(text).not.toMatch(COME_BY);
    // Beside these only the beginning of a sentence and the letters of a formula are capitals.
    const names = text.replaceAll(NAMED, "").match(/(?<!^|\. )\b[A-Z][A-Za-z]+/g);
    expect(names, text).toBeNull();
  }
});

test("a torque in pounds is asked about with both that it may be", () => {
  const out = workOut(SUMS["torque-adapter"], { torque: "35 lb", wrench: "10 in", adapter: "2 in" });
  expect(out.as === "refused" && out.wrong[0]?.choices?.map((it) => it.typed)).toEqual(["35 ft-lb", "35 in-lb"]);
});

test("the steps count in the units of the sum, from what was typed and back to it", () => {
  const out = workOut(SUMS["torque-adapter"], { torque: "72 in-lb", wrench: "9 in", adapter: "76.2 mm" });
  expect(out.as === "worked out" && out.steps).toEqual([
    "T = 72 in-lb = 6 ft-lb",
    "E = 76.2 mm = 3 in",
    "S = 6 x 9 / (9 + 3) = 4.5 ft-lb",
    "set the wrench to: 4.5 ft-lb = 54 in-lb",
    "at the fastener with a wrench 4 per cent weak: 5.76 ft-lb = 69.12 in-lb",
    "at the fastener with a wrench 4 per cent strong: 6.24 ft-lb = 74.88 in-lb",
  ]);
});

test("an editor's file knows just the inputs that the sums take", () => {
  const taken = Object.fromEntries(Object.entries(SUMS).map(([id, sum]) => [id, sum.inputs.map((input) => input.id)]));
  const known = Object.fromEntries(Object.entries(SUM_INPUTS).map(([id, inputs]) => [id, [...inputs]]));
  for (const list of [...Object.values(taken), ...Object.values(known)]) list.sort();
  expect(taken).toEqual(known);
});

test("whatever is typed, no result is anything but a number or words", () => {
  const ODD = [
    "",
    "0",
    "-1",
    "1e9",
    "NaN",
    "Infinity",
    "1e400",
    "1/0",
    "..",
    "0..0",
    "in",
    "°",
    "9999999 in",
    "0.0000001 in",
  ];
  for (const sum of Object.values(SUMS))
    for (const text of ODD)
      for (const input of sum.inputs) {
        const out = workOut(sum, { ...sum.example.inputs, [input.id]: text });
        if (out.as !== "worked out") continue;
        for (const { value, shown } of out.results) {
          expect(value === undefined || Number.isFinite(value)).toBe(true);
          expect(shown).not.toMatch(/NaN|Infinity|undefined/);
        }
      }
});
