import { describe, expect, test } from "vitest";
import { openPartIndex } from "../../../src/engine/interchange/part-index.ts";
import { nothingReported } from "../../../src/engine/interchange/reported.ts";
import { seeParts } from "../../../src/engine/interchange/see-parts.ts";
import { openSets } from "../../helpers/sets-folder.ts";

const BUILT = [
  "place: pump, part: A-1, scope: line=B",
  "place: pump gasket, part: B-1, scope: line=B",
  "place: lift arms, part: C-1, scope: line=B",
  'place: "arm, left", part: E-1, scope: line=B',
  'place: "arm, right", part: E-1, scope: line=B',
];

function see(fitted: readonly string[], standIns: readonly string[]) {
  const { catalog, badgers } = openSets(BUILT, standIns, "", fitted);
  const seen = seeParts(openPartIndex(catalog), badgers, fitted);
  return {
    at: Object.fromEntries(seen.at),
    perhaps: Object.fromEntries(seen.perhapsAt),
    misfits: seen.misfits.map((it) => [it.part, it.by.map((one) => one.why).join()]),
    doubtful: [...seen.doubtful.keys()],
  };
}

describe("what is where", () => {
  test("nothing was seen", () => {
    const { catalog, badgers } = openSets(BUILT, ['part: A-2, for: A-1, verdict: "yes"']);
    expect(seeParts(openPartIndex(catalog), badgers, [])).toEqual(nothingReported());
  });

  test("the plant's part is where the plant put it", () => {
    expect(see(["A-1"], ['part: A-1, for: C-1, verdict: "yes"'])).toMatchObject({ at: { pump: ["A-1"] }, perhaps: {} });
  });

  test("another is where it may be; with two such places, perhaps in each", () => {
    const may = (part: string, other: string) => `part: ${part}, for: ${other}, verdict: "yes"`;
    expect(see(["A-2"], [may("A-2", "A-1")])).toMatchObject({ at: { pump: ["A-2"] }, perhaps: {} });
    expect(see(["A-2"], [may("A-2", "A-1"), may("A-2", "C-1")])).toMatchObject({
      at: {},
      perhaps: { pump: ["A-2"], "lift arms": ["A-2"] },
    });
    expect(see(["E-2L"], [may("E-2L", "E-1")]).at).toEqual({ "arm, left": ["E-2L"] });
  });

  test("a refusal does not put a part into a place", () => {
    expect(see(["A-1"], ["part: A-1, for: C-1, verdict: does-not-go-on, why: x"]).at).toEqual({ pump: ["A-1"] });
  });
});

describe("what came along", () => {
  const SET = ["part: A-2, for: A-1, verdict: on-conditions, with: [B-2]", 'part: B-2, for: B-1, verdict: "yes"'];

  test("what a part asks for may be there as well, unless it is the plant's own", () => {
    expect(see(["A-2"], SET)).toMatchObject({ at: { pump: ["A-2"] }, perhaps: { "pump gasket": ["B-2"] } });
    expect(see(["A-2", "B-2"], SET).perhaps).toEqual({});
    expect(see(["A-1"], [...SET, "part: A-1, for: A-2, verdict: on-conditions, with: [C-2]"]).perhaps).toEqual({});
  });

  test("a part that may not go on by itself came with what asks for it", () => {
    const alone = "part: B-2, for: B-1, verdict: must-not-be-used, why: It leaks.";
    expect(see(["B-2"], SET).perhaps).toEqual({});
    expect(see(["B-2"], [SET[0] as string, alone, 'part: B-2, for: B-3, verdict: "yes"']).perhaps).toEqual({
      pump: ["A-2"],
    });
  });
});

test("a misfit, and what is doubtful with it", () => {
  const standIns = [
    'part: B-2, for: B-3, verdict: "yes"',
    'part: B-3, for: B-1, verdict: "yes"',
    "part: B-2, for: B-1, verdict: must-not-be-used, why: It leaks.",
    "part: A-2, for: A-1, verdict: on-conditions, with: [B-1]",
  ];
  expect(see(["B-2"], standIns)).toMatchObject({
    at: { "pump gasket": ["B-2"] },
    misfits: [["B-2", "It leaks."]],
    doubtful: ["A-2"],
  });
});
