import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type FamilyLine, familyLines, headOf, NO_PART, tailOf } from "../../../src/engine/answers/family-lines.ts";
import { partIndexOf } from "../../../src/engine/answers/part-indexes.ts";
import type { StandsIn, Supersedes } from "../../../src/engine/records/statement.ts";
import { openWorld, world } from "../../helpers/random-parts.ts";
import { SEED } from "../../helpers/seed.ts";
import { openSets } from "../../helpers/sets-folder.ts";

/** The lines between parts of these stand-in statements, and what else the record states. */
function linesOf(standIns: readonly string[], rest = ""): { lines: string[]; notInForce: number } {
  const { catalog } = openSets(["place: pump, part: A-1, scope: line=B"], standIns, rest);
  const said = [...catalog.records.values()]
    .flatMap((record) => record.statements)
    .filter((it): it is StandsIn | Supersedes => it.type === "stands-in" || it.type === "supersedes")
    .filter((it) => /^A/.test(tailOf(it)));
  const { lines, notInForce } = familyLines(partIndexOf(catalog), said);
  return { lines: lines.map(inWords), notInForce: notInForce.length };
}

function inWords(line: FamilyLine): string {
  return [
    line.tail,
    line.bothWays ? "<>" : ">",
    line.head === NO_PART ? "nothing" : line.head,
    line.kind,
    line.someCars ? "some" : "",
    line.withOthers ? "others" : "",
    line.withWork ? "work" : "",
    line.by.length > 1 ? line.by.length : "",
  ]
    .filter(Boolean)
    .join(" ");
}

const YES = 'part: A-2, for: A-1, verdict: "yes"';
const BACK = 'part: A-1, for: A-2, verdict: "yes"';
const NO = "part: A-2, for: A-1, verdict: does-not-go-on, why: it does not";

describe("what records say is drawn as lines", () => {
  // statements, whatever else, lines, how many statements hold for no car
  const CASES: [string, string[], string, string[], number][] = [
    ["one way", [YES], "", ["A-2 > A-1 yes"], 0],
    ["both ways alike", [YES, BACK], "", ["A-1 <> A-2 yes 2"], 0],
    ["both ways, one for some cars", [YES, `${BACK}, scope: my=1958`], "", ["A-2 > A-1 yes", "A-1 > A-2 yes some"], 0],
    ["both ways, one with work", [YES, `${BACK}, do: Bleed it.`], "", ["A-2 > A-1 yes", "A-1 > A-2 yes work"], 0],
    ["said twice, once for some cars", [YES, `${YES}, scope: my=1958`], "", ["A-2 > A-1 yes some 2"], 0],
    ["said twice, once with another part", [YES, `${YES}, with: [B-1]`], "", ["A-2 > A-1 yes others 2"], 0],
    ["refused twice, once for all", [NO, `${NO}, scope: my=1958`], "", ["A-2 > A-1 does-not-go-on 2"], 0],
    ["refused for some", [`${NO}, scope: my=1958`], "", ["A-2 > A-1 does-not-go-on some"], 0],
    [
      "permitted for all, refused for some",
      [YES, `${NO}, scope: my=1958`],
      "",
      ["A-2 > A-1 yes some", "A-2 > A-1 does-not-go-on some"],
      0,
    ],
    ["permitted for some, refused for all", [`${YES}, scope: my=1958`, NO], "", ["A-2 > A-1 does-not-go-on"], 1],
    ["permitted, the other way refused", [BACK, NO], "", ["A-1 > A-2 yes", "A-2 > A-1 does-not-go-on"], 0],
    [
      "where nothing is fitted",
      ['part: A-2, for: none, verdict: "yes", scope: line=B'],
      "",
      ["A-2 > nothing yes some"],
      0,
    ],
    ["a delivery", [], "supersedes: [{ old: A-1, new: A-2, with: [B-1] }]", ["A-2 > A-1 delivered others"], 0],
    ["ended for all cars", [YES], "CANCEL", [], 1],
    ["ended for some cars", [YES], "CANCEL line=B", ["A-2 > A-1 yes some"], 0],
  ];
  test.each(CASES)("%s", (_, standIns, rest, lines, notInForce) => {
    const found = rest.startsWith("CANCEL") ? ended(standIns, rest.slice(7)) : linesOf(standIns, rest);
    expect(found).toEqual({ lines, notInForce });
  });

  /** The same with a record that ends what the sets say. */
  function ended(standIns: readonly string[], scope: string): ReturnType<typeof linesOf> {
    const { catalog } = openSets(["place: pump, part: A-1, scope: line=B"], standIns, "");
    const index = partIndexOf(catalog);
    const { sets } = catalog.space;
    const badgers = catalog.lines.find((it) => it.id === "B")?.cars;
    const cars = scope === "" ? catalog.buildable : (badgers as typeof catalog.buildable);
    const said = (index.standInsOf.get("A-2") ?? []) as StandsIn[];
    const cut = { ...index, ended: new Map([["FR60-01", sets.or(cars, cars)]]) };
    const { lines, notInForce } = familyLines(cut, said);
    return { lines: lines.map(inWords), notInForce: notInForce.length };
  }
});

test("of random worlds: every statement is in one line or holds for no car, and adding a refusal never adds a permission", () => {
  const permits = (line: FamilyLine): boolean => line.kind === "yes" || line.kind === "on-conditions";
  fc.assert(
    fc.property(world, (drawn) => {
      const { index } = openWorld(drawn);
      const said = [...index.standInsOf.values()].flat();
      const { lines, notInForce } = familyLines(index, said);
      expect(new Set([...lines.flatMap((line) => line.by), ...notInForce])).toEqual(new Set(said));
      expect(lines.reduce((sum, line) => sum + line.by.length, notInForce.length)).toBe(said.length);
      for (const line of lines) {
        const ways = line.bothWays
          ? [`${line.tail}>${line.head}`, `${line.head}>${line.tail}`]
          : [`${line.tail}>${line.head}`];
        expect(new Set(line.by.map((it) => `${tailOf(it)}>${headOf(it)}`))).toEqual(new Set(ways));
      }
      const [first] = said;
      if (!first) return;
      const refusal: StandsIn = { ...first, verdict: "must-not-be-used", scope: undefined, record: "R8", why: "x" };
      const after = familyLines(index, [...said, refusal]).lines;
      expect(after.filter((it) => permits(it) && it.by.includes(first))).toEqual([]);
      expect(
        after
          .filter(permits)
          .flatMap((it) => it.by)
          .filter((it) => notInForce.includes(it)),
      ).toEqual([]);
    }),
    { seed: SEED, numRuns: 200 },
  );
});
