import { expect, test } from "vitest";
import { partIndexOf } from "../../../src/engine/answers/part-indexes.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

test("each catalog has one index, and its own", () => {
  const [one, other] = [tinyKnowledge().catalog, tinyKnowledge().catalog];
  expect(partIndexOf(one)).toBe(partIndexOf(one));
  expect(partIndexOf(one)).not.toBe(partIndexOf(other));
  expect(partIndexOf(other).catalog).toBe(other);
});
