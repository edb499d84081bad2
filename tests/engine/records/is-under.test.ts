import { expect, test } from "vitest";
import { isUnder } from "../../../src/engine/records/is-under.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const { components } = tinyKnowledge().catalog;

// component, other, whether it is the other or under it
test.each<[string | undefined, string | undefined, boolean]>([
  ["gasket", "gasket", true],
  ["gasket", "pump", true],
  ["gasket", "lift", true],
  ["lift", "gasket", false],
  [undefined, "lift", false],
  ["lift", undefined, false],
])("%s under %s: %s", (component, other, expected) => {
  expect(isUnder(components, component, other)).toBe(expected);
});
