import { expect, test } from "vitest";
import { openCarKnowledge } from "../../../src/engine/answers/car-knowledge.ts";
import { catalogOf } from "../../helpers/tiny-folder.ts";

test("statements are found by the parts they name, and cancellations by the record they end", () => {
  const { statementsByPart, cancelsByRecord } = openCarKnowledge(catalogOf());
  const types = (part: string): string[] => (statementsByPart.get(part) ?? []).map((it) => it.type);
  expect(types("HT-101")).toEqual(["built", "mixed", "supersedes", "stands-in", "stands-in"]);
  expect(types("HT-290")).toEqual(["kit"]);
  expect(types("HT-999")).toEqual([]);
  expect([...cancelsByRecord].map(([id, cancels]) => [id, cancels.map((it) => it.record)])).toEqual([
    ["FR58-01", ["HY59-01"]],
  ]);
});
