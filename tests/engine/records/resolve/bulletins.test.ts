import { describe, expect, test } from "vitest";
import { catalogOf, saidOf } from "../../../helpers/tiny-folder.ts";
import { BULLETINS_SLIPS } from "./bulletins.cases.ts";

describe("a slip is said once, where it was made", () => {
  test.each(BULLETINS_SLIPS)("%s: %j written as %j", (file, old, replacement, ...said) => {
    expect(saidOf(file, old, replacement)).toEqual(said);
  });
});

test("a bulletin keeps its citations with their places in its text", () => {
  const bulletin = catalogOf().bulletins.get("TB-1");
  expect(bulletin?.facts.text).toBe("See [[HY59-01]], [[HT-102|the long pump]] and [[pump]].");
  expect(bulletin?.citations).toEqual([
    { id: "HY59-01", words: undefined, from: 4, to: 15 },
    { id: "HT-102", words: "the long pump", from: 17, to: 41 },
    { id: "pump", words: undefined, from: 46, to: 54 },
  ]);
});
