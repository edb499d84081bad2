import { describe, expect, test } from "vitest";
import { haveOtherConditions, overlappingFigures } from "../../../src/engine/audit/overlapping-figures.ts";
import { openPartIndex } from "../../../src/engine/interchange/part-index.ts";
import type { Setting } from "../../../src/engine/records/statement.ts";
import { catalogOf, spoiled } from "../../helpers/tiny-folder.ts";

function found(setting: string): string[] {
  const catalog = catalogOf(
    spoiled({ "changes/1959/HY59-01.md": ["settings:\n", `settings:\n  - { name: oil pressure, ${setting} }\n`] }),
  );
  const world = { catalog, index: openPartIndex(catalog), checks: { rules: [], plausible: [], "never-say": [] } };
  return [...overlappingFigures(world, "mend it", () => true)].map(({ message }) => message);
}

test("figures of one name that say otherwise meet on the same cars", () => {
  expect(found("window: 100..110, unit: bar, scope: line=B; my=1957")).toEqual([
    "'oil pressure' is 120..135 bar, to be set at 130 here, and 100..110 bar by another line of this record on the same cars",
  ]);
});

test("the same figure, another component and other cars are no matter", () => {
  expect(found("window: 120.0..135, nominal: 130, unit: bar, scope: line=B")).toEqual([]);
  expect(found("window: 1..2, unit: bar, component: gasket, scope: line=B")).toEqual([]);
  expect(found("window: 1..2, unit: bar, scope: line=H")).toEqual([]);
});

describe("other conditions are those that both say, and say otherwise", () => {
  const setting = (conditions?: string) => ({ type: "setting", conditions }) as Setting;
  // conditions of both, whether they are other ones
  const CASES: [string | undefined, string | undefined, boolean][] = [
    ["hot", "cold", true],
    ["hot", "Hot", false],
    ["hot, in  gear", "hot, in gear", false],
    ["hot", undefined, false],
    [undefined, undefined, false],
  ];
  test.each(CASES)("%s, %s", (one, other, so) => {
    expect(haveOtherConditions(setting(one), setting(other))).toBe(so);
  });
});
