import { describe, expect, test } from "vitest";
import { catalogOf, saidOf, spoiled } from "../../../helpers/tiny-folder.ts";
import { PARTS_SLIPS } from "./parts.cases.ts";

describe("a slip is said once, where it was made", () => {
  test.each(PARTS_SLIPS)("%s: %j written as %j", (file, old, replacement, ...said) => {
    expect(saidOf(file, old, replacement)).toEqual(said);
  });
});

test("a part knows its component and the features by which it is told apart", () => {
  const part = catalogOf().parts.get("HT-102");
  expect(part).toMatchObject({
    number: "HT-102",
    component: "pump",
    castings: ["4411"],
    marks: { ribs: "two", bore: "none" },
  });
  expect(part?.features.map((feature) => feature.id)).toEqual(["ribs", "bore"]);
});

test("a part number of digits only stays what was written between the quotes", () => {
  const { parts } = catalogOf(
    spoiled({ "parts/gasket.yaml": ["parts:", 'parts:\n  - { number: "0070", name: ring }'] }),
  );
  expect([...parts.keys()]).toContain("0070");
});
