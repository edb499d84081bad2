import { expect, test } from "vitest";
import { idsIn, textsOf } from "../../../src/engine/audit/texts-of.ts";
import type { ChangeRecord } from "../../../src/engine/records/catalog.ts";
import { catalogOf } from "../../helpers/tiny-folder.ts";

test("what a record says in sentences comes with its field", () => {
  const record = catalogOf().records.get("HY59-01") as ChangeRecord;
  expect(textsOf(record).map(({ path, text }) => `${path.join(".")}: ${text}`)).toEqual([
    "title: Longer hydraulic pump",
    "starts: during 1959",
    "stands-in.0.do: Bleed the lift.",
    "stands-in.1.why: It runs dry.",
    "settings.0.conditions: hot",
    "procedures.0.when: after a pump was fitted",
    "procedures.0.steps: Bleed the lift twice.",
    "tools.0.use: to draw the shaft",
    "left-alone.0: The reservoir was looked at and stayed.",
    "story: The pump grew **longer**.",
  ]);
});

test("the ids in a text are words with a digit, whole", () => {
  expect(idsIn("HY59-01, (FR58-01): two of No.1. And R_2011-a; Ü7!")).toEqual([
    "HY59-01",
    "FR58-01",
    "No.1",
    "R_2011-a",
    "Ü7",
  ]);
});
