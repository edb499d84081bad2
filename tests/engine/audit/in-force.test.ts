import { expect, test } from "vitest";
import { inForce } from "../../../src/engine/audit/in-force.ts";
import type { World } from "../../../src/engine/audit/rule.ts";
import { openPartIndex } from "../../../src/engine/interchange/part-index.ts";
import type { Statement } from "../../../src/engine/records/statement.ts";
import { ALL } from "../../../src/engine/scope/diagram.ts";
import { catalogOf } from "../../helpers/tiny-folder.ts";

const catalog = catalogOf();
const world: World = { catalog, index: openPartIndex(catalog), checks: { rules: [], plausible: [], "never-say": [] } };
const of = (record: string): Statement => ({ type: "left-alone", record, index: 0, what: "it" });

test("a statement is in force on built cars, but for those for which its record was ended", () => {
  const { sets } = catalog.space;
  expect(inForce(world, of("HY59-01"), ALL)).toBe(catalog.buildable);
  const herons = catalog.lines.find((line) => line.id === "H")?.cars;
  expect(inForce(world, of("FR58-01"), ALL)).toBe(herons);
  expect(inForce(world, of("FR58-01"), sets.not(ALL))).toBe(sets.not(ALL));
});
